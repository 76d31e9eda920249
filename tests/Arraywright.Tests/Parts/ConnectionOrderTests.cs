using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Parts;
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

    private static ConnectionOrder Order(Plan plan, StatedConditions? stated = null) =>
        ConnectionPlanner.Of(PartsScene.Of(plan), stated ?? StatedConditions.None);

    /// <summary>The order as it were if nothing spoke against the wiring.</summary>
    private static ConnectionOrder Unjudged(Plan plan)
    {
        PartsList list = PartsScene.Of(plan with { Place = null });
        return ConnectionPlanner.Of(
            list with
            {
                Design = list.Design with { Assignments = [.. list.Design.Assignments.Select(assignment => assignment with { Findings = [] })] },
                Inputs = [.. list.Inputs.Select(input => input with { Pieces = [.. input.Pieces.Select(piece => piece with { Findings = [] })] })],
            },
            StatedConditions.None);
    }

    private static Plan InUnits(Plan plan, params string?[] units) =>
        plan with
        {
            Inputs = [.. plan.Inputs.Zip(units, (planned, unit) => planned with { Input = planned.Input with { Unit = unit } })],
            Units = [.. units.OfType<string>().Distinct().Select(unit => new ChargingUnit(unit, null, null))],
        };

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
        Assert.All(Order(plan).Steps.Where(step => step.Act == ConnectionAct.SwitchOn), step => Assert.EndsWith("unit off, switch open.", step.IfNot, StringComparison.Ordinal));
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
        ConnectionOrder order = Order(Plan(("store-a", 40, TwoByTwo)));
        Assert.Empty(order.Steps);
        Assert.Empty(order.Undoing);
        Assert.Contains(order.Never, one => one.What.Contains("40 V on store-a", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(null, null, null)]
    [InlineData("barn", "barn", "barn")]
    [InlineData("barn", "shed", "barn")]
    [InlineData("barn", null, null)]
    public void Who_does_what_the_steps_say_never_plugs_under_current_and_always_measures_something(string? one, string? two, string? three)
    {
        Wiring fused = LimitsScene.Side(LimitsScene.One("shed-120"), LimitsScene.One("shed-120"), LimitsScene.One("shed-120"));
        Plan plan = InUnits(Plan(("store-a", 60, TwoByTwo), ("store-b", 60, LimitsScene.One("shed-120")), ("store-c", 60, fused)), one, two, three);
        ConnectionOrder order = Unjudged(plan);
        foreach (bool hasSwitch in new[] { true, false })
        {
            new StepWalker([.. plan.Inputs.Select(planned => planned.Input)], hasSwitch).Walk(order);
        }
    }

    [Fact]
    public void Units_are_finished_one_after_the_other_and_counted_as_units()
    {
        Plan plan = Plan(("left", 60, LimitsScene.One("shed-120")), ("middle", 60, LimitsScene.One("shed-120")), ("right", 60, LimitsScene.One("shed-120")));
        (ConnectionAct, string?)[] Ends(ConnectionOrder order) => [.. order.Steps.Where(step => step.Act is ConnectionAct.ConnectInput or ConnectionAct.SwitchOn).Select(step => (step.Act, step.Input))];
        ConnectionOrder two = Unjudged(InUnits(plan, "barn", "shed", "barn"));
        Assert.Equal(
            [
                (ConnectionAct.ConnectInput, "left"), (ConnectionAct.ConnectInput, "right"), (ConnectionAct.SwitchOn, "left"), (ConnectionAct.SwitchOn, "right"),
                (ConnectionAct.ConnectInput, "middle"), (ConnectionAct.SwitchOn, "middle"),
            ],
            Ends(two));
        Assert.StartsWith("Switch every unit off", two.Steps[0].Do[0], StringComparison.Ordinal);
        Assert.Equal(["Switch barn on and read left", "Close the switch of right and read it", "Switch shed on and read middle"], two.Steps.Where(step => step.Act == ConnectionAct.SwitchOn).Select(step => step.Title));
        Assert.StartsWith("Switch the unit off", Unjudged(InUnits(plan, "barn", "barn", "barn")).Steps[0].Do[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Zero_volts_and_a_minus_sign_at_the_plug_are_explained()
    {
        string ifNot = Order(TwoByTwo).Steps.Single(step => step.Act == ConnectionAct.MeasureArray).IfNot!;
        Assert.StartsWith("0 V: the switch is open, the panels are still covered, or a connector is not home. A minus sign: ", ifNot, StringComparison.Ordinal);

        // Two others send 2 × 6.72 A × 1.25 = 16.8 A into a string, more than the label's fuse of 15 A: the strings have fuses.
        Wiring three = LimitsScene.Side(TwoByTwo.Strings[0], TwoByTwo.Strings[0], TwoByTwo.Strings[0]);
        ConnectionOrder fused = Unjudged(Plan(("store-a", 60, three)));
        Assert.Contains("a fuse is open or not put in", fused.Steps.Single(step => step.Act == ConnectionAct.MeasureArray).IfNot, StringComparison.Ordinal);
        Assert.Contains("put the fuses in", fused.Steps.Single(step => step.Act == ConnectionAct.JoinStrings).Do[^1], StringComparison.Ordinal);
        Assert.DoesNotContain(Order(TwoByTwo).Steps[..^1].SelectMany(step => step.Do), text => text.Contains("fuse", StringComparison.Ordinal));
    }

    /// <summary>By hand: connectors take four at most; five are three and two, joined by one more.</summary>
    [Theory]
    [InlineData(2, "one branch connector (2 into 1), all − ends in another.")]
    [InlineData(4, "one branch connector (4 into 1), all − ends in another.")]
    [InlineData(5, "branch connectors (1 × 3 into 1, 2 × 2 into 1), all − ends in as many others.")]
    [InlineData(16, "branch connectors (5 × 4 into 1), all − ends in as many others.")]
    public void Strings_are_joined_with_as_many_branch_connectors_as_it_takes(int strings, string connectors)
    {
        ConnectionOrder order = Unjudged(Plan(("store-a", 60, Wiring.InParallel(Enumerable.Repeat(LimitsScene.One("shed-120"), strings)))));
        Assert.Contains(order.Steps.Single(step => step.Act == ConnectionAct.JoinStrings).Do, text => text.Contains($"all + ends together in {connectors}", StringComparison.Ordinal));
    }

    [Fact]
    public void Panels_side_by_side_within_a_string_have_their_own_branch_connectors()
    {
        Wiring pair = LimitsScene.Side(LimitsScene.One("shed-120"), LimitsScene.One("shed-120"));
        ConnectionOrder order = Unjudged(Plan(("store-a", 60, LimitsScene.Row(pair, pair))));
        Assert.Contains(order.Steps.Single(step => step.Act == ConnectionAct.JoinString).Do, text => text.Contains("for + branch connectors (2 × 2 into 1), for − as many.", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_meets_anything_before_it_was_measured() =>
        Gen.Select(Gens.WiringOf(["shed-120", "dairy-60"], 3, 3), Gens.WiringOf(["shed-120", "dairy-60"], 2, 3)).Sample(
            (one, two) =>
            {
                ConnectionOrder order = Unjudged(Plan(("store-a", 2000, WiringText.Canonical(one)), ("store-b", 2000, WiringText.Canonical(two))));
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
                Assert.All(order.Steps.Select(step => step.IfNot).OfType<string>(), text => Assert.True(text.Split("minus sign").Length <= 2, text));
                foreach (ExpectedReading reading in order.Steps.SelectMany(step => step.Expected))
                {
                    Assert.True(double.IsFinite(reading.Standard) && double.IsFinite(reading.Now));
                    Assert.True(reading.Least is null || (reading.Least < reading.Standard && reading.Standard < reading.Most));
                }
            },
            iter: 60);
}
