using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using CsCheck;

namespace Arraywright.Tests.Energy;

public sealed class PanelsAloneProperties
{
    private static (double Count, PowerAlone Power)[] Panels(PanelsAlone alone, Plan plan, Wiring wiring) =>
        [.. plan.Panels.Select((stock, index) => ((double)wiring.Panels.Count(name => name == stock.Panel.Name), alone.Panel(index)))];

    private static (double Count, PowerAlone Power)[] Strings(PanelsAlone alone, Wiring wiring) => [.. wiring.Strings.Select(part => (1.0, alone.String(part)))];

    /// <summary>Label voltages will do for cold ones: any wiring's add to less than half of what the input of a scene bears.</summary>
    private static double[] ColdV(Plan plan) => [.. plan.Panels.Select(stock => stock.Panel.OpenCircuitV)];

    [Fact]
    public void No_wiring_brings_more_than_its_strings_each_by_itself_nor_they_more_than_their_panels() =>
        Gen.Select(EnergyScene.Any, Gen.Bool).Sample((scene, spread) =>
        {
            EnergyOptions options = new() { SpreadWithinStep = spread };
            PlanPhysics physics = new(scene.Plan);
            ImmutableArray<Wiring?> wirings = [scene.Plan.Inputs[0].StatedWiring];
            double kWh = EnergyRun.DeliveredKWh(physics, wirings, scene.Series, options);
            PanelsAlone alone = new(physics, scene.Series, ColdV(scene.Plan), options);
            double stringsKWh = alone.MostKWh([Strings(alone, wirings[0]!)]);
            double panelsKWh = alone.MostKWh([Panels(alone, scene.Plan, wirings[0]!)]);
            Assert.InRange(kWh, 0, stringsKWh * (1 + 1e-12));
            Assert.InRange(stringsKWh, 0, panelsKWh * (1 + 1e-7));
            Assert.InRange(panelsKWh, 0, alone.MostKWh() * (1 + 1e-12));
        }, iter: 200);

    [Fact]
    public void Nor_do_two_inputs_of_one_unit() =>
        Gen.Select(EnergyScene.Any, EnergyScene.Any, Gen.Double[0.1, 1], Gen.Bool).Sample((scene, other, share, isUnit) =>
        {
            double watts = scene.Plan.Panels.Sum(stock => stock.Count * stock.Panel.PowerW.Value);
            DcInput Of(EnergyScene one, string name) => one.Input with { Name = name, MaxVoltageV = scene.Input.MaxVoltageV, Unit = isUnit ? "box" : null, Battery = null };
            Plan plan = scene.Plan with
            {
                Panels = [.. scene.Plan.Panels.Select(stock => stock with { Count = 2 * stock.Count })],
                Units = isUnit ? [new ChargingUnit("box", new Limit(2 * share * watts, Evidence.Nothing), null)] : [],
                Inputs = [new PlannedInput(Of(scene, "one"), null), new PlannedInput(Of(other, "two"), null)],
            };
            PlanPhysics physics = new(plan);
            Wiring wiring = scene.Plan.Inputs[0].StatedWiring!;
            double kWh = EnergyRun.DeliveredKWh(physics, [wiring, wiring], scene.Series, EnergyOptions.Default);
            PanelsAlone alone = new(physics, scene.Series, ColdV(plan), EnergyOptions.Default);
            double stringsKWh = alone.MostKWh([Strings(alone, wiring), Strings(alone, wiring)]);
            double panelsKWh = alone.MostKWh([Panels(alone, plan, wiring), Panels(alone, plan, wiring)]);
            Assert.InRange(kWh, 0, stringsKWh * (1 + 1e-12));
            Assert.InRange(stringsKWh, 0, panelsKWh * (1 + 1e-7));
            Assert.InRange(kWh, 0, alone.MostKWh() * (1 + 1e-12));
        }, iter: 200);

    /// <summary>A lone panel without copper, held by nothing, gives what it gives: the bound is no higher than it need be.</summary>
    [Fact]
    public void A_lone_panel_brings_all_of_it() =>
        EnergyScene.Any.Sample(scene =>
        {
            PanelStock stock = scene.Plan.Panels[0] with { Count = 1, Shade = Shade.None };
            Plan plan = scene.Plan with
            {
                Panels = [stock],
                Inputs = [new PlannedInput(new DcInput { Name = "open", MaxVoltageV = 1000 }, null)],
                Cable = new Cable(Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0)),
            };
            SunSeries series = scene.Series with { Stocks = [scene.Series.Stocks[0]] };
            PlanPhysics physics = new(plan);
            double kWh = EnergyRun.DeliveredKWh(physics, [new Wiring.Single(stock.Panel.Name)], series, EnergyOptions.Default);
            double mostKWh = new PanelsAlone(physics, series, ColdV(plan), EnergyOptions.Default).MostKWh();

            // What bypass diodes leak, and dark steps that the run leaves out.
            Assert.InRange(mostKWh, kWh * (1 - 1e-12), (kWh * (1 + 1e-4)) + 1e-3);
        }, iter: 100);

    [Fact]
    public void Days_dealt_into_parts_add_up_to_the_whole() =>
        Gen.Select(EnergyScene.Any, Gen.Int[1, 5]).Sample((scene, parts) =>
        {
            PlanPhysics physics = new(scene.Plan);
            ImmutableArray<Wiring?> wirings = [scene.Plan.Inputs[0].StatedWiring];
            double DeliveredKWh(SunSeries series) => EnergyRun.DeliveredKWh(physics, wirings, series, EnergyOptions.Default);
            ImmutableArray<SunSeries> dealt = DayParts.Of(scene.Series, parts);
            Assert.True(dealt.Length <= parts);
            Assert.All(dealt, part => Assert.True(part.Count > 0));
            Assert.Equal(DeliveredKWh(scene.Series), dealt.Sum(DeliveredKWh), 1e-9 * scene.Plan.Panels.Sum(stock => stock.Count * stock.Panel.PowerW.Value));
        }, iter: 100);
}
