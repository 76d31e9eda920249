using Arraywright.Gear;
using CsCheck;

namespace Arraywright.Files.Tests;

public sealed class QuickPlanTests
{
    [Fact]
    public void The_question_of_the_contract_is_read()
    {
        Plan plan = Read(["4x", "22.9V 6.72A 18.9V 6.35A"], ["50V 10A 400W"]);
        PanelStock stock = Assert.Single(plan.Panels);
        Panel panel = stock.Panel;
        Assert.Equal((4, 22.9, 6.72, 18.9, 6.35), (stock.Count, panel.OpenCircuitV, panel.ShortCircuitA, panel.MaximumPowerV.Value, panel.MaximumPowerA.Value));
        DcInput input = Assert.Single(plan.Inputs).Input;
        Assert.Equal((50.0, new Limit(10, Evidence.Nothing), new Limit(400, Evidence.Nothing)), (input.MaxVoltageV, input.RatedCurrent, input.MaxPower));
        Assert.Null(input.MaxCurrent);
        Assert.Null(input.MaxShortCircuitCurrent);
        Assert.Equal(Goal.Peak, plan.Goal);
    }

    [Theory]
    [InlineData("4x", "22.9V 6.72A 18.9V 6.35A")]
    [InlineData("4x22.9V 6.72A 18.9V 6.35A")]
    [InlineData("4 x 22.9 V 6.72 A 18.9 V 6.35 A")]
    [InlineData("4×", "18.9V, 22.9V; 6.35A / 6.72A")]
    [InlineData("4x", "22.9V", "6.72A", "18.9V", "6.35A")]
    [InlineData("4x22.9V", "6.72A", "6.35A", "18.9V")]
    [InlineData("4X", "6.35a 6720mA 18.9v 22.9v")]
    public void Figures_are_told_apart_by_unit_and_size_in_any_order(params string[] panels)
    {
        PanelStock stock = Assert.Single(Read(panels, ["50V"]).Panels);
        Assert.Equal((4, 22.9, 6.72, 18.9, 6.35), (stock.Count, stock.Panel.OpenCircuitV, stock.Panel.ShortCircuitA, stock.Panel.MaximumPowerV.Value, stock.Panel.MaximumPowerA.Value));
    }

    [Fact]
    public void Several_kinds_and_several_inputs_are_read()
    {
        Plan plan = Read(["2x", "22.9V 6.72A 120W", "21.6V 3.74A 60W", "3x44.6V 5.3A 180W"], ["50V 10A", "12..90V 100V 500W", "60V"]);
        Assert.Equal([("panel-1", 2), ("panel-2", 1), ("panel-3", 3)], plan.Panels.Select(stock => (stock.Panel.Name, stock.Count)));
        Assert.Equal(["input-1", "input-2", "input-3"], plan.Inputs.Select(input => input.Input.Name));
        Assert.Equal((12.0, 90.0, 100.0), (plan.Inputs[1].Input.TrackingMinV, plan.Inputs[1].Input.TrackingMaxV, plan.Inputs[1].Input.MaxVoltageV));
    }

    [Fact]
    public void Without_quotation_marks_a_second_label_begins_where_the_first_is_full()
    {
        Assert.Equal([22.9, 44.6], Read(["22.9V", "6.72A", "18.9V", "6.35A", "44.6V", "5.3A", "180W"], ["50V"]).Panels.Select(stock => stock.Panel.OpenCircuitV));
        Assert.Equal([50.0, 60.0], Read(["22.9V 6.72A 120W"], ["50V", "10A", "60V"]).Inputs.Select(input => input.Input.MaxVoltageV));
    }

    [Fact]
    public void A_place_makes_it_a_question_of_the_year()
    {
        Place place = new(-33.9, 18.4, 0, 2, null);
        PlanReading reading = QuickPlan.Read(["22.9V 6.72A 120W"], ["50V"], place);
        Assert.Equal((Goal.Year, place, 0.0), (reading.Plan!.Goal, reading.Plan.Place, reading.Plan.Mount.AzimuthDeg));
    }

    [Fact]
    public void A_quick_plan_can_be_saved_and_read()
    {
        Plan plan = Read(["2x", "22.9V 6.72A 18.9V 6.35A", "60W 21.6V 3.74A"], ["12..45V 50V 10A 400W", "60V"]);
        Assert.Equal(Dump.Of(plan), Dump.Of(Plans.Read(PlanWriter.Write(plan))));
    }

