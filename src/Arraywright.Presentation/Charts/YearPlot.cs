using Arraywright.Energy;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;
using OxyPlot;
using OxyPlot.Axes;

namespace Arraywright.Presentation.Charts;

/// <summary>A year: a bar a month of what goes into the inputs, of it what a full battery leaves unused, and above it what limits cut off.</summary>
public static class YearPlot
{
    private const double HalfBar = 0.39;

    /// <summary>The chart of a year.</summary>
    public static Chart Of(YearResult result) => new(Words(result), 420, () => Plot(result.Energy));

    private static ChartWords Words(YearResult result)
    {
        EnergyResult energy = result.Energy;
        EnergySpan year = energy.Total;
        List<ChartKey> keys = [ChartKey.Area($"into the inputs, {Figures.Energy(year.DeliveredKWh)} a year", ChartColors.Blue, Hatching.None)];
        string full = "";
        if (energy.Battery is not null)
        {
            keys.Add(ChartKey.Area($"of it unused, battery full, {Figures.Energy(EnergyParts.TurnedAwayKWh(year))}", ChartColors.Yellow, Hatching.Falling));
            full = $" {Figures.Energy(EnergyParts.TurnedAwayKWh(year))} find no room because the battery is full or nearly so.";
        }

        keys.Add(ChartKey.Area($"cut off by their limits, {Figures.Energy(year.ClippedKWh)}", ChartColors.Orange, Hatching.Rising));
        return new ChartWords
        {
            Title = $"{result.Plan.Name}: the year, month by month",
            Description = $"{EnergyWords.Wirings(result.Design)}. In a year {Figures.Energy(year.DeliveredKWh)} go into the inputs; {EnergyParts.CutOff(year)}.{full} "
                + $"{string.Join(", ", energy.Spans.Select(span => $"{span.Name} {Figures.Energy(span.DeliveredKWh)}"))}. Weather: {result.WeatherSource}.{(EnergyWords.Warning(result.Verdict) is { } warning ? " " + warning : "")}",
            Heading = result.Plan.Name,
            Warning = EnergyWords.Warning(result.Verdict),
            Details = [EnergyWords.Wirings(result.Design), "Month by month; over each bar, kWh into the inputs."],
            Keys = [.. keys],
        };
    }

    private static PlotModel Plot(EnergyResult energy)
    {
        PlotModel plot = PlotStyle.Plot();
        double mostKWh = energy.Spans.Max(span => span.DeliveredKWh + span.ClippedKWh);
        plot.Axes.Add(Months(energy));
        plot.Axes.Add(PlotStyle.Axis(AxisPosition.Left, "kWh a month", Math.Max(0.01, 1.12 * mostKWh), 8));
        bool isStored = energy.Battery is not null;
        plot.Series.Add(new BandSeries(Bars(energy, _ => 0, span => span.DeliveredKWh - (isStored ? EnergyParts.TurnedAwayKWh(span) : 0)), ChartColors.Blue, Hatching.None));
        if (isStored)
        {
            plot.Series.Add(new BandSeries(Bars(energy, span => span.DeliveredKWh - EnergyParts.TurnedAwayKWh(span), span => span.DeliveredKWh), ChartColors.Yellow, Hatching.Falling));
        }

        plot.Series.Add(new BandSeries(Bars(energy, span => span.DeliveredKWh, span => span.DeliveredKWh + span.ClippedKWh), ChartColors.Orange, Hatching.Rising));
        for (int month = 0; month < energy.Spans.Length; month++)
        {
            EnergySpan span = energy.Spans[month];
            string text = Figures.Number(span.DeliveredKWh, mostKWh < 99.95 ? 1 : 0);
            var label = PlotStyle.Label(null, new DataPoint(month, span.DeliveredKWh + span.ClippedKWh), text, HorizontalAlignment.Center, VerticalAlignment.Bottom, new ScreenVector(0, -2));
            label.FontSize = 11;
            label.Padding = new OxyThickness(0);
            plot.Annotations.Add(label);
        }

        return plot;
    }

    private static CategoryAxis Months(EnergyResult energy)
    {
        CategoryAxis months = new() { Position = AxisPosition.Bottom, GapWidth = 0, FontSize = 11.5, MajorTickSize = 0, AxislineStyle = LineStyle.Solid };
        months.Labels.AddRange(energy.Spans.Select(span => span.Name.Length > 3 ? span.Name[..3] : span.Name));
        return months;
    }

    private static List<Band> Bars(EnergyResult energy, Func<EnergySpan, double> lower, Func<EnergySpan, double> upper) =>
        [.. energy.Spans.Select((span, month) => new Band(month - HalfBar, month + HalfBar, lower(span), upper(span)))];
}
