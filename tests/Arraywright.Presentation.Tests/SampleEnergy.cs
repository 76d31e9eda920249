using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Planning;
using Arraywright.Sky;

namespace Arraywright.Presentation.Tests;

/// <summary>A day and a year made by hand, in round figures.</summary>
internal static class SampleEnergy
{
    /// <summary>Month m (from 1) brings 10 m kWh, of which 2 m find no room; m kWh are cut off.</summary>
    public static YearResult Year { get; } = new()
    {
        Plan = SampleResults.Go.Plan,
        Design = SampleResults.Go.Designs[0],
        Energy = Result([.. Enumerable.Range(1, 12).Select(month => Span(new DateOnly(2001, month, 1).ToString("MMMM"), 10 * month, month, 2 * month))], [], new BatteryReport(156, 100, 100, 365, 365, 5, 0.2)),
        WeatherSource = "a year made by hand",
        Assumed = [],
        Cautions = [],
    };

    /// <summary>From 8 to 16 o'clock: 100 W, 200 W, 300 W, 300 W, 300 W, 300 W, 200 W, 100 W into the input; above 300 W another 60 W are cut off.</summary>
    public static DayResult Day { get; } = new()
    {
        Plan = SampleResults.Go.Plan,
        Date = new DateOnly(2001, 6, 21),
        Design = SampleResults.Go.Designs[0],
        Energy = Result([Span("June 21", 1.8, 0.24, 0)], [.. Enumerable.Range(1, 24).Select(Hour)], new BatteryReport(0, 0, 0, 1, 1, null, 0.5)),
        Daylight = Daylight.RisesAndSets,
        SunriseHour = 8,
        SunsetHour = 16,
        WeatherSource = "a day made by hand",
        Assumed = [],
        Cautions = [],
    };

    private static EnergyMoment Hour(int ends)
    {
        double takenW = Math.Clamp(100 * Math.Min(ends - 8, 17 - ends), 0, 300);
        return new EnergyMoment(ends, 2 * takenW, 40, takenW == 300 ? 360 : takenW, takenW, takenW == 300 ? LimitedBy.Power : LimitedBy.None, 0.5 + (0.01 * ends));
    }

    private static EnergySpan Span(string name, double deliveredKWh, double clippedKWh, double unusedKWh)
    {
        double[] levels = [.. Enumerable.Repeat(deliveredKWh + clippedKWh, Enum.GetValues<Stage>().Length)];
        levels.AsSpan((int)Stage.VoltageWindow).Fill(deliveredKWh);
        levels.AsSpan((int)Stage.BatteryFull).Fill(deliveredKWh - unusedKWh);
        return new EnergySpan { Name = name, LevelsKWh = [.. levels], PlaneKWhPerM2 = 100, LoadKWh = 0, ServedKWh = 0 };
    }

    private static EnergyResult Result(ImmutableArray<EnergySpan> spans, ImmutableArray<EnergyMoment> moments, BatteryReport battery) => new()
    {
        Spans = spans,
        Total = spans[0] with { LevelsKWh = [.. Enumerable.Range(0, spans[0].LevelsKWh.Length).Select(stage => spans.Sum(span => span.LevelsKWh[stage]))] },
        Losses = [],
        HoursLimited = default,
        Battery = battery,
        Moments = moments,
        WithinStepKWh = 0,
    };
}
