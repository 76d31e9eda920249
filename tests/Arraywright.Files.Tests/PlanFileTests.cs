using System.Text;
using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Files.Tests;

public sealed class PlanFileTests
{
    private static readonly Plan Full = Plans.Read(Plans.Full);

    [Fact]
    public void The_top_of_a_plan_is_read()
    {
        Assert.Equal("Lambing shed, north field", Full.Name);
        Assert.Equal(Goal.Day, Full.Goal);
        Assert.Equal(new Place(54.6, -3.1, 210, -14, "../weather/some.epw"), Full.Place);
        Assert.Equal(new Mount(40, 170, MountKind.CloseRoof), Full.Mount);
        Assert.Empty(Full.Doubts);
    }

    [Fact]
    public void Every_figure_of_a_panel_is_read()
    {
        PanelStock stock = Full.Panels[0];
        Panel panel = stock.Panel;
        Assert.Equal(("shed-120", 4), (panel.Name, stock.Count));
        Assert.Equal((120.0, 22.9, 6.72, 18.9, 6.35), (panel.PowerW.Value, panel.OpenCircuitV, panel.ShortCircuitA, panel.MaximumPowerV.Value, panel.MaximumPowerA.Value));
        Assert.Equal((-0.0029, 0.0005, -0.0038), (panel.OpenCircuitPerK.Value, panel.ShortCircuitPerK.Value, panel.PowerPerK));
        Assert.Equal((36, 2), (panel.Cells.Value, panel.BypassDiodes.Value));
        Assert.Equal((15.0, 600.0, 0.03, 45.0, 85.5), (panel.MaxSeriesFuseA, panel.MaxSystemVoltageV, panel.ToleranceFraction.Value, panel.NoctC, panel.Price));
        Assert.Equal(Technology.MonoPerc, panel.Technology.Value);
        Assert.Equal(Origin.Given, panel.OpenCircuitPerK.Origin);
        Assert.Equal(new Mount(60, 200, MountKind.CloseRoof), stock.Mount);
    }

    [Fact]
    public void Shade_is_read_in_each_of_its_forms()
    {
        Assert.Equal([0.8, 0.0], Full.Panels[0].Shade.GroupFractions);
        Assert.Equal([new ShadeHours(7.5, 10, 0.6), new ShadeHours(15, 17, 0.25)], Full.Panels[1].Shade.Hours);
        Assert.Equal(0.3, Plans.Read(Plans.Changed("count: 4", "count: 4\n    shade: 30 %")).Panels[0].Shade.Fraction);
        Assert.Equal(0.3, Plans.Read(Plans.Changed("count: 4", "count: 4\n    shade: 0.3")).Panels[0].Shade.Fraction);
    }

    [Fact]
    public void Inputs_and_units_are_read()
    {
        DcInput left = Full.Inputs[0].Input;
        Assert.Equal((60.0, 14.0, 12.0, 45.0), (left.MaxVoltageV, left.StartVoltageV, left.TrackingMinV, left.TrackingMaxV));
        Assert.Equal(new Limit(10, Evidence.Nothing), left.MaxCurrent);
        Assert.Equal(new Limit(14, new Evidence(EvidenceKind.Maker, 0.2, "letter of 2026-03-02, \"array short-circuit current\"")), left.MaxShortCircuitCurrent);
        Assert.Equal(new Limit(400, Evidence.Nothing), left.MaxPower);
        Assert.Equal(0.95, left.EfficiencyFraction);
        Assert.Equal("dairy-store", left.Unit);
        Assert.Equal("2*shed-120 | 2*shed-120", WiringText.Print(Full.Inputs[0].StatedWiring!));
        Assert.Equal(new Limit(8, new Evidence(EvidenceKind.Label, 0, null)), Full.Inputs[1].Input.RatedCurrent);
        Assert.Equal(new Battery(500, 0, 1, 0), Full.Inputs[1].Input.Battery);
        Assert.Equal([new ChargingUnit("dairy-store", new Limit(800, new Evidence(EvidenceKind.Label, 0, null)), new Battery(1200, 0.2, 0.95, 40))], Full.Units);
    }

