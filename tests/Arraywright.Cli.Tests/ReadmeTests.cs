using System.Text.RegularExpressions;
using Arraywright.Files;
using Arraywright.Files.Tests;
using Arraywright.Testing;

namespace Arraywright.Cli.Tests;

/// <summary>The README cannot lie: what it shows is what the command prints.</summary>
public sealed partial class ReadmeTests
{
    [Fact]
    public void Every_console_block_is_what_the_command_prints_now()
    {
        string path = Path.Combine(Repository.Root, "README.md");
        string written = File.ReadAllText(path);
        Assert.True(ConsoleBlock().Count(written) >= 2);
        // The commands run within the time the pattern is given.
        string now = ConsoleBlock().Replace(written, block =>
        {
            string output = Session.Run(Arguments(block.Groups["args"].Value)).Output;
            string shown = block.Groups["output"].Value;
            return $"```console\n$ ./arraywright {block.Groups["args"].Value}\n{(shown.EndsWith("…\n", StringComparison.Ordinal) ? Beginning(output, shown) : output)}```";
        });
        if (Golden.Writing)
        {
            File.WriteAllText(path, now);
            return;
        }

        Assert.Equal(now, written);
    }

    [Fact]
    public void The_plan_file_it_shows_is_read_without_a_fault()
    {
        string written = File.ReadAllText(Path.Combine(Repository.Root, "README.md"));
        string plan = YamlBlock().Match(written).Groups["plan"].Value;
        Assert.Empty(PlanFile.Read(plan, "README.md").Faults);
    }

    /// <summary>As many lines of the output as are shown, and the sign that it goes on.</summary>
    private static string Beginning(string output, string shown) =>
        string.Join('\n', output.Split('\n').Take(shown.Count(c => c == '\n') - 1)) + "\n…\n";

    private static string[] Arguments(string line) =>
        [.. Argument().Matches(line).Select(match => match.Groups["plain"].Success ? Absolute(match.Value) : match.Groups["quoted"].Value)];

    private static string Absolute(string argument) => argument.StartsWith("examples/", StringComparison.Ordinal) ? Path.Combine(Repository.Root, argument) : argument;

    [GeneratedRegex("```console\n\\$ \\./arraywright (?<args>[^\n]*)\n(?<output>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 60_000)]
    private static partial Regex ConsoleBlock();

    [GeneratedRegex("```yaml\n(?<plan>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex YamlBlock();

    [GeneratedRegex("\"(?<quoted>[^\"]*)\"|(?<plain>[^ ]+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Argument();
}
