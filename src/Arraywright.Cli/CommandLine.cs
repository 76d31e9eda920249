using System.CommandLine;
using Arraywright.Cli.Verbs;

namespace Arraywright.Cli;

/// <summary>The command: its verbs, and the one place where every failure ends.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line.</summary>
    /// <returns>The exit status of <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Host host)
    {
        try
        {
            ParseResult parse = Build(host).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
            bool terminates = parse.Action is HelpText or VersionText;
            return parse.Errors.Count > 0 && !terminates
                ? ParseFaults.Print(parse, host)
                : parse.Invoke(new InvocationConfiguration { Output = host.Output, Error = host.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
        }
        catch (OperationCanceledException) when (host.Interrupted.IsCancellationRequested)
        {
            host.Error.WriteLine(Host.Stopped);
            return ExitCode.Interrupted;
        }
        catch (IOException lost)
        {
            // Files that are named on the command line tell of their own faults; what is left is standard output.
            host.Error.WriteLine($"arraywright: cannot write the answer: {lost.Message}");
            return ExitCode.Failed;
        }
        catch (Exception failure)
        {
            return Failure.Print(failure, host);
        }
    }

    /// <summary>The command with all its verbs.</summary>
    public static RootCommand Build(Host host)
    {
        RootCommand root = new("Finds and proves the best wiring of a mixed pile of solar panels on direct-current charging inputs.")
        {
            PlanVerb.Create(host),
            CheckVerb.Create(host),
            CurveVerb.Create(host),
            DayVerb.Create(host),
            YearVerb.Create(host),
            WeatherVerb.Create(host),
            PartsVerb.Create(host),
            GrowVerb.Create(host),
            TiltVerb.Create(host),
            ReportVerb.Create(host),
            AskVerb.Create(host),
            NetlistVerb.Create(host),
            QuickVerb.Create(host),
            ServeVerb.Create(host),
            NewVerb.Create(host),
            SchemaVerb.Create(host),
            ExampleVerb.Create(host),
        };
        root.SetAction(_ => new HelpText(host).Print(root));
        foreach (Option option in root.Options)
        {
            switch (option)
            {
                case System.CommandLine.Help.HelpOption help:
                    help.Description = "what this verb does and takes";
                    help.Action = new HelpText(host);
                    help.Aliases.Remove("/?");
                    help.Aliases.Remove("/h");
                    help.Aliases.Remove("-?");
                    break;
                case VersionOption version:
                    version.Description = "the version of this command";
                    version.Action = new VersionText(host);
                    break;
            }
        }

        return root;
    }
}
