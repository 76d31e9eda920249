using Arraywright.Gear;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Gear;

public sealed class PanelReaderProperties
{
    /// <summary>Figures that a broken file or a slip of the pen may hold, mixed with usual ones.</summary>
    private static readonly Gen<double?> AnyFigure = Gen.OneOf(
        Gen.Const(default(double?)),
        Gen.Double.Select(value => (double?)value),
        Gen.Double[0, 100].Select(value => (double?)value),
        Gen.Double[-0.01, 0.01].Select(value => (double?)value),
        Gen.OneOf(0, -0.0, -1, 1e-320, 1e300, -1e300, double.NaN, double.PositiveInfinity, double.NegativeInfinity).Select(value => (double?)value));

    private static readonly Gen<PanelLabel> AnyLabel = Gen.Select(Gens.Label, AnyFigure.Array[12], Gen.Int[0, 4095]).Select((label, figures, changed) =>
    {
        double? Figure(int index, double? usual) => (changed >> index & 1) == 1 ? figures[index] : usual;
        return label with
        {
            PowerW = Figure(0, label.PowerW),
            OpenCircuitV = Figure(1, label.OpenCircuitV),
            ShortCircuitA = Figure(2, label.ShortCircuitA),
            MaximumPowerV = Figure(3, label.MaximumPowerV),
            MaximumPowerA = Figure(4, label.MaximumPowerA),
            OpenCircuitPerK = Figure(5, label.OpenCircuitPerK),
            ShortCircuitPerK = Figure(6, label.ShortCircuitPerK),
            PowerPerK = Figure(7, label.PowerPerK),
            MaxSeriesFuseA = Figure(8, label.MaxSeriesFuseA),
            MaxSystemVoltageV = Figure(9, label.MaxSystemVoltageV),
            ToleranceFraction = Figure(10, label.ToleranceFraction),
            NoctC = Figure(11, label.NoctC),
            Cells = changed % 3 == 0 ? null : label.Cells,
            Technology = changed % 5 == 0 ? null : label.Technology,
        };
    });

    [Fact]
    public void A_feasible_label_gives_its_own_figures_without_doubt() => Gens.Label.Sample(label =>
    {
        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(label);
        return doubts.Count == 0
            && panel!.PowerW == Sourced.Given(label.PowerW!.Value)
            && panel.MaximumPowerV == Sourced.Given(label.MaximumPowerV!.Value)
            && panel.OpenCircuitV == label.OpenCircuitV
            && panel.ShortCircuitA == label.ShortCircuitA
            && PanelAssumptions.Of(panel).Count == 0;
    });

    [Fact]
    public void One_of_power_vmp_and_imp_left_out_comes_back() => Gens.Label.Sample(label =>
        Near(PanelReader.Read(label with { PowerW = null }).Panel!.PowerW, label.PowerW)
        && Near(PanelReader.Read(label with { MaximumPowerV = null }).Panel!.MaximumPowerV, label.MaximumPowerV)
        && Near(PanelReader.Read(label with { MaximumPowerA = null }).Panel!.MaximumPowerA, label.MaximumPowerA));

    [Fact]
    public void Whatever_a_label_says_a_panel_is_finite_and_ordered_or_refused_with_a_reason() => AnyLabel.Sample(
        label =>
        {
            (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(label);
            bool refused = doubts.Any(doubt => doubt.Refused);
            return refused == (panel is null)
                && doubts.All(doubt => doubt.Field.Length > 0 && doubt.Message.EndsWith('.') | doubt.Message.EndsWith('?') && doubt.Message.Length < 400)
                && doubts.SkipWhile(doubt => doubt.Refused).All(doubt => !doubt.Refused)
                && (panel is null || IsUsable(panel));
        },
        iter: 20_000);

    private static bool Near(Sourced<double> derived, double? expected) =>
        derived.Origin == Origin.Derived && derived.Why!.Length > 0 && Math.Abs(derived.Value - expected!.Value) < 1e-12 * expected.Value;

    private static bool IsUsable(Panel panel) =>
        panel.MaximumPowerV.Value > 0 && panel.MaximumPowerV.Value < panel.OpenCircuitV && panel.OpenCircuitV <= 1500
        && panel.MaximumPowerA.Value > 0 && panel.MaximumPowerA.Value < panel.ShortCircuitA && panel.ShortCircuitA <= 200
        && panel.PowerW.Value > 0 && double.IsFinite(panel.PowerW.Value)
        && panel.OpenCircuitPerK.Value < 0 && Math.Abs(panel.ShortCircuitPerK.Value) < 0.01 && !(panel.PowerPerK >= 0)
        && panel.Cells.Value > 0 && panel.BypassDiodes.Value <= panel.Cells.Value
        && panel.ToleranceFraction.Value is >= 0 and <= 0.5;
}
