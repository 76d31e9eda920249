using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Energy;

/// <summary>What one panel of each kind gives at most, every group of its cells at its own summit, through changing conditions.</summary>
internal sealed class PanelSummits
{
    /// <summary>Covers what Newton's method leaves at a summit, as a share.</summary>
    private const double Slack = 1e-9;

    private readonly PanelModel[] _models;
    private readonly Cells[] _cells;
    private readonly PanelTops _tops;
    private readonly double[] _powerW;
    private readonly double[] _openV;

    /// <summary>Makes room for the panels of a plan.</summary>
    public PanelSummits(PlanPhysics physics)
    {
        _models = [.. physics.Plan.Panels.Select(stock => physics.Model(stock.Panel.Name))];
        _cells = [.. physics.Plan.Panels.SelectMany((stock, index) => CellsOf(stock.Shade, _models[index], index))];
        _tops = new PanelTops(_cells.Length);
        _powerW = new double[_models.Length];
        _openV = new double[_models.Length];
    }

    /// <summary>Most that one panel of a kind gives under the conditions last solved, W.</summary>
    public double PowerW(int stock) => _powerW[stock];

    /// <summary>A voltage that one panel of a kind does not pass under them, V.</summary>
    public double MostOpenV(int stock) => _openV[stock];

    /// <summary>Finds the summits under the conditions of a step.</summary>
    /// <param name="suns">One entry a kind of panel.</param>
    /// <param name="step">The step.</param>
    /// <param name="brightness">Factor on the irradiance.</param>
    public void Solve(ImmutableArray<StockSun> suns, int step, double brightness)
    {
        for (int i = 0; i < _cells.Length; i++)
        {
            StockSun sun = suns[_cells[i].Stock];
            double litWPerM2 = sun.UsefulWPerM2[step] * brightness * (1 - sun.ShadedFraction[step]) * _cells[i].LitFraction;
            _tops.Set(i, _models[_cells[i].Stock].At(new Conditions(litWPerM2, sun.CellC[step])));
        }

        _tops.Solve();
        Array.Clear(_powerW);
        Array.Clear(_openV);
        for (int i = 0; i < _cells.Length; i++)
        {
            Cells cells = _cells[i];
            _powerW[cells.Stock] += cells.PanelShare * _tops.PowerW(i) * (1 + Slack);
            _openV[cells.Stock] = Math.Max(_openV[cells.Stock], _tops.MostOpenV(i));
        }
    }

    /// <summary>Cells of a panel in equal light, as <see cref="PanelModel.FillGroups"/> shades them: by themselves they give no less than behind their bypass diode.</summary>
    private static IEnumerable<Cells> CellsOf(Shade shade, PanelModel model, int stock)
    {
        double litFraction = 1 - shade.Fraction;
        return model.Panel.BypassDiodes.Value < 1
            ? [new Cells(stock, litFraction * (1 - shade.GroupFractions.DefaultIfEmpty(0).Max()), 1)]
            : Enumerable.Range(0, model.Groups)
                .GroupBy(group => group < shade.GroupFractions.Length ? shade.GroupFractions[group] : 0)
                .Select(equal => new Cells(stock, litFraction * (1 - equal.Key), (double)equal.Count() / model.Groups));
    }

    private readonly record struct Cells(int Stock, double LitFraction, double PanelShare);
}
