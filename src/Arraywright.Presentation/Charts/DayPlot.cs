using Arraywright.Energy;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Arraywright.Presentation.Charts;

/// <summary>A day: power taken, power cut off by the inputs' limits above it, and the battery's charge on a second axis.</summary>
public static class DayPlot
{
    private const string Power = "W";
    private const string Charge = "%";

    /// <summary>The chart of a day.</summary>
    /// <param name="result">The day; its <see cref="EnergyResult.Moments"/> are there.</param>
    public static Chart Of(DayResult result) => new(Words(result), 420, () => Plot(result.Energy));

    private static ChartWords Words(DayResult result)
    {
        EnergySpan day = result.Energy.Total;
        string taken = $"into the inputs, {Figures.Energy(day.DeliveredKWh)}";
        string date = $"{result.Date:MMMM d}";
        List<ChartKey> keys =
        [
            ChartKey.Area(taken, ChartColors.Blue, Hatching.None),
            ChartKey.Area($"cut off by their limits, {Figures.Energy(day.ClippedKWh)}", ChartColors.Orange, Hatching.Rising),
        ];
        string charge = "";
        if (Charges(result.Energy) is { Count: > 0 } charges)
        {
            string range = $"{Figures.Percent(100 * charges.Min())} to {Figures.Percent(100 * charges.Max())}";
            keys.Add(ChartKey.Line($"charge of the battery, {range}", ChartColors.Ink, 2, LineStyle.Dash));
            charge = $" Charge of the battery: {range}.";
        }

        return new ChartWords
        {
            Title = $"{result.Plan.Name}: {date}, hour by hour",
            Description = $"{EnergyWords.Wirings(result.Design)}. On {date} {Figures.Energy(day.DeliveredKWh)} go into the inputs; {EnergyParts.CutOff(day)}. "
                + $"{Most(result.Energy)}{charge} Weather: {result.WeatherSource}.{(EnergyWords.Warning(result.Verdict) is { } warning ? " " + warning : "")}",
            Heading = result.Plan.Name,
            Warning = EnergyWords.Warning(result.Verdict),
            Details = [EnergyWords.Wirings(result.Design), $"{date}, by the hour of the day."],
            Keys = [.. keys],
        };
    }

    private static string Most(EnergyResult energy)
    {
        EnergyMoment most = energy.Moments.MaxBy(moment => moment.TakenW);
        return $"Most at a time: {Figures.Of(most.TakenW, "W")}, until {most.EndsAtHour:0.##} o'clock.";
    }

    private static List<double> Charges(EnergyResult energy) => [.. energy.Moments.Select(moment => moment.StateOfCharge).OfType<double>()];

    private static PlotModel Plot(EnergyResult energy)
    {
        PlotModel plot = PlotStyle.Plot();
        double mostW = energy.Moments.Max(moment => Math.Max(moment.UnlimitedW, moment.TakenW));
        LinearAxis hours = PlotStyle.Axis(AxisPosition.Bottom, "hour of the day", 24, 8);
        hours.MajorStep = 3;
        plot.Axes.Add(hours);
        LinearAxis power = PlotStyle.Axis(AxisPosition.Left, "watts, W", Math.Max(1, 1.08 * mostW), 6);
        power.Key = Power;
        plot.Axes.Add(power);
        plot.Series.Add(new BandSeries(Bands(energy, _ => 0, moment => moment.TakenW), ChartColors.Blue, Hatching.None) { YAxisKey = Power });
        plot.Series.Add(new BandSeries(Bands(energy, moment => moment.TakenW, moment => moment.UnlimitedW), ChartColors.Orange, Hatching.Rising) { YAxisKey = Power });
        if (Charges(energy).Count > 0)
        {
            AddCharge(plot, energy);
        }

        return plot;
    }

    private static List<Band> Bands(EnergyResult energy, Func<EnergyMoment, double> lower, Func<EnergyMoment, double> upper)
    {
        double stepH = energy.Moments.Zip(energy.Moments.Skip(1), (one, next) => next.EndsAtHour - one.EndsAtHour).Where(hours => hours > 0).DefaultIfEmpty(24).Min();
        return [.. energy.Moments.Select(moment => new Band(Math.Max(0, moment.EndsAtHour - stepH), moment.EndsAtHour, lower(moment), upper(moment)))];
    }

    private static void AddCharge(PlotModel plot, EnergyResult energy)
    {
        LinearAxis axis = PlotStyle.Axis(AxisPosition.Right, "charge of the battery, %", 108, 4);
        axis.Key = Charge;
        axis.MajorStep = 25;
        axis.MajorGridlineStyle = LineStyle.None;
        plot.Axes.Add(axis);
        foreach ((OxyColor color, double thickness, LineStyle style) in new[] { (ChartColors.Card, 4.0, LineStyle.Solid), (ChartColors.Ink, 2.0, LineStyle.Dash) })
        {
            LineSeries line = new() { YAxisKey = Charge, Color = color, StrokeThickness = thickness, LineStyle = style };
            line.Points.AddRange(energy.Moments.Where(moment => moment.StateOfCharge is not null).Select(moment => new DataPoint(moment.EndsAtHour, 100 * moment.StateOfCharge!.Value)));
            plot.Series.Add(line);
        }
    }
}
