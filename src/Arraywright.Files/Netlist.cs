using System.Globalization;
using System.Text;
using Arraywright.Electrical;

namespace Arraywright.Files;

/// <summary>Writes a circuit as a netlist of the SPICE family, so that anyone can check it with another program.</summary>
/// <remarks>
/// The array is <c>.subckt array plus minus</c>; then follows a runnable sweep. The delivered current is <c>i(Vmeter)</c>, positive into the source.
/// A diode's ideality is written for a simulator that runs at its default 27 °C and takes Boltzmann's constant and the elementary charge
/// after CODATA 2014; the other CODATA sets move currents near open circuit by under 1e-5.
/// </remarks>
public sealed class Netlist
{
    /// <summary>Steps of a sweep that draws a smooth curve.</summary>
    public const int UsualSteps = 500;

    /// <summary>k·T/q at 27 °C with k and q of CODATA 2014, V.</summary>
    private const double ThermalV = 1.38064852e-23 * 300.15 / 1.6021766208e-19;

    private readonly StringBuilder _elements = new();
    private readonly Dictionary<(double SaturationA, double IdealityV), string> _models = [];
    private int _nodes;
    private int _parts;

    private Netlist()
    {
    }

    /// <summary>The netlist of a circuit with a sweep from 0 V to its open-circuit voltage.</summary>
    /// <param name="title">First line, shown by the simulator; line ends in it become spaces.</param>
    /// <param name="tree">The circuit.</param>
    /// <param name="openCircuitV">Where the sweep ends, V; at or below 0 (in the dark) it ends at 1 V.</param>
    /// <param name="steps">Steps of the sweep, at least 1.</param>
    public static string Write(string title, CircuitTree tree, double openCircuitV, int steps)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(steps, 1);
        Netlist netlist = new();
        netlist.Add(tree, "plus", "minus");
        double endV = openCircuitV > 0 ? openCircuitV : 1;
        StringBuilder text = new();
        text.Append("* ").Append(title.ReplaceLineEndings(" ")).Append('\n');
        text.Append("* Delivered current: i(Vmeter), into the positive node of the source.\n");
        text.Append(".subckt array plus minus\n");
        text.Append(netlist._elements);
        foreach (((double saturationA, double idealityV), string name) in netlist._models)
        {
            text.Append($".model {name} d(is={Number(saturationA)} n={Number(idealityV / ThermalV)})\n");
        }

        text.Append(".ends array\n\n");
        text.Append("Xarray plus 0 array\n");
        text.Append("Vmeter plus 0 dc 0\n");
        text.Append(".options reltol=1e-7 abstol=1e-12 vntol=1e-9\n");
        text.Append(".options itl1=1000 itl2=1000\n");
        text.Append($".dc Vmeter 0 {Number(endV)} {Number(endV / steps)}\n");
        text.Append(".print dc i(Vmeter)\n");
        text.Append(".end\n");
        return text.ToString();
    }

    private void Add(CircuitTree tree, string plus, string minus)
    {
        if (tree.WireOhm > 0)
        {
            string inner = NewNode();
            Element($"Rwire{++_parts} {plus} {inner} {Number(tree.WireOhm)}");
            plus = inner;
        }

        switch (tree)
        {
            case CircuitTree.Group group:
                AddGroup(group, plus, minus);
                break;
            case CircuitTree.Series series:
                for (int i = 0; i < series.Parts.Length; i++)
                {
                    string below = i == series.Parts.Length - 1 ? minus : NewNode();
                    Add(series.Parts[i], plus, below);
                    plus = below;
                }

                break;
            case CircuitTree.Parallel parallel:
                foreach (CircuitTree part in parallel.Parts)
                {
                    Add(part, plus, minus);
                }

                break;
            default:
                throw new InvalidOperationException("A circuit is a group, a series or a parallel.");
        }
    }

    private void AddGroup(CircuitTree.Group group, string plus, string minus)
    {
        int number = ++_parts;
        string junction = group.Cells.SeriesOhm > 0 ? NewNode() : plus;
        Element($"Ilight{number} {minus} {junction} dc {Number(group.Cells.LightCurrentA)}");
        Element($"Dcells{number} {junction} {minus} {Model(group.Cells.SaturationCurrentA, group.Cells.IdealityV)}");
        Element($"Rshunt{number} {junction} {minus} {Number(1 / group.Cells.ShuntSiemens)}");
        if (group.Cells.SeriesOhm > 0)
        {
            Element($"Rseries{number} {junction} {plus} {Number(group.Cells.SeriesOhm)}");
        }

        if (group.Bypass.SaturationCurrentA > 0)
        {
            Element($"Dbypass{number} {minus} {plus} {Model(group.Bypass.SaturationCurrentA, group.Bypass.IdealityV)}");
        }
    }

    private string Model(double saturationA, double idealityV)
    {
        if (!_models.TryGetValue((saturationA, idealityV), out string? name))
        {
            name = $"diode{_models.Count + 1}";
            _models.Add((saturationA, idealityV), name);
        }

        return name;
    }

    private void Element(string line) => _elements.Append(line).Append('\n');

    private string NewNode() => $"n{++_nodes}";

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
