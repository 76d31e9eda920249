using System.Collections.Immutable;

namespace Arraywright.Climate;

/// <summary>One year out of several: for each month the real one whose days are most like all days of that month.</summary>
/// <remarks>
/// J. M. Finkelstein and R. E. Schafer, Biometrika 58 (1971) 641, as used for typical years since I. J. Hall and others, SAND78-1601 (1978): the mean distance
/// between the distribution of a month's days and that of all years. Sun on the flat and mean air count alike: our choice, for panels.
/// The coldest hour of all the years is kept beside it.
/// </remarks>
public static class TypicalYear
{
    /// <summary>The typical year, 365 days, of years of one place.</summary>
    /// <param name="years">At least one, with the same place, step and clock.</param>
    /// <param name="source">What they are, in one sentence.</param>
    /// <exception cref="ArgumentException">There is none, or they differ in place, step or clock.</exception>
    public static WeatherYear Of(ImmutableArray<WeatherYear> years, string source)
    {
        if (years.IsDefaultOrEmpty || years.Any(year => (year.Place, year.StepH, year.UtcOffsetH) != (years[0].Place, years[0].StepH, years[0].UtcOffsetH)))
        {
            throw new ArgumentException("At least one year, and all of one place, step and clock.", nameof(years));
        }

        var steps = ImmutableArray.CreateBuilder<WeatherStep>(years[0].Steps.Length);
        for (int month = 1; month <= 12; month++)
        {
            ImmutableArray<WeatherStep>[] same = [.. years.Select(year => Month(year, month))];
            steps.AddRange(same[MostTypical([.. same.Select(one => Days(one, years[0].StepH))])]);
        }

        return new WeatherYear(years[0].Place, steps.ToImmutable(), years[0].StepH, years[0].UtcOffsetH, source, [.. years.SelectMany(year => year.Repairs).Distinct()])
        {
            ColdestKnownC = years.Min(year => year.ColdestAirC),
        };
    }

    /// <summary>The steps of a month, without the leap day.</summary>
    private static ImmutableArray<WeatherStep> Month(WeatherYear year, int month) =>
        [.. year.Steps.Where(step => year.Middle(step) is var middle && middle.Month == month && middle is not { Month: 2, Day: 29 })];

    /// <summary>Sun and air of each day, means.</summary>
    private static (double[] SunW, double[] AirC) Days(ImmutableArray<WeatherStep> steps, double stepH)
    {
        int perDay = (int)Math.Round(24 / stepH);
        WeatherStep[][] days = [.. steps.Chunk(perDay)];
        return ([.. days.Select(day => day.Average(step => step.GlobalWPerM2))], [.. days.Select(day => day.Average(step => step.AirC))]);
    }

    private static int MostTypical((double[] SunW, double[] AirC)[] months)
    {
        double[] allSunW = [.. months.SelectMany(month => month.SunW).Order()];
        double[] allAirC = [.. months.SelectMany(month => month.AirC).Order()];
        double[] distances = [.. months.Select(month => Distance(month.SunW, allSunW) + Distance(month.AirC, allAirC))];
        return Array.IndexOf(distances, distances.Min());
    }

    /// <summary>Finkelstein and Schafer's statistic: mean distance between two distributions at the days of one of them.</summary>
    private static double Distance(double[] some, double[] all)
    {
        double[] rising = [.. some.Order()];
        double sum = 0;
        for (int i = 0; i < rising.Length; i++)
        {
            sum += Math.Abs(((i + 1.0) / rising.Length) - Below(all, rising[i]));
        }

        return sum / rising.Length;
    }

    /// <summary>Share of a rising list that is not above a value.</summary>
    private static double Below(double[] rising, double value)
    {
        int count = 0;
        while (count < rising.Length && rising[count] <= value)
        {
            count++;
        }

        return (double)count / rising.Length;
    }
}
