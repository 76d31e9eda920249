using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Parts.Connecting;
using Arraywright.Planning;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Parts;

/// <summary>The steps of connecting, and what the meter is to show at each, against sums by hand.</summary>
public sealed class ConnectionOrderTests
{
    private static readonly Panel Dairy = LimitsScene.Shed with { Name = "dairy-60", OpenCircuitV = 22.4, ShortCircuitA = 3.55, MaximumPowerV = Sourced.Given(18.4), MaximumPowerA = Sourced.Given(3.26), PowerW = Sourced.Given(60.0) };

    private static Plan Plan(params (string Name, double MaxV, Wiring? Wiring)[] inputs) => new()
    {
        Name = "hill farm",
        Goal = Goal.Peak,
        Place = new Place(54.6, -3.1, 200, -14, null),
        Mount = new Mount(40, 180, MountKind.OpenRack),
        Panels = [new PanelStock(LimitsScene.Shed, 40, Shade.None, null), new PanelStock(Dairy, 40, Shade.None, null)],
        Inputs = [.. inputs.Select(input => new PlannedInput(new DcInput { Name = input.Name, MaxVoltageV = input.MaxV }, input.Wiring))],
        Units = [],
        Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0)),
        Assumed = [],
        Doubts = [],
    };

    private static ConnectionOrder Order(Plan plan, Level verdict = Level.Go, StatedConditions? stated = null) =>
        ConnectionPlanner.Of(plan, Planner.Check(plan, PlannerOptions.Default).Designs[0], verdict, stated ?? StatedConditions.None);

    private static ConnectionOrder Order(Wiring wiring, double maxV = 60) => Order(Plan(("store-a", maxV, wiring)));

    private static readonly Wiring TwoByTwo = LimitsScene.Side(LimitsScene.Row(2, "shed-120"), LimitsScene.Row(2, "shed-120"));

    private static ExpectedReading Reading(ConnectionOrder order, ConnectionAct act) => Assert.Single(order.Steps.Single(step => step.Act == act).Expected);

    [Fact]
    public void Strings_side_by_side_are_made_measured_joined_measured_connected_and_read() =>
        Assert.Equal(
            [
                ConnectionAct.MakeReady, ConnectionAct.CheckPanels, ConnectionAct.JoinString, ConnectionAct.MeasureString, ConnectionAct.JoinStrings,
                ConnectionAct.MeasureArray, ConnectionAct.ConnectInput, ConnectionAct.SwitchOn, ConnectionAct.LookAgain,
            ],
            Order(TwoByTwo).Steps.Select(step => step.Act));

    [Fact]
    public void One_panel_has_nothing_to_join() =>
        Assert.Equal(
            [ConnectionAct.MakeReady, ConnectionAct.CheckPanels, ConnectionAct.MeasureArray, ConnectionAct.ConnectInput, ConnectionAct.SwitchOn, ConnectionAct.LookAgain],
            Order(LimitsScene.One("shed-120")).Steps.Select(step => step.Act));

    [Fact]
    public void Open_leads_show_the_labels_sum_and_at_the_coldest_what_the_limit_is_held_against()
    {
        ConnectionOrder order = Order(TwoByTwo);
        Assert.Equal(22.9, Reading(order, ConnectionAct.CheckPanels).Standard, 1e-9);
        ExpectedReading text = Reading(order, ConnectionAct.MeasureString);
        Assert.Equal("strings 1 and 2, each", text.Point);
        Assert.Equal(2 * 22.9, text.Standard, 1e-9);

        // 2 × 22.9 V × (1 + 0.0029 × 39 K) = 50.98 V by the label's coefficient (NEC 690.7(A)(1)); the circuit model may raise it a little.
        Assert.InRange(text.Most!.Value, 50.97, 51.3);
        Assert.Equal(text with { Point = "the array" }, Reading(order, ConnectionAct.MeasureArray));
    }

    [Fact]
    public void Today_shows_what_the_coefficient_makes_of_todays_cells_and_dim_hot_light_less()
    {
        Plan plan = Plan(("store-a", 60, TwoByTwo));
        ConnectionOrder order = Order(plan, stated: new StatedConditions(1000, 45, null, null));
        Assert.Equal(new Conditions(1000, 45), order.Now);
        ExpectedReading text = Reading(order, ConnectionAct.MeasureArray);

        // 2 × 22.9 V × (1 − 0.0029 × 20 K) = 43.14 V.
        Assert.Equal(43.14, text.Now, 0.05);

        // A fifth of the light takes n·Ns·kT/q·ln 5 off a panel: with n about 1.1 (mono, from memory), 36 cells and 26 to 29 mV, 1.6 to 1.9 V.
        double hot = plan.Place is null ? 0 : Planner.Check(plan, PlannerOptions.Default).Temperatures!.HottestCellC;
        double brightV = 2 * 22.9 * (1 - (0.0029 * (hot - 25)));
        Assert.InRange(text.Least!.Value, brightV - 4.5, brightV + 1.5);
        Assert.True(text.Least < text.Now && text.Now < text.Standard && text.Standard < text.Most);
    }

    [Fact]
    public void Where_the_inputs_of_a_unit_hold_each_other_back_the_reading_of_one_by_itself_says_so()
    {
        // 480 W and 120 W by the labels, of which the unit takes 300 W.
        Plan plan = Plan(("left", 60, TwoByTwo), ("right", 60, LimitsScene.One("shed-120")));
        Plan shared = plan with
        {
            Units = [new ChargingUnit("box", new Limit(300, Evidence.Nothing), null)],
            Inputs = [.. plan.Inputs.Select(planned => planned with { Input = planned.Input with { Unit = "box" } })],
        };
        Assert.All(Order(shared).Steps.Where(step => step.Act == ConnectionAct.SwitchOn), step => Assert.EndsWith("inputs of box give power too: it takes at most 300 W from all of them.", step.IfNot, StringComparison.Ordinal));
        Assert.All(Order(plan).Steps.Where(step => step.Act == ConnectionAct.SwitchOn), step => Assert.EndsWith("or an open fuse.", step.IfNot, StringComparison.Ordinal));
    }

    [Fact]
    public void The_input_is_expected_to_read_the_labels_power_less_the_cables_heat()
    {
        ExpectedReading[] read = [.. Order(TwoByTwo).Steps.Single(step => step.Act == ConnectionAct.SwitchOn).Expected];
        Assert.Equal(["V", "A", "W"], read.Select(reading => reading.Unit));
        Assert.Equal(read[0].Standard * read[1].Standard, read[2].Standard, 1e-6);

        // 480 W less 12.7² A² × 2 × 8 m × 5.09 mΩ/m (4 mm² of class 5, EN 50618) × (1 + 0.00393 × 30) = 14.7 W.
        Assert.Equal(465.3, read[2].Standard, 1.5);
        Assert.All(read, reading => Assert.True(reading.Least is null && reading.Most is null));
    }

    [Fact]
    public void Unequal_strings_are_named_apart_and_settle_between_their_voltages()
    {
        ConnectionOrder order = Order(LimitsScene.Side(LimitsScene.Row(2, "shed-120"), LimitsScene.Row(2, "dairy-60")));
        ImmutableArray<ExpectedReading> each = order.Steps.Single(step => step.Act == ConnectionAct.MeasureString).Expected;
        Assert.Equal([("string 1", 44.8), ("string 2", 45.8)], each.Select(reading => (reading.Point, Math.Round(reading.Standard, 9))));
        Assert.InRange(Reading(order, ConnectionAct.MeasureArray).Standard, 44.8, 45.8);
    }

    [Fact]
    public void With_stop_there_is_no_order_and_the_voltage_is_still_forbidden()
    {
        ConnectionOrder order = Order(Plan(("store-a", 40, TwoByTwo)), Level.Stop);
        Assert.Empty(order.Steps);
        Assert.Empty(order.Undoing);
        Assert.Contains(order.Never, one => one.What.Contains("40 V on store-a", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_meets_anything_before_it_was_measured() =>
        Gen.Select(Gens.WiringOf(["shed-120", "dairy-60"], 3, 3), Gens.WiringOf(["shed-120", "dairy-60"], 2, 3)).Sample(
            (one, two) =>
            {
                ConnectionOrder order = Order(Plan(("store-a", 2000, WiringText.Canonical(one)), ("store-b", 2000, WiringText.Canonical(two))));
                foreach ((string input, Wiring wiring) in new[] { ("store-a", WiringText.Canonical(one)), ("store-b", WiringText.Canonical(two)) })
                {
                    ConnectionAct[] acts = [.. order.Steps.Where(step => step.Input == input).Select(step => step.Act)];
                    Assert.Equal(acts.Order(), acts);
                    Assert.Contains(ConnectionAct.MeasureArray, acts);
                    Assert.Contains(ConnectionAct.ConnectInput, acts);
                    Assert.Equal(wiring.Strings.Length > 1, acts.Contains(ConnectionAct.MeasureString));
                    Assert.Equal(acts.Contains(ConnectionAct.MeasureString), acts.Contains(ConnectionAct.JoinStrings));
                }

                Assert.Equal(["store-a", "store-b"], order.Steps.Select(step => step.Input).OfType<string>().Distinct());
                foreach (ExpectedReading reading in order.Steps.SelectMany(step => step.Expected))
                {
                    Assert.True(double.IsFinite(reading.Standard) && double.IsFinite(reading.Now));
                    Assert.True(reading.Least is null || (reading.Least < reading.Standard && reading.Standard < reading.Most));
                }
            },
            iter: 60);
}
