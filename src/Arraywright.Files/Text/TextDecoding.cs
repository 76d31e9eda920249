using System.Text;
using System.Text.Unicode;

namespace Arraywright.Files.Text;

/// <summary>Bytes of a file to text. Only UTF-8 is read; anything else is said to be what it looks like.</summary>
internal static class TextDecoding
{
    /// <summary>The text; null, with a fault, when the bytes are not UTF-8 text.</summary>
    public static string? Decode(ReadOnlySpan<byte> bytes, FaultList faults)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] || LooksLikeUtf16(bytes))
        {
            faults.Add(1, 1, "text in UTF-16", "a plan in UTF-8", "save the file again with the encoding UTF-8");
            return null;
        }

        int valid = Utf8.IsValid(bytes) ? bytes.Length : ValidLength(bytes);
        int zero = bytes.IndexOf((byte)0);
        if (zero >= 0 && zero <= valid)
        {
            (int line, int column) = PlaceOf(bytes, zero);
            faults.Add(line, column, "a zero byte", "a plan as plain text", "this is a binary file, not a plan");
            return null;
        }

        if (valid < bytes.Length)
        {
            (int line, int column) = PlaceOf(bytes, valid);
            faults.Add(line, column, $"the byte 0x{bytes[valid]:X2}, which is not UTF-8", "a plan in UTF-8", "the file may be Latin-1 or binary; save it again with the encoding UTF-8");
            return null;
        }

        return Encoding.UTF8.GetString(bytes);
    }

    /// <summary>Plain letters in UTF-16 have a zero in every second byte.</summary>
    private static bool LooksLikeUtf16(ReadOnlySpan<byte> bytes) =>
        bytes is [0, not 0, 0, not 0, ..] or [not 0, 0, not 0, 0, ..];

    private static int ValidLength(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out int length) == System.Buffers.OperationStatus.Done)
        {
            at += length;
        }

        return at;
    }

    private static (int Line, int Column) PlaceOf(ReadOnlySpan<byte> bytes, int position)
    {
        ReadOnlySpan<byte> before = bytes[..position];
        int lineStart = before.LastIndexOf((byte)'\n') + 1;
        return (before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(before[lineStart..]) + 1);
    }
}
