using System.CommandLine;
using Arraywright.Files;

namespace Arraywright.Cli.Verbs;

/// <summary>The plan file's JSON Schema.</summary>
internal static class SchemaVerb
{
    public static Command Create(Host host)
    {
        Command command = new("schema", "Prints the plan file's JSON Schema, for editors.");
        command.SetAction(_ =>
        {
            host.Print(PlanSchema.Text);
            return ExitCode.Done;
        });
        return command;
    }
}
