using System.CommandLine;
using Arraywright.Files.Keys;

namespace Arraywright.Cli;

/// <summary>Which of several inputs is meant.</summary>
internal sealed class InputOption
{
    private readonly Option<string> _input = new("--input") { Description = "which input, where the plan has several (else the first with a wiring)", HelpName = "NAME" };

    /// <summary>Adds the option.</summary>
    public InputOption(Command command) => command.Add(_input);

    /// <summary>The name given; null when none.</summary>
    public string? Name(ParseResult parse) => parse.GetValue(_input);

    /// <summary>True when the plan has an input of that name, or none was named; else says what is wrong.</summary>
    public bool Names(Plan plan, ParseResult parse, Host host)
    {
        string[] names = [.. plan.Inputs.Select(input => input.Input.Name)];
        if (Name(parse) is not { } name || names.Contains(name, StringComparer.Ordinal))
        {
            return true;
        }

        string near = Nearest.Of(name, names) is { } meant ? $"did you mean \"{meant}\"?" : $"the plan has {string.Join(", ", names)}";
        host.Error.WriteLine($"arraywright: --input: the plan has no input \"{name}\"; {near}");
        return false;
    }
}
