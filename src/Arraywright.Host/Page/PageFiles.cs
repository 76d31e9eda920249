using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.StaticFiles;

namespace Arraywright.Host.Page;

/// <summary>The folder of the published page, read once: what is served is of one piece, whatever happens to the folder afterwards.</summary>
internal sealed partial class PageFiles
{
    private const string Index = "index.html";
    private static readonly (string Extension, string Encoding)[] Compressed = [(".br", "br"), (".gz", "gzip")];
    private static readonly FileExtensionContentTypeProvider KnownTypes = new(new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
    {
        [".css"] = "text/css; charset=utf-8",
        [".dat"] = "application/octet-stream",
        [".html"] = "text/html; charset=utf-8",
        [".ico"] = "image/x-icon",
        [".js"] = "text/javascript; charset=utf-8",
        [".json"] = "application/json; charset=utf-8",
        [".mjs"] = "text/javascript; charset=utf-8",
        [".png"] = "image/png",
        [".svg"] = "image/svg+xml",
        [".txt"] = "text/plain; charset=utf-8",
        [".wasm"] = "application/wasm",
        [".webmanifest"] = "application/manifest+json",
        [".woff2"] = "font/woff2",
        [".yaml"] = "application/yaml",
    });

    private readonly FrozenDictionary<string, PageFile> _files;

    private PageFiles(Dictionary<string, PageFile> files, ImmutableArray<string> importMapHashes)
    {
        _files = files.ToFrozenDictionary(StringComparer.Ordinal);
        ImportMapHashes = importMapHashes;
    }

    /// <summary>Hashes of the import maps that stand in the page itself, as a content security policy has them.</summary>
    public ImmutableArray<string> ImportMapHashes { get; }

    /// <summary>Whether there is a page at all.</summary>
    public bool IsThere => _files.ContainsKey(Index);

    /// <summary>The file of a path below the page's root, "" being the page itself; null where there is none.</summary>
    public PageFile? Find(string path) => _files.GetValueOrDefault(path.Length == 0 ? Index : path);

    /// <summary>Reads a folder; one that is not there makes a host without a page.</summary>
    /// <param name="folder">The folder that the page was published to.</param>
    /// <param name="basePath">Path under which it is served; empty for the root.</param>
    public static PageFiles Read(string folder, string basePath)
    {
        Dictionary<string, byte[]> raw = new(StringComparer.Ordinal);
        if (Directory.Exists(folder))
        {
            foreach (string path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
            {
                raw.Add(Path.GetRelativePath(folder, path).Replace('\\', '/'), File.ReadAllBytes(path));
            }
        }

        PageBase.Move(raw, basePath);
        Dictionary<string, PageFile> files = new(StringComparer.Ordinal);
        foreach ((string name, byte[] bytes) in raw)
        {
            if (!IsTwin(name, raw))
            {
                files.Add(name, ToFile(name, bytes, raw));
            }
        }

        return new PageFiles(files, raw.TryGetValue(Index, out byte[]? index) ? Hashes(Encoding.UTF8.GetString(index)) : []);
    }

    private static bool IsTwin(string name, Dictionary<string, byte[]> raw) =>
        Compressed.Any(kind => name.EndsWith(kind.Extension, StringComparison.Ordinal) && raw.ContainsKey(name[..^kind.Extension.Length]));

    private static PageFile ToFile(string name, byte[] bytes, Dictionary<string, byte[]> raw)
    {
        var twins = ImmutableArray.CreateBuilder<PageTwin>();
        foreach ((string extension, string encoding) in Compressed)
        {
            if (raw.TryGetValue(name + extension, out byte[]? smaller) && smaller.Length < bytes.Length)
            {
                twins.Add(Twin(encoding, smaller));
            }
        }

        twins.Add(Twin(null, bytes));
        return new PageFile(
            KnownTypes.TryGetContentType(name, out string? type) ? type : "application/octet-stream",
            Fingerprint().Match(name) is { Success: true } print && print.Groups["print"].Value.AsSpan().ContainsAnyInRange('0', '9'),
            twins.ToImmutable());
    }

    private static PageTwin Twin(string? encoding, byte[] bytes) => new(encoding, bytes, $"\"{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 12))}\"");

    private static ImmutableArray<string> Hashes(string index) =>
        [.. ImportMap().Matches(index).Select(map => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(map.Groups["map"].Value)))}")];

    /// <summary>The build writes ten letters and digits, of what is in the file, before its extension.</summary>
    [GeneratedRegex(@"\.(?<print>[a-z0-9]{10})\.[a-z0-9]+$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Fingerprint();

    [GeneratedRegex("<script type=\"importmap\">(?<map>.*?)</script>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ImportMap();
}
