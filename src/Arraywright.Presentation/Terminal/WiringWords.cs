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
        _ => $"{wiring.Strings.Length} strings side by side, {Strings(wiring)}.",
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
        string[] each = [.. wiring.Strings.Select(StringOf)];
        return Array.TrueForAll(each, text => text == each[0]) ? $"each of {each[0]}" : $"of {Listed(each)}";
    }

    private static string StringOf(Wiring wiring) => wiring switch
    {
        Wiring.Series series when series.Parts.All(part => part is Wiring.Single) => $"{series.Parts.Length} panels in a row",
        Wiring.Series series => $"{series.Parts.Length} places in a row, some of them panels side by side",
        _ => "1 panel",
    };

    private static string Listed(string[] items) => items.Length < 2
        ? items[0]
        : $"{string.Join(", ", items[..^1])} and {items[^1]}";
}
