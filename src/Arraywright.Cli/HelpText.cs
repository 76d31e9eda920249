using System.CommandLine;
using System.CommandLine.Invocation;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli;

/// <summary>Help in 80 columns: what it does, how it is called, what it takes, an example to copy.</summary>
internal sealed class HelpText(Host host) : SynchronousCommandLineAction
{
    private const int Column = 22;
    private const int Width = 80;

    private static readonly Dictionary<string, string[]> Examples = new(StringComparer.Ordinal)
    {
        ["plan"] = ["plan shed.yaml", "plan shed.yaml --json > answer.json"],
        ["check"] = ["check shed.yaml", "check shed.yaml --irradiance 800 --air 12"],
        ["curve"] = ["curve shed.yaml --cell 60", "curve shed.yaml --input store-b --chart curve.svg"],
        ["day"] = ["day shed.yaml --date 06-21", "day shed.yaml --date 12-21 --clear --csv hours.csv"],
        ["year"] = ["year shed.yaml", "year shed.yaml --csv months.csv --chart year.png"],
        ["weather"] = ["weather shed.yaml", "weather shed.yaml --years 2014..2023 -o shed-weather.csv"],
        ["parts"] = ["parts shed.yaml", "parts shed.yaml --csv shopping.csv --diagram shed.svg"],
        ["grow"] = ["grow mill.yaml", "grow mill.yaml --of mill-215 --most 8 --worth 20%"],
        ["tilt"] = ["tilt shed.yaml", "tilt shed.yaml --date 03-15 --json"],
        ["report"] = ["report shed.yaml -o shed.pdf", "report shed.yaml -o shed.html --air 12 --date 2026-06-21"],
        ["ask"] = ["ask shed.yaml > letter.txt"],
        ["netlist"] = ["netlist shed.yaml > shed.cir", "netlist shed.yaml -o shed.cir"],
        ["quick"] =
        [
            "quick 4x \"22.9V 6.72A 18.9V 6.35A\" --onto \"50V 10A 400W\"",
            "quick 2x \"23V 6.7A 120W\" 1x \"44V 5.8A 200W\" --onto \"60V 12A\"",
        ],
        ["serve"] = ["serve", "serve --listen 0.0.0.0 --port 80 --name sun.example.org"],
        ["new"] = ["new shed.yaml"],
        ["schema"] = ["schema > plan.schema.json"],
        ["example"] = ["example"],
    };

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult) => Print(parseResult.CommandResult.Command);

    /// <summary>Prints the help of a verb, or of the command itself.</summary>
    public int Print(Command command)
    {
        StringWriter text = new() { NewLine = "\n" };
        Write(text, command);
        host.Print(text.ToString());
        return ExitCode.Done;
    }

    private static void Write(StringWriter text, Command command)
    {
        bool root = command is RootCommand;
        Paragraph(text, "", command.Description ?? "");
        text.WriteLine();
        string arguments = string.Concat(command.Arguments.Select(argument => argument.Arity.MinimumNumberOfValues == 0 ? $" [{argument.Name}]" : $" {argument.Name}"));
        text.WriteLine(root ? "  arraywright VERB [options]" : $"  arraywright {command.Name}{arguments} [options]");
        text.WriteLine();
        foreach (Argument argument in command.Arguments)
        {
            Entry(text, argument.Name, argument.Description ?? "");
        }

        foreach (Command verb in command.Subcommands)
        {
            Entry(text, verb.Name, Lower(verb.Description ?? ""));
        }

        if (root)
        {
            text.WriteLine();
        }

        foreach (Option option in Options(command))
        {
            string names = string.Join(", ", option.Aliases.Append(option.Name).Order(StringComparer.Ordinal).Reverse());
            Entry(text, option.HelpName is { } value ? $"{names} {value}" : names, option.Description ?? "");
        }

        text.WriteLine();
        WriteFoot(text, command.Name, root);
    }

    private static void WriteFoot(StringWriter text, string verb, bool root)
    {
        if (root)
        {
            text.WriteLine("Exit status: 0 nothing stops it, 1 the verdict is stop, 2 the input is wrong,");
            text.WriteLine("3 an internal failure. `arraywright VERB --help` tells more of a verb.");
            return;
        }

        foreach (string example in Examples[verb])
        {
            text.WriteLine($"  $ arraywright {example}");
        }
    }

    private static IEnumerable<Option> Options(Command command) =>
        command.Options.Concat(command.Parents.OfType<Command>().SelectMany(parent => parent.Options.Where(option => option.Recursive)));

    private static void Entry(StringWriter text, string name, string description)
    {
        string lead = $"  {name}".PadRight(Column);
        if (lead.Length > Column)
        {
            text.WriteLine(lead);
            lead = new string(' ', Column);
        }

        Paragraph(text, lead, description);
    }

    private static void Paragraph(StringWriter text, string lead, string words) => TextFlow.Write(text, lead, words, Width);

    private static string Lower(string description) => char.ToLowerInvariant(description[0]) + description[1..].TrimEnd('.');
}
