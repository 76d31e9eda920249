using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Sky;
using Arraywright.Tests.Climate;

namespace Arraywright.Tests.Energy;

public sealed class WeatherVoltsTests
{
    private static readonly DateTime Noon = new(2021, 1, 5, 13, 0, 0);

    /// <summary>
    /// Flat panels see the global sun, here all from the sky. The cells by hand after D. L. King and others, SAND2004-3535, open rack, glass and sheet: 500·exp(−3.56 − 0.075) + 500/1000·3 =
    /// 14.69 K over −10 °C. Brighter but warmer, and colder but dim, come after it.
    /// </summary>
    [Fact]
    public void The_highest_voltage_is_that_of_the_coldest_bright_hour()
    {
        var plan = Flat() with { WeatherYear = Year(Step(0, 1000, 15), Step(1, 500, -10), Step(2, 20, -14), Step(3, 0, -30)) };
        PlanPhysics physics = new(plan);

        WeatherVoltage highest = physics.Weather!.Of(Read("2*shed-120 | shed-120"))!;

        Assert.Equal(Noon.AddHours(1), highest.Ends);
        Assert.Equal(500, highest.Conditions.IrradianceWPerM2, 1e-6);
        Assert.Equal(4.69, highest.Conditions.CellC, 0.01);
        Assert.Equal(2 * physics.OpenCircuitV("shed-120", new Conditions(500, 4.69)), highest.VoltageV, 0.003);
    }

    /// <summary>The dim hour's cells: 20·exp(−3.635) + 0.06 = 0.59 K over −14 °C. At −30 °C it is night.</summary>
    [Fact]
    public void The_coldest_cell_in_daylight_is_known() =>
        Assert.Equal(-13.41, new PlanPhysics(Flat() with { WeatherYear = Year(Step(1, 500, -10), Step(2, 20, -14), Step(3, 0, -30)) }).Weather!.ColdestCellC!.Value, 0.01);

    [Fact]
    public void Without_a_place_or_without_light_there_is_none()
    {
        Assert.Null(new PlanPhysics(ClimatePlans.With(null)).Weather);
        Assert.Null(new PlanPhysics(Flat() with { WeatherYear = Year(Step(3, 0, -30)) }).Weather!.Of(new Wiring.Single("shed-120")));
    }

    /// <summary>Phoenix: no hour of a usual year is as cold as the record low that the rule takes, and its highest voltage is about the label's: cooler cells, but less light (flat, in winter).</summary>
    [Fact]
    public void Without_a_weather_file_the_made_year_is_looked_through()
    {
        PlanPhysics physics = new(Flat());

        WeatherVoltage highest = physics.Weather!.Of(Read("2*shed-120"))!;

        Assert.False(highest.IsOfFile);
        Assert.Contains("built-in climate", highest.Source);
        Assert.InRange(highest.VoltageV, 0.95 * 2 * physics.OpenCircuitV("shed-120", Conditions.Standard), 2 * physics.OpenCircuitV("shed-120", new Conditions(1000, physics.Temperatures.ColdestCellC)));
        Assert.Equal(2 * physics.OpenCircuitV("shed-120", highest.Conditions), highest.VoltageV, 1e-9);
        Assert.All(SyntheticYear.For(Flat())!.Steps.Where(step => step.GlobalWPerM2 > 300), step =>
            Assert.True(2 * physics.OpenCircuitV("shed-120", new Ambient(step.GlobalWPerM2, step.AirC, step.WindMPerS).On(Flat().Panels[0], Flat().Mount)) <= highest.VoltageV * 1.0001));
    }

    /// <summary>A string of two kinds that face two ways has its highest sum in an hour that may be neither kind's best: no hour may be lost on the way.</summary>
    [Fact]
    public void The_whole_sees_what_the_best_of_its_hours_sees()
    {
        Random random = new(5);
        Plan plan = ClimatePlans.With(
            ClimatePlans.Phoenix(),
            Goal.Year,
            ClimatePlans.Stock("east") with { Mount = new Mount(70, 100, MountKind.OpenRack) },
            ClimatePlans.Stock("west", noctC: 50) with { Mount = new Mount(70, 260, MountKind.CloseRoof) });
        Wiring wiring = Read("east + 2*west | 2*east + west");
        for (int round = 0; round < 30; round++)
        {
            WeatherStep[] steps = [.. Enumerable.Range(-4, 9).Select(hour => Step(hour, 100 + random.Next(700), random.Next(-20, 20), random.Next(900)))];
            double Highest(params WeatherStep[] some) => new PlanPhysics(plan with { WeatherYear = Year([.. some]) }).Weather!.Of(wiring)!.VoltageV;
            Assert.Equal(steps.Max(step => Highest(step)), Highest(steps));
        }
    }

    private static Wiring Read(string text) => WiringText.TryParse(text, out Wiring? wiring, out _) ? wiring : throw new FormatException(text);

    private static Plan Flat() => ClimatePlans.With(ClimatePlans.Phoenix()) with { Mount = new Mount(0, 180, MountKind.OpenRack) };

    private static WeatherStep Step(int hour, double globalW, double airC, double beamW = 0) => new(Noon.AddHours(hour), globalW, beamW, globalW, airC, 1);

    private static WeatherYear Year(params ImmutableArray<WeatherStep> steps) => new(new WeatherPlace(33.43, -112, 340), steps, 1, -7, "made up for tests", []);
}
