using System.IO.Compression;
using System.Text;

namespace Arraywright.Page.Document;

/// <summary>A whole plan as the fragment of a link, which a browser never sends anywhere.</summary>
/// <remarks>A link comes from anybody: what it holds is bounded before it is unpacked, and is read as a file would be.</remarks>
internal static class PlanLink
{
    /// <summary>What the fragment begins with.</summary>
    public const string Mark = "plan=";

    private const int MostBytes = 64 * 1024;
    private const int LongestFragment = 64 * 1024;

    /// <summary>The fragment of a plan, without its "#".</summary>
    public static string Write(string text)
    {
        using MemoryStream packed = new();
        using (DeflateStream deflate = new(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            deflate.Write(Encoding.UTF8.GetBytes(text));
        }

        return Mark + Convert.ToBase64String(packed.GetBuffer(), 0, (int)packed.Length).TrimEnd('=').Replace('+', '-').Replace('/', '_');
    }

    /// <summary>The plan in a fragment; null where there is none, or none that can be unpacked.</summary>
    public static string? Read(string fragment)
    {
        if (!fragment.StartsWith(Mark, StringComparison.Ordinal) || fragment.Length > LongestFragment)
        {
            return null;
        }

        string code = fragment[Mark.Length..].Replace('-', '+').Replace('_', '/');
        byte[] packed = new byte[code.Length];
        if (!Convert.TryFromBase64String(code.PadRight((code.Length + 3) / 4 * 4, '='), packed, out int length) || length == 0)
        {
            return null;
        }

        try
        {
            using DeflateStream inflate = new(new MemoryStream(packed, 0, length), CompressionMode.Decompress);
            byte[] bytes = new byte[MostBytes + 1];
            int read = inflate.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return read is 0 or > MostBytes ? null : new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes, 0, read);
        }
        catch (Exception broken) when (broken is InvalidDataException or ArgumentException)
        {
            return null;
        }
    }
}
