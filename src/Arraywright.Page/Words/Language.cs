using System.Text.Json;
using System.Text.Json.Serialization;
using Arraywright.Page.Document;

namespace Arraywright.Page.Words;

/// <summary>The page's own words in one language, looked up by their English: English needs no file, and a word that a file lacks is shown in English.</summary>
internal sealed partial class Language
{
    private readonly IReadOnlyDictionary<string, string> _words;

    private Language(string code, IReadOnlyDictionary<string, string> words)
    {
        Code = code;
        _words = words;
    }

    /// <summary>As BCP 47 has it.</summary>
    public string Code { get; }

    /// <summary>Every language there is, with the name it gives itself.</summary>
    public static IReadOnlyList<(string Code, string Name)> All { get; } = [("en", "English"), ("de", "Deutsch")];

    /// <summary>The page's words for the English ones.</summary>
    public string this[string english] => _words.GetValueOrDefault(english, english);

    /// <summary>The language of a code; English for one that is not known.</summary>
    public static Language Of(string code) => code != "en" && Resources.Names.Contains($"words/{code}.json")
        ? new Language(code, JsonSerializer.Deserialize(Resources.Text($"words/{code}.json"), WordsJson.Default.DictionaryStringString)!)
        : new Language("en", new Dictionary<string, string>());

    [JsonSerializable(typeof(Dictionary<string, string>))]
    private sealed partial class WordsJson : JsonSerializerContext;
}
