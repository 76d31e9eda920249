using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Arraywright.Print;

/// <summary>
/// Replaces what the PDF library makes at random by what follows from the content: the tags of embedded fonts, the file's two identifiers,
/// and those of its metadata. All keep their length, so that the file's table of contents stays right.
/// </summary>
internal static partial class SteadyBytes
{
    /// <summary>The file made steady.</summary>
    public static byte[] Of(byte[] file)
    {
        // Latin 1 keeps each byte as one character.
        string text = Encoding.Latin1.GetString(file);
        List<string> fonts = [];
        text = FontTag().Replace(text, match =>
        {
            string tag = match.Groups["tag"].Value;
            if (!fonts.Contains(tag))
            {
                fonts.Add(tag);
            }

            return $"/AAAAA{(char)('A' + fonts.IndexOf(tag))}+";
        });
        string blank = MetadataId().Replace(FileIds().Replace(text, "/ID[]"), "uuid:");
        byte[] hash = SHA256.HashData(Encoding.Latin1.GetBytes(blank));
        string id = Convert.ToHexString(hash, 0, 16);
        text = FileIds().Replace(text, $"/ID[<{id}><{id}>]");
        text = MetadataId().Replace(text, $"uuid:{new Guid(hash.AsSpan(16))}");
        return Encoding.Latin1.GetBytes(text);
    }

    [GeneratedRegex(@"/(?<tag>[A-Z]{6})\+(?=Inter)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex FontTag();

    [GeneratedRegex(@"/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]", RegexOptions.None, matchTimeoutMilliseconds: 5000)]
    private static partial Regex FileIds();

    [GeneratedRegex(@"uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex MetadataId();
}
