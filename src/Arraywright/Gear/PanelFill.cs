using static Arraywright.Gear.LabelText;

namespace Arraywright.Gear;

/// <summary>Makes a panel of a label that passed its checks: each gap filled by a typical figure that says so.</summary>
internal static class PanelFill
{
    /// <summary>Crystalline cell counts in series, commonest first.</summary>
    private static ReadOnlySpan<int> UsualCellCounts => [36, 60, 72, 54, 66, 48, 96, 78, 32, 40, 18, 20, 24, 28, 12, 104];

    public static Panel Fill(PanelLabel label, TypicalFigures typical)
    {
        MaximumPower maximum = MaximumPower.Of(label, typical) ?? throw Unchecked(label);
        double vocV = label.OpenCircuitV ?? throw Unchecked(label);
        Sourced<int> cells = Cells(label.Cells, vocV, typical);
        return new Panel
        {
            Name = label.Name,
            PowerW = maximum.PowerW,
            OpenCircuitV = vocV,
            ShortCircuitA = label.ShortCircuitA ?? throw Unchecked(label),
            MaximumPowerV = maximum.VoltageV,
            MaximumPowerA = maximum.CurrentA,
            OpenCircuitPerK = Coefficient(label.OpenCircuitPerK, typical.OpenCircuitPerK.Typical, typical),
            ShortCircuitPerK = Coefficient(label.ShortCircuitPerK, typical.ShortCircuitPerK.Typical, typical),
            PowerPerK = label.PowerPerK,
            Cells = cells,
            BypassDiodes = BypassDiodes(label.BypassDiodes, cells.Value, maximum.PowerW.Value, typical),
            MaxSeriesFuseA = label.MaxSeriesFuseA,
            MaxSystemVoltageV = label.MaxSystemVoltageV,
            ToleranceFraction = label.ToleranceFraction is { } tolerance
                ? Sourced.Given(tolerance)
                : Sourced.Assumed(0.03, "labels commonly say ±3 %"),
            NoctC = label.NoctC,
            Technology = label.Technology is { } technology
                ? Sourced.Given(technology)
                : Sourced.Assumed(Technology.CrystallineSilicon, "most panels are"),
            Price = label.Price,
        };
    }

    private static Sourced<double> Coefficient(double? given, double typicalPerK, TypicalFigures typical) => given is { } perK
        ? Sourced.Given(perK)
        : Sourced.Assumed(typicalPerK, $"the middle of what datasheets of {typical.Name} panels say");

    private static Sourced<int> Cells(int? given, double vocV, TypicalFigures typical)
    {
        if (given is { } stated)
        {
            return Sourced.Given(stated);
        }

        foreach (int count in UsualCellCounts)
        {
            if (typical.CellV.Likely?.Holds(vocV / count) == true)
            {
                return Sourced.Assumed(count, $"a usual count; {Figure(vocV)} V is then {Ratio(vocV / count)} V a cell, as {typical.Name} cells have");
            }
        }

        int cells = Math.Max(1, (int)Math.Round(vocV / typical.CellV.Typical));
        return Sourced.Assumed(cells, $"{Figure(vocV)} V at the {Ratio(typical.CellV.Typical)} V of a {typical.Name} cell");
    }

    /// <summary>Common practice, no source: one diode for 18 to 24 cells; one for a small panel and for thin film.</summary>
    private static Sourced<int> BypassDiodes(int? given, int cells, double powerW, TypicalFigures typical) => given is { } stated
        ? Sourced.Given(stated)
        : (cells, powerW) switch
        {
            _ when typical.IsThinFilm => Sourced.Assumed(1, "common for thin film: one across the panel"),
            (_, < 20) => Sourced.Assumed(1, "common for panels under 20 W"),
            ( <= 24, _) => Sourced.Assumed(1, $"common for {cells} cells"),
            ( <= 48, _) => Sourced.Assumed(2, $"common for {cells} cells: one for 18 to 24"),
            _ => Sourced.Assumed(3, $"common for {cells} cells: one for 18 to 24"),
        };

    private static InvalidOperationException Unchecked(PanelLabel label) => new($"The label of {label.Name} was not checked before it was filled.");
}
