using Arraywright.Growing;

namespace Arraywright.Presentation.Terminal;

/// <summary>The label that would fill an input, and the kinds that come nearest.</summary>
internal static class IdealPart
{
    /// <summary>Writes one input.</summary>
    public static void Write(TextWriter writer, IdealPanel ideal, TerminalStyle style)
    {
        string full = ideal.FullW is { } fullW ? $" ({Figures.Of(fullW, "W")})" : "";
        EnergyParts.Heading(writer, $"Labels that would fill {ideal.Input}{full}", style);
        if (ideal is { HeldBy: { } why, ReachW: { } reachW })
        {
            TextFlow.Write(writer, "  ", $"Without asking no panels bring it more than {Figures.Of(reachW, "W")}: {why}. These would:", style.Width);
        }

        IdealLabel[] possible = [.. ideal.Labels.Where(label => label.IsPossible)];
        if (possible.Length > 0)
        {
            WriteWindows(writer, possible, style);
        }

        int[] not = [.. ideal.Labels.Where(label => !label.IsPossible).Select(label => label.InString).Distinct()];
        if (not.Length > 0)
        {
            TextFlow.Write(writer, "  ", $"Not with {string.Join(" or ", not)} in a string: the volts cannot stay inside its window both hot and cold and bring the watts.", style.Width);
        }

        WriteKinds(writer, ideal, style);
    }

    private static void WriteWindows(TextWriter writer, IdealLabel[] labels, TerminalStyle style)
    {
        TextTable table = new(true, true, true, true, true, true, false);
        table.Add(["in a string", "strings", "Voc, V", "Vmp, V", "Isc, A", "watts of one", ""]);
        foreach (IdealLabel label in labels)
        {
            // Rounded inwards: a label at the figure shown is inside the window.
            table.Add(
            [
                $"{label.InString}",
                $"{label.Strings}",
                label.LeastOpenCircuitV > label.LeastMaximumPowerV ? $"{Up(label.LeastOpenCircuitV, 1)} to {Down(label.MostOpenCircuitV, 1)}" : $"up to {Down(label.MostOpenCircuitV, 1)}",
                label.LeastMaximumPowerV > 0 ? $"{Up(label.LeastMaximumPowerV, 1)} to {Down(label.MostMaximumPowerV, 1)}" : $"up to {Down(label.MostMaximumPowerV, 1)}",
                label.MostShortCircuitA is { } mostA ? $"up to {Down(mostA, 2)}" : "ask",
                Watts(label),
                "",
            ]);
        }

        table.Write(writer, 2, style.Width, wrapped: 6);
    }

    private static string Watts(IdealLabel label) => (label.LeastPowerW, label.MostPowerW) switch
    {
        ({ } least, { } most) => $"{Up(least, 0)} to {Down(most, 0)}",
        ({ } least, null) => $"from {Up(least, 0)}",
        (null, { } most) => $"up to {Down(most, 0)}",
        _ => "any",
    };

    private static void WriteKinds(TextWriter writer, IdealPanel ideal, TerminalStyle style)
    {
        writer.WriteLine();
        TextFlow.Write(writer, "  ", "Which kind comes nearest, alone on it, in strong sun on a mild day:", style.Width);
        foreach (KindFit fit in ideal.Kinds)
        {
            string used = fit.UsedShare is { } share ? $", {Figures.Percent(100 * share)} of it" : "";
            string array = fit.InString == 0 ? "not even one may be connected" : $"{fit.InString} in a string, {Figures.Count(fit.Strings, "string")}: {Figures.Of(fit.TakenW, "W")}{used}";
            TextFlow.Write(writer, "  · ", $"{fit.Panel}: {array}.", style.Width);
            foreach (KindObstacle obstacle in fit.Obstacles)
            {
                string larger = obstacle.InString > fit.InString && fit.InString > 0 ? $"{obstacle.InString} in a string" : Figures.Count(obstacle.Strings, "string");
                TextFlow.Write(writer, "    ", $"{larger}: {FindingsTable.Word(obstacle.Finding.Level)}. {obstacle.Finding.Title}: {VerdictSentence.Compared(obstacle.Finding)}.", style.Width);
            }
        }
    }

    private static string Up(double value, int decimals) => Rounded(Math.Ceiling(value * Power(decimals)), decimals);

    private static string Down(double value, int decimals) => Rounded(Math.Floor(value * Power(decimals)), decimals);

    private static string Rounded(double scaled, int decimals) => Figures.Number(scaled / Power(decimals), decimals);

    private static double Power(int decimals) => decimals switch { 0 => 1, 1 => 10, _ => 100 };
}
