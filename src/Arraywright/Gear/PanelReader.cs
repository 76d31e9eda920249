namespace Arraywright.Gear;

/// <summary>Checks a label and fills its gaps.</summary>
public static class PanelReader
{
    /// <summary>The usable panel that a label describes, with what is odd about it.</summary>
    /// <returns>The panel, null when a figure is refused; every doubt found, refusals first.</returns>
    public static (Panel? Panel, IReadOnlyList<LabelDoubt> Doubts) Read(PanelLabel label) => throw new NotSupportedException(label.Name);
}
