using System.CommandLine;
using System.CommandLine.Parsing;
using Arraywright.Files.Keys;

namespace Arraywright.Cli;

/// <summary>Tells what is wrong with a command line, all of it, and what was probably meant.</summary>
internal static class ParseFaults
{
    /// <summary>Prints every fault and how to get help.</summary>
    public static int Print(ParseResult parse, Host host)
    {
        Command command = parse.CommandResult.Command;
        bool atRoot = command is RootCommand;
        foreach (string token in parse.UnmatchedTokens)
        {
            host.Error.WriteLine($"arraywright: {Unknown(command, token)}");
            if (atRoot)
            {
                break;
            }
        }

        if (parse.UnmatchedTokens.Count == 0)
        {
            foreach (string message in parse.Errors.Select(error => Told(error, command)).Distinct(StringComparer.Ordinal))
            {
                host.Error.WriteLine($"arraywright: {message}");
            }
        }

        host.Error.WriteLine(atRoot ? "Try: arraywright --help" : $"Try: arraywright {command.Name} --help");
        return ExitCode.WrongInput;
    }

    private static string Unknown(Command command, string token)
    {
        if (token.StartsWith('-') && token.Length > 1)
        {
            IEnumerable<string> options = Options(command).SelectMany(option => option.Aliases.Append(option.Name));
            return $"{Name(command)} has no option \"{token}\"{DidYouMean(token, options)}";
        }

        return command is RootCommand
            ? $"there is no verb \"{token}\"{DidYouMean(token, command.Subcommands.Select(verb => verb.Name))}"
            : $"{Name(command)} does not know what to do with \"{token}\"; {Takes(command)}";
    }

    private static string Told(ParseError error, Command command) => error.SymbolResult switch
    {
        ArgumentResult { Tokens.Count: 0 } missing => $"{Name(command)} needs {missing.Argument.Name}: {missing.Argument.Description}",
        _ => error.Message,
    };

    private static string Takes(Command command) => command.Arguments.Count == 0
        ? "it takes options only"
        : $"it takes {string.Join(' ', command.Arguments.Select(argument => argument.Name))}, which is {command.Arguments[0].Description}";

    private static string DidYouMean(string typed, IEnumerable<string> known) =>
        Nearest.Of(typed, known) is { } near ? $"; did you mean \"{near}\"?" : "";

    private static IEnumerable<Option> Options(Command command) =>
        command.Options.Concat(command.Parents.OfType<Command>().SelectMany(parent => parent.Options.Where(option => option.Recursive)));

    private static string Name(Command command) => command is RootCommand ? "arraywright" : command.Name;
}
