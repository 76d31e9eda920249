namespace Arraywright.Files.Text;

/// <summary>Reads a file's bytes, never more than a plan can have.</summary>
internal static class FileBytes
{
    /// <summary>Largest plan, bytes. The longest sensible one has a fiftieth of it.</summary>
    public const int Most = 1 << 20;

    /// <summary>The bytes; null, with a fault, when there is no such file or it cannot be read or is too large.</summary>
    /// <param name="path">A path, or "-" for standard input.</param>
    /// <param name="faults">Where the fault goes.</param>
    public static byte[]? Read(string path, FaultList faults)
    {
        try
        {
            if (Directory.Exists(path))
            {
                faults.Add(1, 1, "a directory", "a plan file", "name the file inside it");
                return null;
            }

            using Stream stream = path == "-" ? Console.OpenStandardInput() : File.OpenRead(path);
            byte[]? bytes = ReadAtMost(stream, Most);
            if (bytes is null)
            {
                AddTooLarge(faults);
            }

            return bytes;
        }
        catch (Exception trouble) when (trouble is FileNotFoundException or DirectoryNotFoundException)
        {
            faults.Add(1, 1, "no such file", "a plan file", "check the path; `arraywright new` writes a plan to begin with");
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            faults.Add(1, 1, "a file that cannot be read", "a plan file", trouble.Message.TrimEnd('.'));
        }

        return null;
    }

    public static void AddTooLarge(FaultList faults) =>
        faults.Add(1, 1, "more than 1 MiB", "a plan file, which has a few kilobytes", "this is some other file");

    private static byte[]? ReadAtMost(Stream stream, int most)
    {
        byte[] buffer = new byte[16 * 1024];
        int length = 0;
        while (true)
        {
            int read = stream.Read(buffer, length, buffer.Length - length);
            if (read == 0)
            {
                return buffer[..length];
            }

            length += read;
            if (length > most)
            {
                return null;
            }

            if (length == buffer.Length)
            {
                Array.Resize(ref buffer, Math.Min(2 * buffer.Length, most + 1));
            }
        }
    }
}