    public static TheoryData<string[], string[], string, string> Bad => new()
    {
        { [], ["50V"], "panels:1:1", "no panels" },
        { ["4x"], ["50V"], "panels:1:1", "a count without a label" },
        { ["4x", "2x", "22.9V 6.72A 120W"], ["50V"], "panels:1:1", "a count without a label" },
        { ["22.9V 6.72A 120W"], [], "--onto:1:1", "no input" },
        { ["22.9V 6.72A 120W"], [""], "--onto:1:1", "no input" },
        { ["22.9V 6,72A 120W"], ["50V"], "panels:1:7", "decimal point" },
        { ["2x", "22.9V 6,72A 120W"], ["50V"], "panels:2:7", "decimal point" },
        { ["2x 22.9V 6,72A 120W"], ["50V"], "panels:1:10", "decimal point" },
        { ["2x", "22.9V", "6,72A"], ["50V"], "panels:3:1", "decimal point" },
        { ["22.9 6.72A 120W"], ["50V"], "panels:1:1", "add the unit" },
        { ["22.9V 6.72A 120"], ["50V"], "panels:1:13", "add the unit" },
        { ["22.9V 6.72A 120X"], ["50V"], "panels:1:13", "the units are V, A and W" },
        { ["Voc 22.9V 6.72A 120W"], ["50V"], "panels:1:1", "write only figures" },
        { ["NaNV 6.72A 120W"], ["50V"], "panels:1:1", "write only figures" },
        { ["1e999V 6.72A 120W"], ["50V"], "panels:1:1", "a voltage from" },
        { ["-5V 6.72A 120W"], ["50V"], "panels:1:1", "a voltage from" },
        { ["22.9V 18.9V 17V 6.72A"], ["50V"], "panels:1:13", "at most two voltages" },
        { ["22.9V 6.72A 6A 5A 120W"], ["50V"], "panels:1:16", "at most two currents" },
        { ["22.9V 6.72A 120W 130W"], ["50V"], "panels:1:18", "at most one power" },
        { ["22.9V 120W"], ["50V"], "panels:1:1", "at least the open-circuit voltage and the short-circuit current" },
        { ["22.9V 6.72A"], ["50V"], "panels:1:1", "power is missing" },
        { ["22.9V 6.72A 1200W"], ["50V"], "panels:1:1", "label figures that one panel can have" },
        { ["0x", "22.9V 6.72A 120W"], ["50V"], "panels:1:1", "from 1 to 200" },
        { ["201x", "22.9V 6.72A 120W"], ["50V"], "panels:1:1", "from 1 to 200" },
        { ["99999999999x", "22.9V 6.72A 120W"], ["50V"], "panels:1:1", "from 1 to 200" },
        { ["150x", "22.9V 6.72A 120W", "51x", "21V 6A 100W"], ["50V"], "panels:4:1", "201 panels altogether" },
        { ["22.9V 6.72A 120W"], ["10A 400W"], "--onto:1:1", "the highest voltage the input bears" },
        { ["22.9V 6.72A 120W"], ["12..45V 10A"], "--onto:1:1", "the hard limit must be stated by itself" },
        { ["22.9V 6.72A 120W"], ["12..60V 50V"], "--onto:1:1", "a tracking window above the highest voltage" },
        { ["22.9V 6.72A 120W"], ["50V 60V 10A"], "--onto:1:5", "at most one hard voltage limit" },
        { ["22.9V 6.72A 120W"], ["50V 10A 12A"], "--onto:1:9", "at most one current" },
        { ["22.9V 6.72A 120W"], ["50V", "ten"], "--onto:2:1", "write only figures" },
        { ["22.9V 6.72A 120W"], ["50V 12..20V 20..30V"], "--onto:1:13", "one range of volts" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_bad_question_is_reported_at_its_argument_and_position(string[] panels, string[] onto, string place, string says)
    {
        PlanReading reading = QuickPlan.Read(panels, onto);
        Assert.Null(reading.Plan);
        Assert.Contains(reading.Faults, fault => fault.ToString().StartsWith(place + ": ", StringComparison.Ordinal) && fault.ToString().Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void Any_arguments_give_faults_or_a_sound_plan()
    {
        Gen<string> word = Gen.OneOf(Gen.Char["0123456789.VAWx×-,;/ "].Array[0, 12].Select(letters => new string(letters)), Gen.Int[0, 3].Select(index => new[] { "22.9V", "6.72A", "120W", "4x" }[index]));
        Gen.Select(word.Array[0, 8], word.Array[0, 5]).Sample(
            (panels, onto) =>
            {
                PlanReading reading = QuickPlan.Read(panels, onto);
                Assert.Equal(reading.Plan is null, reading.Faults.Count > 0);
                Assert.All(reading.Faults, fault => Assert.True(fault is { Line: > 0, Column: > 0 }));
                Assert.All(Dump.Doubles(reading.Plan), number => Assert.True(double.IsFinite(number)));
            },
            iter: 3000);
    }

    private static Plan Read(string[] panels, string[] onto)
    {
        PlanReading reading = QuickPlan.Read(panels, onto);
        Assert.Empty(reading.Faults);
        return reading.Plan!;
    }
}
