using System.CommandLine;
using Arraywright.Files;
using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Cli.Verbs;

/// <summary>The letter to the maker of an input.</summary>
internal static class AskVerb
{
    public static Command Create(Host host)
    {
        Command command = new("ask", "Writes the letter to the maker of an input.");
        PlanOptions options = new PlanOptions().WithPlan(command).WithManners(command);
        command.SetAction(parse => Work.WithPlan(host, options.Path(parse), plan =>
        {
            Manners manners = options.Manners(parse);
            (AskResult result, _) = Work.UnderBar(host, manners, (bar, stop) => Planner.Ask(plan, options.Planner(parse), bar, stop));
            if (manners.Json)
            {
                host.Print(ResultJson.Write(result));
            }
            else
            {
                Work.Print(host, writer => Write(writer, host, result, manners));
            }

            return ExitCode.Done;
        }));
        return command;
    }

    /// <summary>Letters go to standard output, ready to send; what the user is to do with the answer goes beside, to standard error.</summary>
    private static void Write(TextWriter writer, Host host, AskResult result, Manners manners)
    {
        if (result.Letters.IsEmpty)
        {
            writer.WriteLine(result.Result.Verdict == Level.Stop ? MakerLetter.NoAnswerHelps : MakerLetter.NothingToAsk);
        }

        if (!result.Letters.IsEmpty && result.Result.Verdict == Level.Stop)
        {
            host.Error.WriteLine("The verdict is stop, and these answers do not clear what stops it: see arraywright check.");
        }

        for (int index = 0; index < result.Letters.Length; index++)
        {
            InputLetter letter = result.Letters[index];
            writer.Write(index == 0 ? letter.Text : $"\n{new string('=', 76)}\n\n{letter.Text}");
            if (!manners.Quiet)
            {
                host.Error.WriteLine($"[{letter.Input}]\n{letter.WhereTheAnswerGoes}");
            }
        }
    }
}
