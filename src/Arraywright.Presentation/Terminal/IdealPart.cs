using Arraywright.Growing;

namespace Arraywright.Presentation.Terminal;

/// <summary>The label that would fill an input, and the kinds that come nearest.</summary>
internal static class IdealPart
{
    /// <summary>What the kinds are listed under.</summary>
    public const string Nearest = "Which kind comes nearest, alone on it, in strong sun on a mild day:";

    /// <summary>Headings of the windows.</summary>
    public static string[] Columns { get; } = ["in a string", "strings", "Voc, V", "Vmp, V", "Isc, A", "watts of one"];

    /// <summary>Writes one input.</summary>
    public static void Write(TextWriter writer, IdealPanel ideal, TerminalStyle style)
    {
        EnergyParts.Heading(writer, Title(ideal), style);
        if (Reach(ideal) is { } reach)
        {
            TextFlow.Write(writer, "  ", reach, style.Width);
        }

        string[][] windows = [.. Windows(ideal)];
        if (windows.Length > 0)
        {
            TextTable table = new(true, true, true, true, true, true, false);
            table.Add([.. Columns, ""]);
            foreach (string[] row in windows)
            {
                table.Add([.. row, ""]);
            }

            table.Write(writer, 2, style.Width, wrapped: Columns.Length);
        }

        if (NotPossible(ideal) is { } not)
        {
            TextFlow.Write(writer, "  ", not, style.Width);
        }

        writer.WriteLine();
        TextFlow.Write(writer, "  ", Nearest, style.Width);
        foreach (KindFit fit in ideal.Kinds)
        {
            TextFlow.Write(writer, "  · ", Fit(fit), style.Width);
            foreach (KindObstacle obstacle in fit.Obstacles)
            {
                TextFlow.Write(writer, "    ", Obstacle(fit, obstacle), style.Width);
            }
        }
    }

    /// <summary>What the windows are of.</summary>
    public static string Title(IdealPanel ideal) => $"Labels that would fill {ideal.Input}{(ideal.FullW is { } fullW ? $" ({Figures.Of(fullW, "W")})" : "")}";

    /// <summary>That nothing fills it without asking; null where something does.</summary>
    public static string? Reach(IdealPanel ideal) => ideal is { HeldBy: { } why, ReachW: { } reachW }
        ? $"Without asking no panels bring it more than {Figures.Of(reachW, "W")}: {why}. These would:"
        : null;

    /// <summary>Lengths of string that no panel can fill it with; null where any can.</summary>
    public static string? NotPossible(IdealPanel ideal)
    {
        int[] not = [.. ideal.Labels.Where(label => !label.IsPossible).Select(label => label.InString).Distinct()];
        return not.Length == 0 ? null : $"Not with {string.Join(" or ", not)} in a string: the volts cannot stay inside its window both hot and cold and bring the watts.";
    }

    /// <summary>The windows that a label has to be in, rounded inwards: a label at the figure shown is inside.</summary>
    public static IEnumerable<string[]> Windows(IdealPanel ideal) => ideal.Labels.Where(label => label.IsPossible).Select(label => new[]
    {
        $"{label.InString}",
        $"{label.Strings}",
        label.LeastOpenCircuitV > label.LeastMaximumPowerV ? $"{Up(label.LeastOpenCircuitV, 1)} to {Down(label.MostOpenCircuitV, 1)}" : $"up to {Down(label.MostOpenCircuitV, 1)}",
        label.LeastMaximumPowerV > 0 ? $"{Up(label.LeastMaximumPowerV, 1)} to {Down(label.MostMaximumPowerV, 1)}" : $"up to {Down(label.MostMaximumPowerV, 1)}",
        label.MostShortCircuitA is { } mostA ? $"up to {Down(mostA, 2)}" : "ask",
        Watts(label),
    });

    /// <summary>How well a kind fits.</summary>
    public static string Fit(KindFit fit)
    {
        string used = fit.UsedShare is { } share ? $", {Figures.Percent(100 * share)} of it" : "";
        string array = fit.InString == 0 ? "not even one may be connected" : $"{fit.InString} in a string, {Figures.Count(fit.Strings, "string")}: {Figures.Of(fit.TakenW, "W")}{used}";
        return $"{fit.Panel}: {array}.";
    }

    /// <summary>What keeps a kind from being more.</summary>
    public static string Obstacle(KindFit fit, KindObstacle obstacle)
    {
        string larger = obstacle.InString > fit.InString && fit.InString > 0 ? $"{obstacle.InString} in a string" : Figures.Count(obstacle.Strings, "string");
        return $"{larger}: {FindingsTable.Word(obstacle.Finding.Level)}. {obstacle.Finding.Title}: {VerdictSentence.Compared(obstacle.Finding)}.";
    }

    private static string Watts(IdealLabel label) => (label.LeastPowerW, label.MostPowerW) switch
    {
        ({ } least, { } most) => $"{Up(least, 0)} to {Down(most, 0)}",
        ({ } least, null) => $"from {Up(least, 0)}",
        (null, { } most) => $"up to {Down(most, 0)}",
        _ => "any",
    };

    private static string Up(double value, int decimals) => Rounded(Math.Ceiling(value * Power(decimals)), decimals);

    private static string Down(double value, int decimals) => Rounded(Math.Floor(value * Power(decimals)), decimals);

    private static string Rounded(double scaled, int decimals) => Figures.Number(scaled / Power(decimals), decimals);

    private static double Power(int decimals) => decimals switch { 0 => 1, 1 => 10, _ => 100 };
}
