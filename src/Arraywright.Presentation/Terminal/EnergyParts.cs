using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>What the screens of a year and of a day share.</summary>
internal static class EnergyParts
{
    /// <summary>Share of what goes into the inputs from which on what is turned away comes first.</summary>
    private const double Much = 0.1;

    private static readonly string[] Levels = ["label", "into the unit", "used or stored"];

    /// <summary>How much of it the inputs' limits cut off, as the end of a sentence.</summary>
    public static string CutOff(EnergySpan span) => span.ClippedKWh < 0.005 * Math.Max(0.1, span.DeliveredKWh)
        ? "next to nothing is cut off by the inputs' limits"
        : $"{Figures.Energy(span.ClippedKWh)} ({Figures.Percent(100 * span.ClippedKWh / (span.ClippedKWh + span.DeliveredKWh))}) are cut off by their limits";

    /// <summary>What a span brings, in one sentence: what goes into the inputs, or what of it is used where a full battery turns much away.</summary>
    /// <param name="when">As the sentence begins: "In a year".</param>
    /// <param name="energy">The energy.</param>
    public static string Brings(string when, EnergyResult energy)
    {
        EnergySpan total = energy.Total;
        return IsMuchTurnedAway(energy)
            ? $"{when} {Figures.Energy(UsedKWh(total))} of what this wiring brings are used or stored: of {Figures.Energy(total.DeliveredKWh)} into the inputs {Figures.Energy(TurnedAwayKWh(total))} find no room, the battery being full or nearly so{(energy.Battery!.LoadKWh > 0 ? "" : " and the plan stating no load")}; {CutOff(total)}."
            : $"{when} this wiring brings {Figures.Energy(total.DeliveredKWh)} into the inputs; {CutOff(total)}.";
    }

    /// <summary>The same, as an entry of a table.</summary>
    public static string BringsInShort(EnergyResult energy, string inputs)
    {
        EnergySpan total = energy.Total;
        string used = IsMuchTurnedAway(energy) ? $"{Figures.Energy(UsedKWh(total))} used or stored of " : "";
        return $"{used}{Figures.Energy(total.DeliveredKWh)} into the {inputs}; {CutOff(total)}";
    }

    /// <summary>Offered after conversion, and no room for it, kWh.</summary>
    public static double TurnedAwayKWh(EnergySpan span) =>
        Math.Clamp(span.LevelsKWh[(int)Stage.Conversion] - span.LevelsKWh[(int)Stage.BatteryFull], 0, span.DeliveredKWh);

    private static double UsedKWh(EnergySpan span) => span.LevelsKWh[(int)Stage.BatteryFull];

    private static bool IsMuchTurnedAway(EnergyResult energy) => energy.Battery is not null && TurnedAwayKWh(energy.Total) > Much * energy.Total.DeliveredKWh;

    /// <summary>What the verdict on the wiring adds to a sentence about its energy.</summary>
    public static string But(Level verdict) => verdict switch
    {
        Level.Go => "",
        Level.Ask => " But ask first: `arraywright check` tells what.",
        _ => " But do not connect it: `arraywright check` tells why.",
    };

    /// <summary>The wiring of each input.</summary>
    public static void WriteWirings(TextWriter writer, Design design, TerminalStyle style)
    {
        foreach (Assignment assignment in design.Assignments.Where(assignment => assignment.Wiring is not null))
        {
            TextFlow.Write(writer, "  ", $"{assignment.Input}: {DesignsTable.Text(assignment.Wiring)}", style.Width);
        }
    }

    /// <summary>A heading after an empty line.</summary>
    public static void Heading(TextWriter writer, string text, TerminalStyle style)
    {
        writer.WriteLine();
        writer.WriteLine(style.Strong(text));
    }

