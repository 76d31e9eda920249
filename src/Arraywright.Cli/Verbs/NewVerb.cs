using System.CommandLine;
using Arraywright.Files;

namespace Arraywright.Cli.Verbs;

/// <summary>A commented plan to start from.</summary>
internal static class NewVerb
{
    public static Command Create(Host host)
    {
        Command command = new("new", "Writes a commented plan to start from.");
        Argument<string?> file = new("FILE") { Description = "the file to write; without one, standard output", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> force = new("--force") { Description = "replace the file if it is there" };
        command.Add(file);
        command.Add(force);
        command.SetAction(parse =>
        {
            if (parse.GetValue(file) is not { } path || path == "-")
            {
                host.Print(StarterPlan.Text);
                return ExitCode.Done;
            }

            host.WatchForInterrupt();
            int saved = Work.Save(host, path, StarterPlan.Text, parse.GetValue(force), "; --force replaces it");
            if (saved == ExitCode.Done)
            {
                host.Error.WriteLine($"Wrote {path}. Put your own labels in, then: arraywright plan {path}");
            }

            return saved;
        });
        return command;
    }
}
