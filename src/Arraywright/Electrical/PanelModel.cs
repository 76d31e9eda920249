using System.Collections.Immutable;
using Arraywright.Gear;

namespace Arraywright.Electrical;

/// <summary>A panel under given conditions, as the circuit sees it: its bypassed groups of cells in series.</summary>
/// <param name="Groups">One entry a group; a panel without bypass diodes has one.</param>
/// <param name="Bypass">The diode across each group.</param>
public sealed record PanelAtWork(ImmutableArray<DiodeParameters> Groups, BypassDiode Bypass);

/// <summary>The circuit model of one kind of panel, fitted to its label.</summary>
public sealed record PanelModel
{
    private PanelModel()
    {
    }

    /// <summary>The panel it was fitted to.</summary>
    public required Panel Panel { get; init; }

    /// <summary>The model fitted to the label of <paramref name="panel"/>.</summary>
    public static PanelModel FitTo(Panel panel) => throw new NotSupportedException(panel.Name);

    /// <summary>The five parameters of the whole panel under other conditions.</summary>
    public DiodeParameters At(Conditions conditions) => throw new NotSupportedException(conditions.ToString());

    /// <summary>The panel under given conditions and shade.</summary>
    /// <param name="conditions">What the unshaded panel sees.</param>
    /// <param name="shade">Even and group-wise shade; hours are the caller's business.</param>
    public PanelAtWork Under(Conditions conditions, Shade shade) => throw new NotSupportedException(shade.ToString() + conditions);
}
