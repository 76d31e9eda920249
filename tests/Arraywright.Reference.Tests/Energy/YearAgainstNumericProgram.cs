using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Energy;

/// <summary>
/// A year of equal panels against a computation of its own in NumPy and SciPy (year_program.py beside this file), which gets only the label, the weather's hours,
/// the copper's metres and the input's limits: other formulas for the sun, Lambert's W for the curve, other root and maximum searches.
/// </summary>
public sealed class YearAgainstNumericProgram
{
    private const string Plan = """
        plan: six alike
        goal: year
        place: { latitude: 41.2, longitude: -4.1, elevation: 820 m, coldest: -12 C }
        mount: { tilt: 35 deg, azimuth: 205 deg, kind: open rack }
        panels:
          - { name: a, count: 6, power: 200 W, voc: 32.9 V, isc: 8.21 A, vmp: 26.3 V, imp: 7.61 A, voc_temperature: -0.374 %/K, isc_temperature: 0.039 %/K, cells: 54, bypass_diodes: 3, technology: multicrystalline }
        inputs:
          - name: store
            max_voltage: 150 V
            start_voltage: 60 V
            mpp_voltage: 55..140 V
            max_current: 10.4 A
            max_power: 810 W
            wiring: 3*a | 3*a
        cable: { length: 25 m, size: 4 mm2, string_length: 4 m, string_size: 4 mm2 }
        """;

    [Theory]
    [InlineData(SkyModel.HayDavies)]
    [InlineData(SkyModel.Isotropic)]
    public void The_years_energy_agrees_to_a_thousandth(SkyModel sky)
    {
        Python.SkipUnlessInstalled("scipy", "the year is not computed by another program");
        Plan plan = ReferencePlans.Read(Plan);
        WeatherYear weather = ReferencePlans.BuiltIn(plan);
        SunOptions how = SunOptions.Default with { Sky = sky };
        SunSeries series = SunOnPanels.Of(plan, weather, how);
        EnergyResult year = ReferencePlans.Run(plan, series, new EnergyOptions { SpreadWithinStep = false });
        double[] theirs = [.. Python.Lines(Program(), Question(plan, weather, series, how)).Select(line => double.Parse(line, CultureInfo.InvariantCulture))];

        StockSun sun = series.Stocks[0];
        double usefulKWh = sun.UsefulWPerM2.Sum() / 1000;
        double meanCellC = sun.UsefulWPerM2.Zip(sun.CellC, (g, c) => g * c).Sum() / sun.UsefulWPerM2.Sum();
        double freeKWh = year.Total.LevelsKWh[(int)Stage.Cable];
        double takenKWh = year.Total.DeliveredKWh;
        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{sky}: ours over theirs less one: plane {(year.Total.PlaneKWhPerM2 / theirs[0]) - 1:e1}, useful {(usefulKWh / theirs[1]) - 1:e1}, cells {meanCellC - theirs[2]:e1} K, from the weather {(freeKWh / theirs[3]) - 1:e1} free {(takenKWh / theirs[4]) - 1:e1} taken, from the same hours {(freeKWh / theirs[5]) - 1:e1} free {(takenKWh / theirs[6]) - 1:e1} taken; cut {1 - (takenKWh / freeKWh):P1}, {year.HoursLimited}");

        // Wanted: a thousandth. Found: 2e-5 from the weather, 4e-7 from the same hours.
        Assert.Equal(theirs[0], year.Total.PlaneKWhPerM2, 0.001 * theirs[0]);
        Assert.Equal(theirs[1], usefulKWh, 0.001 * theirs[1]);
        Assert.Equal(theirs[2], meanCellC, 0.02);
        Assert.Equal(theirs[3], freeKWh, 0.001 * theirs[3]);
        Assert.Equal(theirs[4], takenKWh, 0.001 * theirs[4]);
        Assert.Equal(theirs[5], freeKWh, 1e-5 * theirs[5]);
        Assert.Equal(theirs[6], takenKWh, 1e-5 * theirs[6]);

        // The limits bite, so that they are compared too.
        Assert.True(takenKWh < 0.98 * freeKWh);
        Assert.True(year.HoursLimited.Current > 50 && year.HoursLimited.Power > 50);
    }

    private static string Question(Plan plan, WeatherYear weather, SunSeries series, SunOptions how)
    {
        Panel panel = plan.Panels[0].Panel;
        DcInput input = plan.Inputs[0].Input;
        double[] Each(Func<WeatherStep, double> figure) => [.. weather.Steps.Select(figure)];
        return JsonSerializer.Serialize(new Dictionary<string, object>
        {
            ["latitude"] = weather.Place.LatitudeDeg,
            ["longitude"] = weather.Place.LongitudeDeg,
            ["elevation"] = weather.Place.ElevationM,
            ["tilt"] = plan.Mount.TiltDeg,
            ["azimuth"] = plan.Mount.AzimuthDeg,
            ["sky"] = how.Sky.ToString(),
            ["albedo"] = how.AlbedoFraction(1),
            ["soiling"] = how.SoilingFraction,
            ["day2000"] = Each(step => (step.Ends - new DateTime(2000, 1, 1, 12, 0, 0)).TotalDays - ((weather.UtcOffsetH + (weather.StepH / 2)) / 24)),
            ["global"] = Each(step => step.GlobalWPerM2),
            ["beam"] = Each(step => step.BeamNormalWPerM2),
            ["diffuse"] = Each(step => step.DiffuseWPerM2),
            ["air"] = Each(step => step.AirC),
            ["wind"] = Each(step => step.WindMPerS),
            ["useful"] = series.Stocks[0].UsefulWPerM2,
            ["cell"] = series.Stocks[0].CellC,
            ["label"] = new Dictionary<string, double>
            {
                ["voc"] = panel.OpenCircuitV,
                ["isc"] = panel.ShortCircuitA,
                ["vmp"] = panel.MaximumPowerV.Value,
                ["imp"] = panel.MaximumPowerA.Value,
                ["voc_per_k"] = panel.OpenCircuitPerK.Value * panel.OpenCircuitV,
                ["isc_per_k"] = panel.ShortCircuitPerK.Value * panel.ShortCircuitA,
                ["cells"] = panel.Cells.Value,
            },
            ["in_series"] = 3,
            ["strings"] = 2,
            ["length_m"] = plan.Cable.LengthM.Value,
            ["area_mm2"] = plan.Cable.AreaMm2.Value,
            ["string_length_m"] = plan.Cable.StringLengthM.Value,
            ["string_area_mm2"] = plan.Cable.StringAreaMm2.Value,
            ["contact_ohm"] = plan.Cable.ContactOhm.Value,
            ["start_v"] = input.StartVoltageV!,
            ["min_v"] = input.TrackingMinV!,
            ["max_v"] = input.TrackingMaxV!,
            ["max_a"] = input.DrawLimitA!,
            ["max_w"] = input.MaxPower!.Figure,
        });
    }

    private static string Program([CallerFilePath] string here = "") => File.ReadAllText(Path.Combine(Path.GetDirectoryName(here)!, "year_program.py"));
}
