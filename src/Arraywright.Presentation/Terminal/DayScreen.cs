using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Planning;
using Arraywright.Sky;

namespace Arraywright.Presentation.Terminal;

/// <summary>A day as text: what it brings, hour by hour, where the energy goes.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class DayScreen(TextWriter writer, TerminalStyle style)
{
    private const int TableWidth = 52;

    /// <summary>Steps shorter than this are shown by the hour; --csv and --json have them all.</summary>
    private const double ShortestRowH = 0.25;

    /// <summary>Writes everything.</summary>
    public void Write(DayResult result)
    {
        TextFlow.Write(writer, "", result.Plan.Name, style.Width, style.Faint);
        writer.WriteLine();
        WriteShort(result);
        EnergyParts.WriteWirings(writer, result.Design, style);
        EnergyParts.Heading(writer, "Hour by hour; pale: what the inputs' limits cut off", style);
        TextFlow.Write(writer, "  ", Sun(result), style.Width);
        WriteHours(result.Energy);
        EnergyParts.WriteEnergy(writer, result.Energy, "day", style);
        EnergyParts.WriteGrounds(writer, result.WeatherSource, result.Assumed, result.Cautions, style);
    }

    /// <summary>Writes the answer in one sentence.</summary>
    public void WriteShort(DayResult result) =>
        TextFlow.Write(writer, "", EnergyParts.Brings($"On {result.Date:MMMM d}", result.Energy) + EnergyParts.But(result.Verdict), style.Width, style.Strong);

    private static string Sun(DayResult result) => result.Daylight switch
    {
        Daylight.RisesAndSets => $"Sunrise {Clock(result.SunriseHour)}, sunset {Clock(result.SunsetHour)}, local standard time.",
        Daylight.AllDay => "The sun does not set.",
        _ => "The sun does not rise.",
    };

    private static string Clock(double hour)
    {
        int minutes = (int)Math.Round((hour - (24 * Math.Floor(hour / 24))) * 60);
        return $"{minutes / 60 % 24:00}:{minutes % 60:00}";
    }

    private void WriteHours(EnergyResult energy)
    {
        bool hasBattery = energy.Moments.Any(moment => moment.StateOfCharge is not null);
        List<EnergyMoment> rows = Rows(energy);
        double most = Math.Max(1e-9, rows.Max(moment => moment.UnlimitedW));
        double scale = Math.Max(0, style.Width - TableWidth) / most;
        writer.WriteLine($"  until     sun  cells    taken{(hasBattery ? "  battery" : "         ")}  held by".TrimEnd());
        foreach (EnergyMoment moment in rows.Where(moment => moment.PlaneWPerM2 > 0))
        {
            string battery = hasBattery ? $"{100 * (moment.StateOfCharge ?? 0),7:0} %" : new string(' ', 9);
            string held = moment.LimitedBy switch
            {
                LimitedBy.Current => "current",
                LimitedBy.Power => "power",
                LimitedBy.Voltage => "voltage",
                LimitedBy.AboveWindow => "window",
                LimitedBy.Off => "off",
                _ => "",
            };
            string bar = Ladder.Bar(moment.TakenW, moment.UnlimitedW, scale);
            writer.WriteLine($"  {Clock(moment.EndsAtHour)} {moment.PlaneWPerM2,7:0} {Figures.Number(moment.CellC, 0),3} °C {moment.TakenW,6:0} W{battery}  {held,-8}  {bar}".TrimEnd());
        }
    }

    /// <summary>The steps, or where they are short the hours that they make: means, and what held them longest.</summary>
    private static List<EnergyMoment> Rows(EnergyResult energy)
    {
        double stepH = energy.Moments.Length > 1 ? energy.Moments[1].EndsAtHour - energy.Moments[0].EndsAtHour : 1;
        if (stepH >= ShortestRowH)
        {
            return [.. energy.Moments];
        }

        return
        [
            .. energy.Moments.GroupBy(moment => Math.Ceiling(moment.EndsAtHour - 1e-9)).Select(hour => new EnergyMoment(
                hour.Key,
                hour.Average(moment => moment.PlaneWPerM2),
                hour.Average(moment => moment.CellC),
                hour.Average(moment => moment.UnlimitedW),
                hour.Average(moment => moment.TakenW),
                hour.GroupBy(moment => moment.LimitedBy).OrderByDescending(held => held.Count()).First().Key,
                hour.Last().StateOfCharge)),
        ];
    }
}
