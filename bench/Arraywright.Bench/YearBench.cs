using System.Collections.Immutable;
using System.Globalization;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Files;

namespace Arraywright.Bench;

/// <summary>Times a year of an array of two strings of four panels, all eight different, hour by hour and minute by minute.</summary>
internal static class YearBench
{
    private const int Rounds = 31;
    private static readonly int[] Watts = [100, 120, 135, 150, 165, 180, 200, 220];

    /// <summary>Runs and prints a table: medians, and the memory allocated by one run.</summary>
    public static void Run(TextWriter output)
    {
        Plan plan = Made();
        PlanPhysics physics = new(plan);
        ImmutableArray<Wiring?> wirings = [plan.Inputs[0].StatedWiring];
        WeatherYear hours = SyntheticYear.Of(WorldClimate.Of(plan.Place!)!, plan.Place!);
        WeatherYear minutes = FinerWeather.Of(hours, 60);
        output.WriteLine("| 2 x 4 array, eight different panels, a year | median ms of processor time | per step µs | allocated MB |");
        output.WriteLine("| --- | --- | --- | --- |");
        Measure(output, "weather from the built-in climate, hours", hours.Steps.Length, () => SyntheticYear.Of(WorldClimate.Of(plan.Place!)!, plan.Place!));
        SunSeries bright = Measure(output, "sun on the panels, hours", hours.Steps.Length, () => SunOnPanels.Of(plan, hours, SunOptions.Default));
        Measure(output, "energy alone, hours, each at its mean", hours.Steps.Length, () => Energy(bright, spread: false));
        Measure(output, "energy alone, hours, with their minutes spread", hours.Steps.Length, () => Energy(bright, spread: true));
        Measure(output, "exact run with its ladder, hours, each at its mean", hours.Steps.Length, () => Exact(bright, spread: false));
        Measure(output, "exact run with its ladder, hours, with their minutes spread", hours.Steps.Length, () => Exact(bright, spread: true));
        Measure(output, "the finer weather, minutes", minutes.Steps.Length, () => FinerWeather.Of(hours, 60));
        SunSeries fine = Measure(output, "sun on the panels, minutes", minutes.Steps.Length, () => SunOnPanels.Of(plan, minutes, SunOptions.Default));
        Measure(output, "exact run with its ladder, minutes", minutes.Steps.Length, () => Exact(fine, spread: false));
        double[] Energy(SunSeries series, bool spread) => [EnergyRun.DeliveredKWh(physics, wirings, series, new EnergyOptions { SpreadWithinStep = spread })];
        EnergyResult Exact(SunSeries series, bool spread) => EnergyRun.Of(physics, wirings, series, new EnergyOptions { SpreadWithinStep = spread });
    }

    private static T Measure<T>(TextWriter output, string what, int steps, Func<T> run)
    {
        T result = run();
        List<double> ms = [];
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int round = 0; round < Rounds; round++)
        {
            TimeSpan start = Environment.CpuUsage.TotalTime;
            result = run();
            ms.Add((Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
        }

        double allocatedMb = (GC.GetAllocatedBytesForCurrentThread() - before) / (double)Rounds / (1 << 20);
        double median = ms.Order().ElementAt(Rounds / 2);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {median:0.0} | {1000 * median / steps:0.00} | {allocatedMb:0.0} |"));
        return result;
    }

    private static Plan Made()
    {
        IEnumerable<string> panels = Watts.Select((watts, index) => string.Create(
            CultureInfo.InvariantCulture,
            $"  - {{ name: p{index}, count: 1, power: {watts} W, voc: {22 + index} V, isc: {watts / (18.0 + index) * 1.07:0.00} A, vmp: {18 + index} V, imp: {watts / (18.0 + index):0.00} A }}"));
        PlanReading reading = PlanFile.Read($$"""
            plan: Bench
            place: { latitude: 48.2, longitude: 11.6, elevation: 520 m }
            mount: { tilt: 35 deg, azimuth: 180 deg }
            panels:
            {{string.Join("\n", panels)}}
            inputs:
              - name: a
                max_voltage: 150 V
                mpp_voltage: 20..140 V
                max_current: 12 A
                max_power: 900 W
                wiring: (p0 + p2 + p4 + p6) | (p1 + p3 + p5 + p7)
            cable: { length: 10 m, size: 4 mm2 }
            """, "bench");
        return reading.Plan ?? throw new InvalidOperationException(string.Join("\n", reading.Faults));
    }
}
