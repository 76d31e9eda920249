using System.CommandLine;
using Arraywright.Files.Keys;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli.Verbs;

/// <summary>The examples that come with the command.</summary>
internal static class ExampleVerb
{
    private const string Prefix = "examples/";

    public static Command Create(Host host)
    {
        Command command = new("example", "Lists the example plans, or prints one.");
        Argument<string?> name = new("NAME") { Description = "the example to print; without one, they are listed", Arity = ArgumentArity.ZeroOrOne };
        command.Add(name);
        command.SetAction(parse => parse.GetValue(name) is { } wanted ? PrintOne(host, wanted) : List(host));
        return command;
    }

    /// <summary>Names of the examples, in alphabetical order.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. typeof(ExampleVerb).Assembly.GetManifestResourceNames()
            .Where(resource => resource.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(resource => Path.GetFileNameWithoutExtension(resource[Prefix.Length..]))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The text of an example that is among <see cref="Names"/>.</summary>
    public static string Text(string name)
    {
        using Stream stream = typeof(ExampleVerb).Assembly.GetManifestResourceStream($"{Prefix}{name}.yaml")
            ?? throw new ArgumentException($"There is no example {name}.", nameof(name));
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    private static int List(Host host)
    {
        Work.Print(host, writer =>
        {
            int width = Names.Max(name => name.Length) + 4;
            foreach (string name in Names)
            {
                TextFlow.Write(writer, $"  {name}".PadRight(width), Purpose(Text(name)), 80);
            }

            writer.WriteLine();
            writer.WriteLine("To try one: arraywright example NAME > shed.yaml; arraywright plan shed.yaml");
        });
        return ExitCode.Done;
    }

    private static int PrintOne(Host host, string wanted)
    {
        if (Names.Contains(wanted, StringComparer.Ordinal))
        {
            host.Print(Text(wanted));
            return ExitCode.Done;
        }

        string near = Nearest.Of(wanted, Names) is { } meant ? $"did you mean \"{meant}\"?" : "`arraywright example` lists them";
        host.Error.WriteLine($"arraywright: there is no example \"{wanted}\"; {near}");
        return ExitCode.WrongInput;
    }

    /// <summary>What an example shows: the first sentence of the comment at its head.</summary>
    private static string Purpose(string text)
    {
        string head = string.Join(' ', text.Split('\n').TakeWhile(line => line.StartsWith('#')).Select(line => line.TrimStart('#').Trim()));
        return head.Split(". ", 2)[0].TrimEnd('.');
    }
}
