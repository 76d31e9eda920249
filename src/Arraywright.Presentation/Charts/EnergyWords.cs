using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Charts;

/// <summary>What the charts of a day and of a year both say.</summary>
internal static class EnergyWords
{
    /// <summary>The wiring of each input in one line.</summary>
    public static string Wirings(Design design) =>
        string.Join("; ", design.Assignments.Where(assignment => assignment.Wiring is not null).Select(assignment => $"{assignment.Input}: {DesignsTable.Text(assignment.Wiring)}"));

    /// <summary>What stands against the wiring; null where nothing does.</summary>
    public static string? Warning(Level verdict) => verdict switch
    {
        Level.Go => null,
        Level.Ask => $"{VerdictSentence.Word(verdict)}: do not connect it until somebody who knows has answered; \"arraywright check\" tells what to ask.",
        _ => $"{VerdictSentence.Word(verdict)}: do not connect it; \"arraywright check\" tells why.",
    };
}
