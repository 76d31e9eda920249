using System.CommandLine;

namespace Arraywright.Cli;

/// <summary>Which of several inputs is meant.</summary>
internal sealed class InputOption
{
    private readonly Option<string> _input = new("--input") { Description = "which input, where the plan has several (else the first with a wiring)", HelpName = "NAME" };

    /// <summary>Adds the option.</summary>
    public InputOption(Command command) => command.Add(_input);

    /// <summary>The name given; null when none.</summary>
    public string? Name(ParseResult parse) => parse.GetValue(_input);
}
