namespace Arraywright.Gear;

/// <summary>Checks a label and fills its gaps.</summary>
/// <remarks>
/// A genuine label of any kind, thin film to shingled, 5 W to 700 W, gives no doubt. A figure that cannot be true is refused; one that is
/// possible but unlike any usual label is questioned. The ranges and their sources are those of the typical figures of each technology.
/// </remarks>
public static class PanelReader
{
    /// <summary>The usable panel that a label describes, with what is odd about it.</summary>
    /// <returns>The panel, null when a figure is refused; every doubt found, refusals first.</returns>
    public static (Panel? Panel, IReadOnlyList<LabelDoubt> Doubts) Read(PanelLabel label)
    {
        LabelDoubts doubts = new(label.Name);
        TypicalFigures typical = TypicalFigures.Of(label.Technology ?? Technology.CrystallineSilicon);
        MaximumPowerChecks.CheckComplete(label, doubts);
        PanelLabel usable = FigureChecks.Usable(label, doubts);
        PanelLabel trusted = MaximumPowerChecks.Consistent(usable, typical, doubts);
        CoefficientChecks.Check(trusted, typical, doubts);
        BuildChecks.Check(trusted, typical, doubts);
        return (doubts.AnyRefused ? null : PanelFill.Fill(usable, typical), doubts.All);
    }
}
