using System.Text;

namespace Arraywright.Files;

/// <summary>Writes a whole file or nothing: beside its place first, then renamed, so that nobody ever reads half of it.</summary>
public static class AtomicFile
{
    /// <summary>Writes text as UTF-8 without byte-order mark.</summary>
    /// <param name="path">The file.</param>
    /// <param name="text">Its content.</param>
    /// <param name="replace">True to replace a file that is there; false to throw <see cref="IOException"/> then, leaving it untouched.</param>
    /// <param name="cancellation">Looked at until the rename; the file beside is then taken away.</param>
    /// <exception cref="IOException">It cannot be written, or it is there and is not to be replaced.</exception>
    public static void Write(string path, string text, bool replace, CancellationToken cancellation = default) =>
        Write(path, Encoding.UTF8.GetBytes(text), replace, cancellation);

    /// <summary>Writes bytes.</summary>
    /// <param name="path">The file.</param>
    /// <param name="content">Its content.</param>
    /// <param name="replace">True to replace a file that is there; false to throw <see cref="IOException"/> then, leaving it untouched.</param>
    /// <param name="cancellation">Looked at until the rename; the file beside is then taken away.</param>
    /// <exception cref="IOException">It cannot be written, or it is there and is not to be replaced.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content, bool replace, CancellationToken cancellation = default)
    {
        string full = Path.GetFullPath(path);
        string beside = Path.Combine(Path.GetDirectoryName(full) ?? ".", $".{Path.GetFileName(full)}.{Environment.ProcessId}.part");
        try
        {
            using (FileStream stream = new(beside, FileMode.Create, FileAccess.Write))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }

            cancellation.ThrowIfCancellationRequested();
            File.Move(beside, full, replace);
        }
        finally
        {
            File.Delete(beside);
        }
    }
}
