using System.Diagnostics;
using Arraywright.Files.Tests;

namespace Arraywright.Cli.Tests;

/// <summary>A disk of 40 kB of its own, really full and really read-only: what was there stays, and one sentence says why.</summary>
public sealed class FullDiskTests
{
    [Fact]
    public void What_was_there_stays_as_it_was()
    {
        string disk = Directory.CreateTempSubdirectory("small-disk").FullName;
        Assert.SkipWhen(!OperatingSystem.IsLinux() || Run("mount", "-t", "tmpfs", "-o", "size=40k", "tmpfs", disk) != 0, "A disk of its own: only root may mount one, on Linux.");
        try
        {
            string file = Path.Combine(disk, "shed.pdf");
            File.WriteAllText(file, "the report of last year");
            (int exit, _, string error) = Session.Run("report", Repository.Examples.Single(path => path.Contains("lambing", StringComparison.Ordinal)), "-o", file);
            Assert.Equal(2, exit);
            Assert.Equal($"arraywright: cannot write \"{file}\": no room is left there; nothing that was there has changed\n", error);

            Assert.Equal(0, Run("mount", "-o", "remount,ro", disk));
            (exit, _, error) = Session.Run("report", Repository.Examples.Single(path => path.Contains("lambing", StringComparison.Ordinal)), "-o", file);
            Assert.Equal(2, exit);
            Assert.Equal($"arraywright: cannot write \"{file}\": it can only be read there\n", error);
            Assert.Equal("the report of last year", File.ReadAllText(file));
            Assert.Equal([file], Directory.GetFiles(disk));
        }
        finally
        {
            Assert.Equal(0, Run("umount", disk));
            Directory.Delete(disk);
        }
    }

    private static int Run(string program, params string[] arguments)
    {
        try
        {
            using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false })!;
            process.WaitForExit();
            return process.ExitCode;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return -1;
        }
    }
}
