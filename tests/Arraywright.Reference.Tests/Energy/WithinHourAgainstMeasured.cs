using Arraywright.Energy;

namespace Arraywright.Reference.Tests.Energy;

/// <summary>
/// What a limit cuts off within an hour, by the hour's mean, by <see cref="WithinStep"/>, and as measured. Its one free constant is from the odd days of the Nevada
/// year (means of 15 minutes, which smooth the minutes) and March of the outdoor module (momentary values every 10 minutes; its README drops curves taken in
/// fast changing light); the even days and April test it. Bounds are as found in 2026-11, rounded outward.
/// </summary>
public sealed class WithinHourAgainstMeasured
{
    private const string Plan = """
        plan: one panel
        goal: year
        mount: { tilt: 25 deg, azimuth: 180 deg, kind: open rack }
        panels:
          - { name: a, count: 1, power: 300 W, voc: 39.8 V, isc: 9.75 A, vmp: 32.5 V, imp: 9.23 A, voc_temperature: -0.31 %/K, isc_temperature: 0.05 %/K, cells: 60, bypass_diodes: 3 }
        inputs:
          - { name: store, max_voltage: 60 V, LIMIT, wiring: a }
        cable: { length: 1 m, size: 10 mm2 }
        """;

    /// <summary>Days: 1 for odd days of the year, 0 for even ones. The input's limit is at 60 and 75 % of the panel's watts, and at 62 % of its amps; errors in per cent of the energy cut off.</summary>
    [Theory]
    [InlineData("max_power: 180 W", 1)]
    [InlineData("max_power: 225 W", 1)]
    [InlineData("max_current: 6 A", 1)]
    [InlineData("max_power: 180 W", 0)]
    [InlineData("max_power: 225 W", 0)]
    [InlineData("max_current: 6 A", 0)]
    public void A_year_of_quarter_hours_in_Nevada(string limit, int days)
    {
        List<MeasuredHour> hours = [.. Nevada().Where(hour => hour.Begins.DayOfYear % 2 == days)];
        Assert.InRange(hours.Count, 1700, 1900);
        Plan plan = ReferencePlans.Read(Plan.Replace("LIMIT", limit));
        double Cut(SunSeries series, bool spread) => ReferencePlans.Run(plan, series, new EnergyOptions { SpreadWithinStep = spread }).Total.ClippedKWh;
        double trueKWh = Cut(Series(hours, parts: true), spread: false);
        double byMean = 100 * ((Cut(Series(hours, parts: false), spread: false) / trueKWh) - 1);
        double bySpread = 100 * ((Cut(Series(hours, parts: false), spread: true) / trueKWh) - 1);
        TestContext.Current.TestOutputHelper?.WriteLine($"{limit}, {(days == 1 ? "odd" : "even")} days: {trueKWh:0.00} kWh cut off; by the hour's mean {byMean:0.0} %, with the spread {bySpread:0.0} %");
        Assert.InRange(byMean, -12.5, -5.5);
        Assert.InRange(bySpread, -2.5, 1);
    }

    [Theory]
    [InlineData(3, 600)]
    [InlineData(3, 750)]
    [InlineData(4, 600)]
    [InlineData(4, 750)]
    public void Two_months_of_momentary_values(int month, double aboveWPerM2)
    {
        List<MeasuredHour> hours = [.. Module().Where(hour => hour.Begins.Month == month)];
        Assert.InRange(hours.Count, 100, 200);
        double trueWh = hours.Sum(hour => hour.PartsWPerM2.Average(part => Math.Max(0, part - aboveWPerM2)));
        double byMean = 100 * ((hours.Sum(hour => Math.Max(0, hour.MeanWPerM2 - aboveWPerM2)) / trueWh) - 1);
        double bySpread = 100 * ((hours.Sum(hour => Spread(hour, sun => Math.Max(0, sun - aboveWPerM2))) / trueWh) - 1);
        TestContext.Current.TestOutputHelper?.WriteLine($"month {month}, above {aboveWPerM2} W/m²: by the hour's mean {byMean:0.0} %, with the spread {bySpread:0.0} %");
        Assert.InRange(byMean, -15, -6.5);
        Assert.InRange(bySpread, -2.5, 3.5);
    }

    /// <summary>Points of the year's energy that come in at more than 800 W/m².</summary>
    [Fact]
    public void The_share_of_strong_sun()
    {
        List<MeasuredHour> hours = Nevada();
        double Strong(double sun) => sun > 800 ? sun : 0;
        double all = hours.Sum(hour => hour.MeanWPerM2) / 100;
        double measured = hours.Sum(hour => hour.PartsWPerM2.Average(Strong)) / all;
        double byMean = (hours.Sum(hour => Strong(hour.MeanWPerM2)) / all) - measured;
        double bySpread = (hours.Sum(hour => Spread(hour, Strong)) / all) - measured;
        TestContext.Current.TestOutputHelper?.WriteLine($"above 800 W/m²: {measured:0.0} % of the energy measured; by the hour's mean {byMean:0.00} points, with the spread {bySpread:0.00}");
        Assert.InRange(byMean, -3.5, -3);
        Assert.InRange(bySpread, -1.5, 0);
    }

    private static List<MeasuredHour> Nevada() =>
        MeasuredHour.Of([.. MeasuredSystem.Quarters().Select(row => (row.Local, row.PlaneWPerM2, row.ModuleC))], minutes: 15, least: 4, days: 15);

    /// <summary>The module's short-circuit current as irradiance: 8.8 A for 1000 W/m² (README of the data).</summary>
    private static List<MeasuredHour> Module() =>
        MeasuredHour.Of([.. MeasuredModule.Features().Select(row => (row.Utc, row.ShortCircuitA / 8.8 * 1000, row.ModuleC))], minutes: 10, least: 4, days: 20);

    private static double Spread(MeasuredHour hour, Func<double, double> figure) =>
        WithinStep.Of(hour.MeanWPerM2, hour.ClearWPerM2) is { } parts
            ? (parts.BrightShare * figure(parts.Bright * hour.MeanWPerM2)) + ((1 - parts.BrightShare) * figure(parts.Clouded * hour.MeanWPerM2))
            : figure(hour.MeanWPerM2);

    /// <summary>Hours in a row, whole or in their parts.</summary>
    private static SunSeries Series(List<MeasuredHour> hours, bool parts)
    {
        (double PlaneWPerM2, double CellC, double ClearWPerM2)[] steps = parts
            ? [.. hours.SelectMany(hour => hour.PartsWPerM2.Zip(hour.PartsC, (sun, cell) => (sun, cell, hour.ClearWPerM2)))]
            : [.. hours.Select(hour => (hour.MeanWPerM2, hour.PartsC.Average(), hour.ClearWPerM2))];
        double[] plane = [.. steps.Select(step => step.PlaneWPerM2)];
        StockSun sun = new(plane, plane, new double[steps.Length], [.. steps.Select(step => step.CellC)], [.. steps.Select(step => step.ClearWPerM2)]);
        double[] noon = [.. steps.Select(_ => 12.0)];
        return new SunSeries(parts ? 0.25 : 1, ["all"], new int[steps.Length], new int[steps.Length], noon, [sun]);
    }
}
