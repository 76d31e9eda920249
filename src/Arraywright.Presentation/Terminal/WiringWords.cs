using Arraywright.Electrical;

namespace Arraywright.Presentation.Terminal;

/// <summary>A wiring told in words, for whoever cannot see or read the picture.</summary>
public static class WiringWords
{
    /// <summary>One sentence, such as "2 strings side by side, each of 2 panels in a row."</summary>
    public static string Describe(Wiring wiring) => wiring switch
    {
        Wiring.Single => "One panel by itself.",
        Wiring.Series => $"One string: {StringOf(wiring)}.",
        _ => $"{wiring.Strings.Length} strings side by side{Strings(wiring)}.",
    };

    /// <summary>How the leads are plugged together: what a beginner must be told beside the picture.</summary>
    public static string HowToJoin(Wiring wiring) => wiring switch
    {
        Wiring.Single => "Its + lead goes to + of the input, its − lead to −.",
        Wiring.Series series when series.Parts.All(part => part is Wiring.Single) =>
            "The − lead of each plugs into the + lead of the next; the two left over, + of the first and − of the last, go to the input.",
        Wiring.Parallel parallel when parallel.Parts.All(part => part is Wiring.Single) =>
            "All + leads meet at + of the input, all − leads at −.",
        _ => "Within a string − plugs into the next +; where lines meet, + joins + and − joins −.",
    };

    private static string Strings(Wiring wiring)
    {
        (string Text, int Count)[] kinds = [.. wiring.Strings.Select(StringOf).GroupBy(text => text).Select(alike => (alike.Key, alike.Count()))];
        return kinds.Length == 1 ? $", each of {kinds[0].Text}" : $": {Listed([.. kinds.Select(kind => $"{kind.Count} of {kind.Text}")])}";
    }

    private static string StringOf(Wiring wiring) => wiring switch
    {
        Wiring.Series series when series.Parts.All(part => part is Wiring.Single) => $"{series.Parts.Length} panels in a row",
        Wiring.Series series => $"{series.Parts.Length} places in a row ({string.Join(", then ", Places(series))})",
        _ => "1 panel",
    };

    /// <summary>What stands at the places of a row, panels that follow each other told together.</summary>
    private static IEnumerable<string> Places(Wiring.Series series)
    {
        int inRow = 0;
        foreach (Wiring part in series.Parts)
        {
            if (part is Wiring.Single)
            {
                inRow++;
                continue;
            }

            if (inRow > 0)
            {
                yield return InRow(inRow);
                inRow = 0;
            }

            bool isFlat = part is Wiring.Parallel parallel && parallel.Parts.All(beside => beside is Wiring.Single);
            yield return isFlat ? $"{part.Panels.Count()} panels side by side" : $"{Describe(part)[..^1]}, in one place";
        }

        if (inRow > 0)
        {
            yield return InRow(inRow);
        }
    }

    private static string InRow(int panels) => panels == 1 ? "1 panel" : $"{panels} panels in a row";

    private static string Listed(string[] items) => $"{string.Join(", ", items[..^1])} and {items[^1]}";
}
