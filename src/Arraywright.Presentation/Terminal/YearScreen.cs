using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>A year as text: what it brings, month by month, where the energy goes, what the battery sees.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class YearScreen(TextWriter writer, TerminalStyle style)
{
    private static readonly string[] Levels = ["label", "into the unit", "used or stored"];

    /// <summary>Writes everything.</summary>
    public void Write(YearResult result)
    {
        TextFlow.Write(writer, "", result.Plan.Name, style.Width, style.Faint);
        writer.WriteLine();
        WriteShort(result);
        foreach (Assignment assignment in result.Design.Assignments.Where(assignment => assignment.Wiring is not null))
        {
            TextFlow.Write(writer, "  ", $"{assignment.Input}: {DesignsTable.Text(assignment.Wiring)}", style.Width);
        }

        Heading("Month by month, kWh into the inputs; pale: what their limits cut off");
        WriteMonths(result.Energy);
        Heading("Where the year's energy goes");
        Ladder.Write(writer, [.. result.Energy.Losses.Select(step => new Rung(step.Stage, step.KWh, Levels.Contains(step.Stage)))], "kWh", style);
        Heading("What held the inputs");
        WriteHours(result.Energy);
        if (result.Energy.Battery is { } battery)
        {
            Heading("The battery");
            WriteBattery(battery);
        }

        Heading("The weather");
        TextFlow.Write(writer, "  ", $"{Capital(result.WeatherSource)}.", style.Width);
        Heading("What was assumed");
        AssumedList.Write(writer, result.Assumed, style);
        Heading("Before you touch a lead");
        foreach (string caution in result.Cautions)
        {
            TextFlow.Write(writer, "  · ", caution, style.Width);
        }
    }

    /// <summary>Writes the answer in one sentence.</summary>
    public void WriteShort(YearResult result)
    {
        EnergySpan year = result.Energy.Total;
        string cut = year.ClippedKWh < 0.05
            ? "next to nothing is cut off by the inputs' limits"
            : $"{Figures.Of(year.ClippedKWh, "kWh")} ({Figures.Percent(100 * year.ClippedKWh / Math.Max(1e-9, year.ClippedKWh + year.DeliveredKWh))}) are cut off by their limits";
        string verdict = result.Verdict switch
        {
            Level.Go => "",
            Level.Ask => " But ask first: `arraywright check` tells what.",
            _ => " But do not connect it: `arraywright check` tells why.",
        };
        TextFlow.Write(writer, "", $"In a year this wiring brings {Figures.Of(year.DeliveredKWh, "kWh")} into the inputs; {cut}.{verdict}", style.Width, style.Strong);
    }

    private void WriteMonths(EnergyResult energy)
    {
        const int NameWidth = 9;
        double most = energy.Spans.Max(span => span.DeliveredKWh + span.ClippedKWh);
        string[] amounts = [.. energy.Spans.Select(span => Figures.Number(span.DeliveredKWh, 1))];
        int amountWidth = amounts.Max(text => text.Length);
        double scale = (style.Width - NameWidth - amountWidth - 6) / Math.Max(1e-9, most);
        for (int month = 0; month < energy.Spans.Length; month++)
        {
            EnergySpan span = energy.Spans[month];
            string bar = Ladder.Bar(span.DeliveredKWh, span.DeliveredKWh + span.ClippedKWh, scale);
            writer.WriteLine($"  {span.Name.PadRight(NameWidth)}  {amounts[month].PadLeft(amountWidth)}  {bar}".TrimEnd());
        }
    }

    private void WriteHours(EnergyResult energy)
    {
        HoursLimited hours = energy.HoursLimited;
        (string What, double Hours)[] held = [("current limit", hours.Current), ("power limit", hours.Power), ("voltage window", hours.Voltage)];
        string[] told = [.. held.Where(one => one.Hours > 0).Select(one => $"{one.Hours:0} hours by the {one.What}")];
        string text = told.Length == 0 ? "Nothing, in any hour of the year." : $"{string.Join(", ", told)}.";
        TextFlow.Write(writer, "  ", text, style.Width);
        if (energy.WithinStepKWh > 0.05)
        {
            TextFlow.Write(writer, "  ", $"{Figures.Of(energy.WithinStepKWh, "kWh")} of what is cut off falls in bright minutes of mixed hours, which the hours' means hide.", style.Width);
        }
    }

    private void WriteBattery(BatteryReport battery)
    {
        string full = battery.HoursToFull is { } hours ? $"First full after {hours:0} hours. " : "It never gets full. ";
        string load = battery.LoadKWh > 0
            ? $"The load asks for {Figures.Of(battery.LoadKWh, "kWh")} and gets {Figures.Of(battery.ServedKWh, "kWh")}; it is met all day on {battery.DaysLoadMet} of {battery.Days} days. Lowest charge {Figures.Percent(100 * battery.LowestStateOfCharge)}."
            : "The plan states no load: once full it stays full.";
        TextFlow.Write(writer, "  ", $"{full}{load} {Figures.Of(battery.TurnedAwayKWh, "kWh")} are turned away because it is full or nearly so.", style.Width);
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private void Heading(string text)
    {
        writer.WriteLine();
        writer.WriteLine(style.Strong(text));
    }
}
