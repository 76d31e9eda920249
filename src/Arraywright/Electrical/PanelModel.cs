using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Arraywright.Gear;

namespace Arraywright.Electrical;

/// <summary>A panel under given conditions, as the circuit sees it: its bypassed groups of cells in series.</summary>
/// <param name="Groups">One entry a group; a panel without bypass diodes has one.</param>
/// <param name="Bypass">The diode across each group.</param>
/// <param name="Kind">Panels of different kinds are never drawn together as equal, since their conditions may part later; see <see cref="Circuit.Update"/>.</param>
public sealed record PanelAtWork(ImmutableArray<DiodeParameters> Groups, BypassDiode Bypass, int Kind = 0);

/// <summary>The circuit model of one kind of panel, fitted to its label.</summary>
public sealed record PanelModel
{
    /// <summary>A label is fitted once, whoever asks: search, verdict, cable, meter and curve of one plan all do.</summary>
    private static readonly ConditionalWeakTable<Panel, PanelModel> Fitted = [];

    private PanelModel()
    {
    }

    /// <summary>The panel it was fitted to.</summary>
    public required Panel Panel { get; init; }

    /// <summary>The five parameters and how well they meet the label.</summary>
    public required PanelFit Fit { get; init; }

    /// <summary>The model fitted to the label of <paramref name="panel"/>. Always finite and physical; <see cref="PanelFit.Physical"/> says whether it meets the label.</summary>
    public static PanelModel FitTo(Panel panel) => Fitted.GetValue(panel, Fresh);

    private static PanelModel Fresh(Panel panel)
    {
        LabelPoints label = new(
            panel.ShortCircuitA,
            panel.OpenCircuitV,
            panel.MaximumPowerV.Value,
            panel.MaximumPowerA.Value,
            panel.OpenCircuitPerK.Value * panel.OpenCircuitV,
            panel.ShortCircuitPerK.Value * panel.ShortCircuitA,
            panel.Cells.Value,
            panel.Technology.Value);
        return new PanelModel { Panel = panel, Fit = LabelFit.To(label) };
    }

    /// <summary>The five parameters of the whole panel under other conditions.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="DeSoto.Translate"/>.</exception>
    public DiodeParameters At(Conditions conditions) => Fit.At(conditions);

    /// <summary>The panel under given conditions and shade.</summary>
    /// <param name="conditions">What the unshaded panel sees. Shaded groups keep its cell temperature.</param>
    /// <param name="shade">Even and group-wise shade; hours are the caller's business. Groups it does not name are unshaded.</param>
    /// <returns>
    /// Each group by its own irradiance: G·(1 − fraction)·(1 − fraction of the group). Without bypass diodes the panel is one group,
    /// and its darkest part governs, as cells in series share one current.
    /// </returns>
    /// <exception cref="ArgumentException">The shade names more groups than the panel has bypass diodes.</exception>
    public PanelAtWork Under(Conditions conditions, Shade shade)
    {
        var groups = new DiodeParameters[Groups];
        FillGroups(conditions, shade, groups);
        return new PanelAtWork([.. groups], Panel.BypassDiodes.Value < 1 ? BypassDiode.None : BypassDiode.Schottky(Panel.ShortCircuitA));
    }

    /// <summary>Groups of cells that the circuit tells apart: one a bypass diode, or the whole panel where there is none.</summary>
    public int Groups => Math.Max(1, Panel.BypassDiodes.Value);

    /// <summary>As <see cref="Under"/>, into memory at hand.</summary>
    /// <param name="conditions">What the unshaded panel sees.</param>
    /// <param name="shade">Even and group-wise shade.</param>
    /// <param name="groups">Receives <see cref="Groups"/> entries.</param>
    public void FillGroups(Conditions conditions, Shade shade, Span<DiodeParameters> groups)
    {
        double panelWPerM2 = conditions.IrradianceWPerM2 * (1 - shade.Fraction);
        if (Panel.BypassDiodes.Value < 1)
        {
            double worst = 0;
            foreach (double fraction in shade.GroupFractions)
            {
                worst = Math.Max(worst, fraction);
            }

            groups[0] = At(conditions with { IrradianceWPerM2 = panelWPerM2 * (1 - worst) });
            return;
        }

        if (shade.GroupFractions.Length > Groups)
        {
            throw new ArgumentException($"The shade names {shade.GroupFractions.Length} groups; {Panel.Name} has {Groups}.", nameof(shade));
        }

        double before = double.NaN;
        for (int group = 0; group < Groups; group++)
        {
            double fraction = group < shade.GroupFractions.Length ? shade.GroupFractions[group] : 0;
            groups[group] = fraction == before
                ? groups[group - 1]
                : At(conditions with { IrradianceWPerM2 = panelWPerM2 * (1 - fraction) }).OneOf(Groups);
            before = fraction;
        }
    }
}
