using System.Globalization;
using Arraywright.Climate;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>The margins of the design temperatures against the seven typical years in shared/weather (TMY3, Wilcox and Marion 2008), Alaska to Hawaii.</summary>
public class DesignMarginsAgainstWeatherYears
{
    [Fact]
    public void The_cold_rule_reaches_below_the_coldest_hour_of_every_year() => Assert.All(Years(), year =>
        Assert.InRange(CoolestHourC(year), MeanOf(year, day => day.Min()).Min() - DesignTemperatures.BelowColdestMonthK, 100));

    [Fact]
    public void The_hot_rule_reaches_above_the_hottest_hour_of_every_year() => Assert.All(Years(), year =>
        Assert.InRange(year.DryBulbC.Max(), -100, MeanOf(year, day => day.Max()).Max() + DesignTemperatures.AboveHottestMonthK));

    /// <summary>The documented origin of the 13 K: mean 6.5 K and spread 3.2 K over these years, mean and twice the spread being 12.9 K.</summary>
    [Fact]
    public void The_hot_margin_is_the_mean_and_twice_the_spread_of_these_years()
    {
        double[] aboveK = [.. Years().Select(year => year.DryBulbC.Max() - MeanOf(year, day => day.Max()).Max())];
        double meanK = aboveK.Average();
        double spreadK = Math.Sqrt(aboveK.Sum(k => (k - meanK) * (k - meanK)) / (aboveK.Length - 1));

        Assert.Equal(6.5, meanK, 0.05);
        Assert.Equal(3.2, spreadK, 0.05);
        Assert.Equal(DesignTemperatures.AboveHottestMonthK, Math.Ceiling(meanK + (2 * spreadK)));
    }

    /// <summary>The whole chain, fit and margins, without a figure of the user's.</summary>
    [Fact]
    public void The_built_in_climate_with_its_margins_brackets_every_hour_of_every_year() => Assert.All(Years(), year =>
    {
        MonthlyClimate climate = WorldClimate.At(year.LatitudeDeg, year.LongitudeDeg, year.ElevationM)!;
        Assert.InRange(CoolestHourC(year), climate.Coldest.MeanDailyMinC - DesignTemperatures.BelowColdestMonthK, 100);
        Assert.InRange(year.DryBulbC.Max(), -100, climate.Hottest.MeanDailyMaxC + DesignTemperatures.AboveHottestMonthK);
    });

    private static double CoolestHourC(WeatherYear year) => year.DryBulbC.Min();

    /// <summary>Mean over each month of a figure of the day.</summary>
    private static IEnumerable<double> MeanOf(WeatherYear year, Func<IEnumerable<double>, double> ofDay) =>
        year.DryBulbC
            .Chunk(24)
            .Select((hours, day) => (new DateOnly(2001, 1, 1).AddDays(day).Month, Figure: ofDay(hours)))
            .GroupBy(day => day.Month, day => day.Figure)
            .Select(month => month.Average());

    private static List<WeatherYear> Years()
    {
        List<WeatherYear> years = [.. Directory.GetFiles(SharedFiles.PathOrSkip("weather"), "*.epw").Order().Select(Read)];
        Assert.Equal(7, years.Count);
        return years;
    }

    private static WeatherYear Read(string path)
    {
        string[] lines = File.ReadAllLines(path);
        string[] location = lines[0].Split(',');
        return new WeatherYear(Number(location[6]), Number(location[7]), Number(location[9]), [.. lines.Skip(8).Select(line => Number(line.Split(',')[6]))]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private sealed record WeatherYear(double LatitudeDeg, double LongitudeDeg, double ElevationM, double[] DryBulbC);
}