    /// <summary>Where the energy of a span goes, what held the inputs, and the battery.</summary>
    /// <param name="writer">Where the text goes.</param>
    /// <param name="energy">The energy.</param>
    /// <param name="span">"year" or "day".</param>
    /// <param name="style">Width and colour.</param>
    public static void WriteEnergy(TextWriter writer, EnergyResult energy, string span, TerminalStyle style)
    {
        Heading(writer, $"Where the {span}'s energy goes", style);
        WriteLadder(writer, energy, style);
        Heading(writer, "What held the inputs", style);
        TextFlow.Write(writer, "  ", Held(energy, $"Nothing, in any hour of the {span}."), style.Width);
        if (energy.Battery is { } battery)
        {
            Heading(writer, "The battery", style);
            TextFlow.Write(writer, "  ", Battery(battery), style.Width);
        }
    }

    /// <summary>What the figures rest on, and the cautions.</summary>
    public static void WriteGrounds(TextWriter writer, string weatherSource, IReadOnlyList<Assumption> assumed, IEnumerable<string> cautions, TerminalStyle style)
    {
        Heading(writer, "The weather", style);
        TextFlow.Write(writer, "  ", $"{char.ToUpperInvariant(weatherSource[0])}{weatherSource[1..]}.", style.Width);
        Heading(writer, "What was assumed", style);
        AssumedList.Write(writer, assumed, style);
        Heading(writer, "Before you touch a lead", style);
        foreach (string caution in cautions)
        {
            TextFlow.Write(writer, "  · ", caution, style.Width);
        }
    }

    /// <summary>Whether a step of the ladder is a level; the others take something.</summary>
    public static bool IsLevel(EnergyStep step) => Levels.Contains(step.Stage);

    private static void WriteLadder(TextWriter writer, EnergyResult energy, TerminalStyle style)
    {
        bool isSmall = energy.Losses[0].KWh < 10;
        string unit = isSmall ? "Wh" : "kWh";
        Ladder.Write(writer, [.. energy.Losses.Select(step => new Rung(step.Stage, step.KWh * (isSmall ? 1000 : 1), IsLevel(step)))], unit, style);
    }

    /// <summary>How long each limit held the inputs.</summary>
    /// <param name="energy">The energy.</param>
    /// <param name="never">What to say where none did.</param>
    public static string Held(EnergyResult energy, string never)
    {
        HoursLimited hours = energy.HoursLimited;
        (string What, double Hours)[] held = [("current limit", hours.Current), ("power limit", hours.Power), ("voltage window", hours.Voltage)];
        string[] told =
        [
            .. held.Where(one => one.Hours > 0).Select(one => $"{one.Hours:0.#} hours by the {one.What}"),
            .. hours.Off > 0 ? [$"{hours.Off:0.#} hours off in light, the volts too low for window or start"] : Array.Empty<string>(),
        ];
        string sentence = told.Length == 0 ? never : $"{string.Join(", ", told)}.";
        return energy.WithinStepKWh > 0.005 * energy.Total.DeliveredKWh
            ? $"{sentence} {Figures.Energy(energy.WithinStepKWh)} of what is cut off falls in bright minutes of mixed hours, which the hours' means hide."
            : sentence;
    }

    /// <summary>What the battery saw.</summary>
    public static string Battery(BatteryReport battery)
    {
        string full = battery.HoursToFull is { } hours ? $"First full after {hours:0} hours. " : "It does not get full. ";
        string days = battery.Days > 1 ? $"; it is met all day on {battery.DaysLoadMet} of {battery.Days} days" : "";
        string load = battery.LoadKWh > 0
            ? $"The load asks for {Figures.Energy(battery.LoadKWh)} and gets {Figures.Energy(battery.ServedKWh)}{days}. Lowest charge {Figures.Percent(100 * battery.LowestStateOfCharge)}."
            : "The plan states no load: once full it stays full.";
        return $"{full}{load} {Figures.Energy(battery.TurnedAwayKWh)} are turned away because it is full or nearly so.";
    }
}
