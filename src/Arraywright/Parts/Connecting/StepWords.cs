using System.Collections.Immutable;
using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Limits;

namespace Arraywright.Parts.Connecting;

/// <summary>The sentences of the steps that depend on the wiring.</summary>
internal static class StepWords
{
    /// <summary>Equal strings in the same light agree within this share (label tolerance and the spread of their temperatures; common practice, no source).</summary>
    private const double AgreeFraction = 0.03;

    public const string PanelIfNot =
        "A minus sign: the probes or the leads are swapped. Nothing at all: still covered, a loose connector, or a broken lead. A third or a half missing: part of the panel is dead or in shade, leave it out.";

    /// <summary>Equal strings that stand beside each other under one name: "strings 1 to 4, each".</summary>
    public static IEnumerable<(string Name, Wiring Part)> Grouped(ImmutableArray<Wiring> strings)
    {
        for (int first = 0, next; first < strings.Length; first = next)
        {
            next = first + 1;
            while (next < strings.Length && strings[next].Equals(strings[first]))
            {
                next++;
            }

            string name = strings.Length == 1 ? "the string"
                : next - first == 1 ? $"string {next}"
                : $"strings {first + 1} {(next - first == 2 ? "and" : "to")} {next}, each";
            yield return (name, strings[first]);
        }
    }

    /// <summary>What each string is made of, and how its leads go.</summary>
    public static ImmutableArray<string> Joining(ConnectedInput one)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach ((string name, Wiring part) in Grouped(one.Wiring.Strings))
        {
            lines.Add($"{char.ToUpperInvariant(name[0])}{name[1..]}: {WiringText.Print(part)}.");
        }

        if (one.WithinStrings is { IsEmpty: false } connectors)
        {
            lines.Add($"Where panels stand side by side within a string, join these first, + with + and − with −, each checked for its sign: for + {Connectors(connectors)}, for − as many.");
        }

        lines.Add("Panels covered: in the order written, plug the − lead of each into the + lead of the next. The + lead of the first and the − lead of the last are the ends of the string: leave them open and apart, so that they cannot touch.");
        lines.Add("Push until it clicks, then pull: a connector that comes apart was not home.");
        return lines.ToImmutable();
    }

    /// <summary>What a wrong reading of a string means.</summary>
    public static string StringIfNot(ConnectedInput one) =>
        $"0 V: still covered, or a connector is open{(one.HasFuses ? ", or the probe is behind a fuse that is out" : "")}. A minus sign: the ends are swapped.{VoltsOff(one)}";

    /// <summary>What a wrong reading of the whole array means.</summary>
    public static string ArrayIfNot(ConnectedInput one)
    {
        string limit = TouchVoltage.Text(one.Input.MaxVoltageV);
        return $"0 V: the switch is open, the panels are still covered, {(one.HasFuses ? "a fuse is open or not put in, " : "")}or a connector is not home. "
            + "A minus sign: + and − are swapped on the way to this plug; open the switch, cover the panels, put it right, and measure again. "
            + $"{limit} or more: do not connect, there are more panels in series than planned.{(one.Wiring.Strings.Length == 1 ? VoltsOff(one) : "")}";
    }

    /// <summary>How strings are joined side by side, with what they may differ by.</summary>
    public static ImmutableArray<string> JoiningStrings(ConnectedInput one, ImmutableArray<ExpectedReading> strings)
    {
        double differenceV = AgreeFraction * strings.Max(reading => reading.Standard);
        string agree = strings.Length == 1
            ? $"Only when every string shows the same sign and they agree within about {TouchVoltage.Text(differenceV)} of each other in the same light."
            : $"Only when every string shows the same sign, and each stands within about {TouchVoltage.Text(differenceV)} of its own figure: these strings differ by plan, and settle between their voltages once joined.";
        ImmutableArray<Piece> connectors = one.BetweenStrings;
        string join = $"Cover the panels again{(one.HasFuses ? ", fuses out" : "")}: all + ends together in {Connectors(connectors)}, all − ends in {(connectors.Length == 1 ? "another" : "as many others")}.";
        return
        [
            agree,
            connectors.Length == 1 ? join : $"{join} The ends first, as drawn, then what comes out of these, until one lead of each sign is left.",
            .. one.HasFuses ? ["Then put the fuses in: they are part of the string, never a switch."] : ImmutableArray<string>.Empty,
        ];
    }

    /// <summary>What lowers a reading that is of one input by itself.</summary>
    public static string HeldTogether(Assignment assignment) => assignment.HeldByUnit is { } held
        ? $" And less than these figures once the other inputs of {held.Unit} give power too: it takes at most {held.MaxW.ToString("0", CultureInfo.InvariantCulture)} W from all of them."
        : "";

    /// <summary>How the whole array is measured: its plug is in nothing, so the switch closes and opens without current.</summary>
    public static ImmutableArray<string> Measuring(ConnectedInput one) =>
    [
        $"Panels covered: join the run to the array, + to + and − to −, with the switch and whatever else is drawn on the way, as far as the plug for {one.Name}.",
        "This plug stays out of everything: so no current can flow. Uncover the panels, and close the switch in the run.",
        "Red probe on + of the plug, black probe on −: sign first, then volts.",
        $"{one.Name} bears {TouchVoltage.Text(one.Input.MaxVoltageV)}, at no time more. This array reaches {TouchVoltage.Text(one.Assignment.VocColdV)} on the coldest morning.",
        "Open the switch again. Where there is none, cover the panels again.",
    ];

    /// <summary>How the run goes into the input.</summary>
    /// <param name="one">The input.</param>
    /// <param name="isOneOfSeveral">Whether its unit may have other inputs that are connected too.</param>
    public static ImmutableArray<string> Connecting(ConnectedInput one, bool isOneOfSeveral) =>
    [
        $"Make sure that {one.Unit} is off and the switch in the run is open, or where there is none, that the panels are covered. Where the manual wants the battery connected first, it is.",
        $"Adapter and plug into {one.Name}: + to +, − to −, all the way in.",
        .. isOneOfSeveral ? ["Leave all of it so until every input is plugged in."] : ImmutableArray<string>.Empty,
    ];

    /// <summary>A voltage that is off by whole panels; nothing to say where no panels stand in a row.</summary>
    private static string VoltsOff(ConnectedInput one) => one.Wiring.Strings.All(part => part is Wiring.Single)
        ? ""
        : " One panel's volts too few: a panel is missing or a connector is open. Twice one panel's volts too few: a panel stands the wrong way round. One panel's volts too many: one panel too many in the row.";

    /// <summary>"one branch connector (4 into 1)", "branch connectors (1 × 3 into 1, 2 × 2 into 1)".</summary>
    private static string Connectors(ImmutableArray<Piece> connectors) => connectors.Length == 1
        ? $"one branch connector ({PieceWords.IntoOne(connectors[0].Ways)})"
        : $"branch connectors ({string.Join(", ", connectors.GroupBy(piece => piece.Ways).OrderByDescending(same => same.Key).Select(same => $"{same.Count()} × {PieceWords.IntoOne(same.Key)}"))})";
}