    // 25 ft = 7.62 m exactly; 10 AWG = 5.2612 mm² (ASTM B258, as in the reference pack, table 2.3).
    [Fact]
    public void The_cable_is_read_in_foreign_units()
    {
        Assert.Equal(7.62, Full.Cable.LengthM.Value, 12);
        Assert.Equal(5.2612, Full.Cable.AreaMm2.Value, 4);
        Assert.Equal((2.0, 2.5, 0.0004), (Full.Cable.StringLengthM.Value, Full.Cable.StringAreaMm2.Value, Full.Cable.ContactOhm.Value));
    }

    [Theory]
    [InlineData("-65 mV/K", -0.065 / 22.9)]
    [InlineData("-0.065 V/K", -0.065 / 22.9)]
    [InlineData("-0.29 %/C", -0.0029)]
    [InlineData("-0.29%/\u00B0C", -0.0029)]
    [InlineData("\u22120.29 % / K", -0.0029)]
    [InlineData("-0.29\u00A0%/K", -0.0029)]
    public void A_coefficient_may_be_a_share_or_volts(string written, double fraction) =>
        Assert.Equal(fraction, Plans.Read(Plans.Changed("voc:", $"voc_temperature: {written}\n    voc:")).Panels[0].Panel.OpenCircuitPerK.Value);

    [Fact]
    public void A_coefficient_in_milliamps_is_a_share_of_isc() =>
        Assert.Equal(0.003 / 6.72, Plans.Read(Plans.Changed("voc:", "isc_temperature: 3 mA/K\n    voc:")).Panels[0].Panel.ShortCircuitPerK.Value);

    [Fact]
    public void What_the_plan_leaves_out_is_listed_as_assumed()
    {
        Plan plan = Plans.Read(Plans.Small);
        Assert.Null(plan.Place);
        Assert.Equal(Goal.Peak, plan.Goal);
        Assert.Equal("plan", plan.Name);
        string[] what = [.. plan.Assumed.Select(assumption => assumption.What)];
        Assert.Equal(
            ["goal", "tilt of the panels", "direction of the panels", "kind of mount", "size of the cable", "length of the cable", "each string's own run", "resistance of a connector"],
            what[..8]);
        Assert.Contains("a voc_temperature", what);
        Assert.Equal(what.Length, what.Distinct().Count());
    }

    [Theory]
    [InlineData(54.6, 45, 180)]
    [InlineData(35, 30, 180)]
    [InlineData(-20, 20, 0)]
    [InlineData(2, 10, 180)]
    public void Panels_are_taken_to_face_the_equator(double latitude, double tiltDeg, double azimuthDeg)
    {
        // Recomputed by hand: 0.76·54.6 + 3 = 44.5 → 45; 29.6 → 30; 18.2 → 20; 4.5 → at least 10.
        Mount mount = Plans.Read($"place: {{ latitude: {latitude}, longitude: 0 }}\n" + Plans.Small).Mount;
        Assert.Equal((tiltDeg, azimuthDeg), (mount.TiltDeg, mount.AzimuthDeg));
    }

    [Fact]
    public void A_plan_that_leaves_nothing_out_assumes_nothing_but_panel_and_battery_gaps()
    {
        string[] what = [.. Full.Assumed.Select(assumption => assumption.What)];
        Assert.DoesNotContain(what, name => name.StartsWith("shed-120 ", StringComparison.Ordinal));
        Assert.All(what, name => Assert.True(name.StartsWith("old ", StringComparison.Ordinal) || name.StartsWith("right battery", StringComparison.Ordinal), name));
    }

    [Fact]
    public void Exceeding_without_evidence_is_read_and_listed()
    {
        Plan plan = Plans.Read(Plans.Changed("rated_current: 10 A", "rated_current: { value: 10 A, exceed: 20 % }"));
        Assert.Equal(10, plan.Inputs[0].Input.RatedCurrent!.Allowed);
        Assert.Contains(plan.Assumed, assumption => assumption.What.StartsWith("in rated_current", StringComparison.Ordinal));
    }

