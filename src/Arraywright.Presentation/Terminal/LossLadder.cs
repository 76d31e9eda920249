namespace Arraywright.Presentation.Terminal;

/// <summary>Where the watts go: from the labels down to the input.</summary>
public static class LossLadder
{
    /// <summary>Writes the ladder of a design.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<LossStep> steps, TerminalStyle style) =>
        Ladder.Write(writer, [.. steps.Select((step, index) => new Rung(step.Stage, step.Watts, index == 0 || index == steps.Count - 1))], "W", style);
}
