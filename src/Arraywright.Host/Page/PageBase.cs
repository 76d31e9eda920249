using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Arraywright.Host.Page;

/// <summary>Moves a page that was published for the root of a site under a path of it.</summary>
internal static partial class PageBase
{
    private const string Index = "index.html";
    private const string Worker = "service-worker.js";

    /// <summary>Files in which the hash of the page stands, so that the browser can tell a whole copy from a broken one.</summary>
    private const string WorkerAssets = "service-worker-assets.js";

    /// <summary>Rewrites the base of the page and of its service worker; a page that names none of its own stays as it is.</summary>
    /// <param name="files">All files by name; compressed twins of what changes are dropped.</param>
    /// <param name="basePath">Path such as <c>/arraywright</c>; empty for the root.</param>
    public static void Move(Dictionary<string, byte[]> files, string basePath)
    {
        if (basePath.Length == 0 || !files.TryGetValue(Index, out byte[]? index))
        {
            return;
        }

        byte[] moved = Replace(files, Index, text => BaseElement().Replace(text, $"<base href=\"{basePath}/\""));
        Replace(files, Worker, text => BaseConstant().Replace(text, $"const base = \"{basePath}/\""));
        Replace(files, WorkerAssets, text => text.Replace(Hash(index), Hash(moved), StringComparison.Ordinal));
    }

    private static byte[] Replace(Dictionary<string, byte[]> files, string name, Func<string, string> change)
    {
        if (!files.TryGetValue(name, out byte[]? bytes))
        {
            return [];
        }

        byte[] changed = Encoding.UTF8.GetBytes(change(Encoding.UTF8.GetString(bytes)));
        if (changed.AsSpan().SequenceEqual(bytes))
        {
            return bytes;
        }

        files[name] = changed;
        files.Remove(name + ".br");
        files.Remove(name + ".gz");
        return changed;
    }

    private static string Hash(byte[] bytes) => $"sha256-{Convert.ToBase64String(SHA256.HashData(bytes))}";

    [GeneratedRegex("<base href=\"/\"", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex BaseElement();

    [GeneratedRegex("const base = \"/\"", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex BaseConstant();
}