    [Fact]
    public void Windows_line_ends_and_a_byte_order_mark_are_simply_read()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Plans.Full.Replace("\n", "\r\n", StringComparison.Ordinal))];
        Plan plan = Assert.IsType<Plan>(PlanFile.ReadBytes(bytes, "plan.yaml").Plan);
        Assert.Equal(PlanWriter.Write(Full), PlanWriter.Write(plan));
    }

    [Fact]
    public void Json_is_read_even_with_tabs()
    {
        const string Json =
            """
            {
            	"panels": [ { "name": "a", "count": 2, "power": "120 W", "voc": "22.9 V", "isc": "6.72 A" } ],
            	"inputs": [ { "name": "in", "max_voltage": "60 V", "wiring": "a | a" } ]
            }
            """;
        Assert.Equal(2, Plans.Read(Json).Panels[0].Count);
    }

    [Fact]
    public void Panels_in_doubt_but_possible_are_read_with_their_doubt()
    {
        // 6.35 A × 18.9 V = 120 W on a label of 128 W: 6 % apart.
        Plan plan = Plans.Read(Plans.Changed("120 W", "128 W"));
        LabelDoubt doubt = Assert.Single(plan.Doubts);
        Assert.Equal(("a", "power", false), (doubt.Panel, doubt.Field, doubt.Refused));
    }

    [Theory]
    [InlineData("1/0 AWG", 53.475)]
    [InlineData("2/0 AWG", 67.431)]
    [InlineData("4/0 AWG", 107.22)]
    [InlineData("0 AWG", 53.475)]
    [InlineData("18 AWG", 0.8230)]
    [InlineData("6 mm2", 6)]
    [InlineData("6 mm²", 6)]
    public void Cable_sizes_are_read_in_both_systems(string written, double areaMm2)
    {
        // Areas: ASTM B258 geometry, reference pack table 2.3, to its five digits.
        double read = Plans.Read(Plans.Small + $"cable: {{ size: {written} }}\n").Cable.AreaMm2.Value;
        Assert.InRange(read / areaMm2, 1 - 1e-4, 1 + 1e-4);
    }

    [Theory]
    [InlineData("14 F", -10)]
    [InlineData("-40 F", -40)]
    [InlineData("-14 C", -14)]
    [InlineData("-14 °C", -14)]
    public void Temperatures_are_read_in_both_scales(string written, double coldestC) =>
        Assert.Equal(coldestC, Plans.Read($"place: {{ latitude: 54.6 N, longitude: 3.1 W, coldest: {written} }}\n" + Plans.Small).Place!.ColdestC);

    [Fact]
    public void South_and_west_may_be_letters()
    {
        Place place = Plans.Read("place: { latitude: 33.9 S, longitude: 18.4 W }\n" + Plans.Small).Place!;
        Assert.Equal((-33.9, -18.4), (place.LatitudeDeg, place.LongitudeDeg));
    }

    [Fact]
    public void A_negative_zero_is_a_zero() =>
        Assert.False(double.IsNegative(Plans.Read("place: { latitude: 0 S, longitude: -0 }\n" + Plans.Small).Place!.LatitudeDeg));

    [Theory]
    [InlineData("12..45 V")]
    [InlineData("12 .. 45 V")]
    [InlineData("12 V..45 V")]
    [InlineData("12-45 V")]
    [InlineData("12 V to 45 V")]
    [InlineData("12\u201345V")]
    public void A_range_is_read_as_labels_print_it(string written)
    {
        DcInput input = Plans.Read(Plans.Changed("rated_current:", $"mpp_voltage: {written}\n    rated_current:")).Inputs[0].Input;
        Assert.Equal((12.0, 45.0), (input.TrackingMinV, input.TrackingMaxV));
    }
}
