using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.Caching.Memory;

namespace Arraywright.Host.Api;

/// <summary>Answers given lately: the same question has the same answer, byte for byte, so that it need not be computed again.</summary>
internal sealed class AnswerCache : IDisposable
{
    private const long MostBytes = 64L << 20;

    private readonly MemoryCache _answers = new(new MemoryCacheOptions { SizeLimit = MostBytes });

    /// <summary>What a question is known by.</summary>
    public static string Key(Question question, QueryValues query, ReadOnlyMemory<byte> body)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes($"{question.Verb}\n{query.Canonical()}\n"));
        hash.AppendData(body.Span);
        return Convert.ToHexString(hash.GetHashAndReset());
    }

    /// <summary>The answer; null when it has to be computed.</summary>
    public byte[]? Find(string key) => _answers.Get<byte[]>(key);

    /// <summary>Keeps an answer while there is room.</summary>
    public void Keep(string key, byte[] answer) => _answers.Set(key, answer, new MemoryCacheEntryOptions { Size = answer.Length + key.Length });

    /// <inheritdoc/>
    public void Dispose() => _answers.Dispose();
}
