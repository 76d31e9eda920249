using System.Collections.Immutable;
using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Parts.Connecting;

/// <summary>The sentences of the steps that depend on the wiring.</summary>
internal static class StepWords
{
    /// <summary>Equal strings in the same light agree within this share (label tolerance and the spread of their temperatures; common practice, no source).</summary>
    private const double AgreeFraction = 0.03;

    public const string PanelIfNot =
        "A minus sign: the probes or the leads are swapped. Nothing at all: a loose connector, or a broken lead. A third or a half missing: part of the panel is dead or in shade, leave it out.";

    /// <summary>A voltage to a tenth.</summary>
    public static string Volts(double voltageV) => voltageV.ToString("0.#", CultureInfo.InvariantCulture) + " V";

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
    public static ImmutableArray<string> Joining(ImmutableArray<Wiring> strings)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach ((string name, Wiring part) in Grouped(strings))
        {
            lines.Add($"{char.ToUpperInvariant(name[0])}{name[1..]}: {WiringText.Print(part)}.");
        }

        if (strings.Any(part => part is Wiring.Series { Parts: var parts } && parts.Any(inner => inner is Wiring.Parallel)))
        {
            lines.Add("Where panels stand side by side within a string, join these first, + with + and − with −, each checked for its sign.");
        }

        lines.Add("Panels covered: plug the + lead of each into the − lead of the next. Leave both ends of a string open and apart, so that they cannot touch.");
        lines.Add("Push until it clicks, then pull: a connector that comes apart was not home.");
        return lines.ToImmutable();
    }

    /// <summary>What a wrong reading of a string means.</summary>
    public static string StringIfNot(ImmutableArray<Wiring> strings) =>
        strings.All(part => part is Wiring.Single)
            ? "A minus sign: its leads are swapped."
            : "A minus sign: the ends are swapped. One panel's volts too few: a panel is missing or a connector is open. Twice one panel's volts too few: a panel stands the wrong way round. One panel's volts too many: one panel too many in the row.";

    /// <summary>How strings are joined side by side, with what they may differ by.</summary>
    public static ImmutableArray<string> JoiningStrings(ImmutableArray<ExpectedReading> strings)
    {
        double differenceV = AgreeFraction * strings.Max(reading => reading.Standard);
        string agree = strings.Length == 1
            ? $"Only when every string shows the same sign and they agree within about {Volts(differenceV)} of each other in the same light."
            : $"Only when every string shows the same sign, and each stands within about {Volts(differenceV)} of its own figure: these strings differ by plan, and settle between their voltages once joined.";
        return
        [
            agree,
            "Panels covered, fuses out: all + ends together in one branch connector, all − ends together in another.",
            "Then put the fuses in, if there are any: they are part of the string, never a switch.",
        ];
    }

    /// <summary>What lowers a reading that is of one input by itself.</summary>
    public static string HeldTogether(Assignment assignment) => assignment.HeldByUnit is { } held
        ? $" And less than these figures once the other inputs of {held.Unit} give power too: it takes at most {held.MaxW.ToString("0", CultureInfo.InvariantCulture)} W from all of them."
        : "";

    /// <summary>How the run goes into the input.</summary>
    public static ImmutableArray<string> Connecting(DcInput input) =>
    [
        $"{(input.Unit is { } unit ? unit : "The unit")} is off and the switch in the run is open. Where the manual wants the battery connected first, it is.",
        $"Adapter and plug into {input.Name}: + to +, − to −, all the way in.",
    ];
}
