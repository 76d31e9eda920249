using System.Collections.Immutable;

namespace Arraywright.Energy;

/// <summary>The lit steps of a span dealt out by days into a few parts, each much like the whole: whatever a part shows early, the rest is likely to repeat.</summary>
internal static class DayParts
{
    /// <summary>The parts; energies of a wiring over them add to that over the span. Fewer where there are fewer days with sun.</summary>
    /// <param name="series">The span.</param>
    /// <param name="parts">How many, 1 or more.</param>
    public static ImmutableArray<SunSeries> Of(SunSeries series, int parts)
    {
        var steps = new List<int>[parts];
        for (int part = 0; part < parts; part++)
        {
            steps[part] = [];
        }

        int day = -1;
        int days = -1;
        for (int step = 0; step < series.Count; step++)
        {
            if (IsLit(series, step))
            {
                days += series.Day[step] == day ? 0 : 1;
                day = series.Day[step];
                steps[days % parts].Add(step);
            }
        }

        return [.. steps.Where(own => own.Count > 0).Select(own => Only(series, [.. own]))];
    }

    /// <summary>Whether any kind of panel sees enough for an input to start.</summary>
    private static bool IsLit(SunSeries series, int step) => series.Stocks.Any(sun => sun.UsefulWPerM2[step] >= MovingArray.DarkWPerM2);

    private static SunSeries Only(SunSeries series, int[] steps) => series with
    {
        Span = Pick(series.Span, steps),
        Day = Pick(series.Day, steps),
        EndHour = Pick(series.EndHour, steps),
        ClockEndHour = Pick(series.ClockEndHour, steps),
        Stocks =
        [
            .. series.Stocks.Select(sun => new StockSun(
                Pick(sun.PlaneWPerM2, steps),
                Pick(sun.UsefulWPerM2, steps),
                Pick(sun.ShadedFraction, steps),
                Pick(sun.CellC, steps),
                Pick(sun.ClearWPerM2, steps))),
        ],
    };

    private static T[] Pick<T>(T[] values, int[] steps)
    {
        var picked = new T[steps.Length];
        for (int i = 0; i < steps.Length; i++)
        {
            picked[i] = values[steps[i]];
        }

        return picked;
    }
}
