using System.CommandLine;
using System.Text.RegularExpressions;
using Arraywright.Files.Tests;
using Arraywright.Testing;

namespace Arraywright.Cli.Tests;

public sealed partial class HelpTests
{
    public static TheoryData<string> Verbs
    {
        get
        {
            using Host host = new() { Output = TextWriter.Null, Error = TextWriter.Null };
            return [.. CommandLine.Build(host).Subcommands.Select(verb => verb.Name)];
        }
    }

    [Fact]
    public void The_reference_shows_the_help_of_the_command_and_of_each_verb_as_it_is()
    {
        string path = Path.Combine(Repository.Root, "docs", "command.md");
        string written = File.ReadAllText(path);
        string now = HelpBlock().Replace(written, block => $"$ arraywright {block.Groups["args"].Value}--help\n{Session.Run([.. Words(block), "--help"]).Output}```");
        Assert.Equal(["", .. Verbs.Select(verb => verb.Data + " ")], HelpBlock().Matches(written).Select(block => block.Groups["args"].Value));
        if (Golden.Writing)
        {
            File.WriteAllText(path, now);
            return;
        }

        Assert.Equal(now, written);
    }

    [Theory]
    [MemberData(nameof(Verbs))]
    public void Help_fits_80_columns_and_is_asked_for_with_h_as_well(string verb)
    {
        (int exit, string output, string error) = Session.Run(verb, "-h");
        Assert.Equal(0, exit);
        Assert.Empty(error);
        Assert.All(output.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Equal(output, Session.Run(verb, "--help").Output);
    }

    [Fact]
    public void The_examples_that_need_no_file_are_answered()
    {
        MatchCollection examples = QuickExample().Matches(Session.Run("quick", "--help").Output);
        Assert.Equal(2, examples.Count);
        Assert.All(examples, example =>
        {
            string[] arguments = [.. Argument().Matches(example.Groups["args"].Value).Select(match => match.Value.Trim('"'))];
            Assert.Equal((0, ""), Session.Run(arguments) is var (exit, _, error) ? (exit, error) : default);
        });
    }

    private static string[] Words(Match block) => block.Groups["args"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    [GeneratedRegex("\\$ arraywright (?<args>(?:[a-z]+ )?)--help\n.*?```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex HelpBlock();

    [GeneratedRegex("\\$ arraywright (?<args>quick [^\n]*)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex QuickExample();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Argument();
}
