using static Arraywright.Gear.LabelText;

namespace Arraywright.Gear;

/// <summary>How the panel is built (cells, bypass diodes) and what it bears (fuse, system voltage).</summary>
internal static class BuildChecks
{
    /// <summary>Largest fuse seen on a label, A, with room; 10 to 35 A is common.</summary>
    private const double LargestFuseA = 60;

    /// <summary>Highest class of system voltage in print is 1500 V; some leave room.</summary>
    private const double HighestSystemV = 2000;

    /// <summary>Three junctions of amorphous silicon in one cell, V.</summary>
    private const double HighestCellV = 2.45;

    public static void Check(PanelLabel label, TypicalFigures typical, LabelDoubts doubts)
    {
        CheckCells(label, typical, doubts);
        CheckFuse(label, doubts);
        CheckSystemVoltage(label, doubts);
        if (label is { Cells: { } cells, BypassDiodes: { } diodes } && diodes > cells)
        {
            doubts.Refuse("bypass_diodes", $"bypass_diodes is {diodes}, more than the {cells} cells they would span. Most panels have one for 18 to 24 cells.");
        }
    }

    private static void CheckCells(PanelLabel label, TypicalFigures typical, LabelDoubts doubts)
    {
        if (label is not { Cells: { } cells, OpenCircuitV: { } vocV } || typical.CellV.Usual.Holds(vocV / cells))
        {
            return;
        }

        double cellV = vocV / cells;
        string guess = "";
        if (cells % 2 == 0 && typical.CellV.Usual.Holds(cellV * 2))
        {
            guess = $" Are half cells counted? A half-cut panel of {cells} half cells counts {cells / 2}.";
        }
        else if (cellV < typical.CellV.Usual.Low)
        {
            guess = " Count the cells in series only.";
        }
        else if (label.Technology is null && cellV <= HighestCellV)
        {
            guess = " If the panel is thin film, say so with technology.";
        }

        string message = $"voc {Figure(vocV)} V over {cells} cells is {Ratio(cellV)} V a cell; {typical.Name} cells have {Ratio(typical.CellV.Usual.Low)} to {Ratio(typical.CellV.Usual.High)} V.{guess}";
        if (typical.CellV.Possible.Holds(cellV))
        {
            doubts.Question("cells", message);
        }
        else
        {
            doubts.Refuse("cells", message);
        }
    }

    private static void CheckFuse(PanelLabel label, LabelDoubts doubts)
    {
        if (label.MaxSeriesFuseA is not { } fuseA)
        {
            return;
        }

        if (label.ShortCircuitA is { } iscA && fuseA < iscA)
        {
            doubts.Refuse("max_series_fuse", $"max_series_fuse {Figure(fuseA)} A is below isc {Figure(iscA)} A; such a fuse would blow on the panel's own current.");
        }
        else if (label.ShortCircuitA is { } shortA && fuseA < 1.25 * shortA)
        {
            doubts.Question("max_series_fuse", $"max_series_fuse {Figure(fuseA)} A is below 1.25 × isc = {Computed(1.25 * shortA)} A; labels allow at least that.");
        }
        else if (fuseA > LargestFuseA)
        {
            doubts.Question("max_series_fuse", $"max_series_fuse is {Figure(fuseA)} A; labels say 10 to 35 A. Is a decimal point lost?");
        }
    }

    private static void CheckSystemVoltage(PanelLabel label, LabelDoubts doubts)
    {
        if (label.MaxSystemVoltageV is not { } systemV)
        {
            return;
        }

        if (label.OpenCircuitV is { } vocV && systemV < vocV)
        {
            doubts.Refuse("max_system_voltage", $"max_system_voltage {Figure(systemV)} V is below voc {Figure(vocV)} V; one panel alone would break it.");
        }
        else if (systemV > HighestSystemV)
        {
            doubts.Question("max_system_voltage", $"max_system_voltage is {Figure(systemV)} V; labels say at most 1500 V. Is a decimal point lost?");
        }
    }
}
