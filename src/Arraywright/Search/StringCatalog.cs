using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>One position of a string: a panel, or panels side by side.</summary>
/// <param name="Kinds">Kinds of its panels, ascending, one entry a panel.</param>
/// <param name="Part">The part of the pile it takes.</param>
/// <param name="ColdLabelV">Its cold voltage by label, V: the highest of its panels.</param>
/// <param name="ColdModelV">Its cold voltage by model, V: the highest of its panels.</param>
/// <param name="MaxSystemV">Lowest system voltage its panels allow, V.</param>
/// <param name="IscA">Label short-circuit current, summed, A.</param>
/// <param name="ImpA">Label current at maximum power, summed, A.</param>
/// <param name="Wiring">It as a wiring.</param>
internal sealed record Block(int[] Kinds, int Part, double ColdLabelV, double ColdModelV, double MaxSystemV, double IscA, double ImpA, Wiring Wiring);

/// <summary>A row of blocks in series: a string, or the beginning of longer ones.</summary>
/// <param name="Parent">Index of the same row without its last block; −1 for none.</param>
/// <param name="LastBlock">Index of its last block.</param>
/// <param name="Blocks">How many blocks.</param>
/// <param name="Part">The part of the pile it takes.</param>
/// <param name="ColdV">Its cold voltage, the higher of label and model, V.</param>
/// <param name="ColdLabelV">By label, V.</param>
/// <param name="ColdModelV">By model, V.</param>
/// <param name="MaxSystemV">Lowest system voltage its panels allow, V.</param>
/// <param name="IscA">Largest label short-circuit current of its blocks, A.</param>
/// <param name="ImpA">Smallest label current at maximum power of its blocks, A.</param>
/// <param name="IsString">False for a lone block of several panels: that is several strings, not one.</param>
internal readonly record struct Row(
    int Parent,
    int LastBlock,
    int Blocks,
    int Part,
    double ColdV,
    double ColdLabelV,
    double ColdModelV,
    double MaxSystemV,
    double IscA,
    double ImpA,
    bool IsString);

/// <summary>Every string that the pile can make and at least one input's voltage allows, each once.</summary>
/// <remarks>Rows are in depth-first order: a row follows its parent, so a stack of partial sums serves them all. Within a row, block numbers never fall: no order is counted twice.</remarks>
internal sealed class StringCatalog
{
    /// <summary>Asking what may stand beside a string, in nodes: measured.</summary>
    private const int NodesPerQuestion = 10;

    private readonly SearchProblem _problem;
    private readonly double _highestV;
    private readonly int _limit;
    private readonly List<Row> _rows = [];
    private readonly Effort _effort;
    private readonly double[] _besideA;

    /// <summary>Lists the strings.</summary>
    /// <param name="problem">Pile and inputs.</param>
    /// <param name="pile">The pile, numbered.</param>
    /// <param name="limit">Rows at most; <see cref="Complete"/> says whether that was enough.</param>
    /// <param name="effort">Counts the work.</param>
    public StringCatalog(SearchProblem problem, Pile pile, int limit, Effort effort)
    {
        _effort = effort;
        _problem = problem;
        _limit = limit;
        _highestV = Rounded.Most(problem.Inputs.Max(input => input.MaxVoltageV));
        Pile = pile;
        Blocks = [.. BlocksOf(problem.Family)];
        Extend(-1, new Row(-1, 0, 0, 0, 0, 0, 0, double.PositiveInfinity, 0, double.PositiveInfinity, IsString: false));
        _besideA = new double[_rows.Count];
        Array.Fill(_besideA, double.NaN);
    }

    /// <summary>The pile.</summary>
    public Pile Pile { get; }

    /// <summary>What a position may be.</summary>
    public Block[] Blocks { get; }

    /// <summary>The rows.</summary>
    public IReadOnlyList<Row> Rows => _rows;

    /// <summary>Whether all are listed.</summary>
    public bool Complete { get; private set; } = true;

    /// <summary>Most label short-circuit amps that may stand beside a string, A; negative where it may not be connected. Asked once a string.</summary>
    public double BesideA(int row) => double.IsNaN(_besideA[row]) ? _besideA[row] = Beside(row) : _besideA[row];

    /// <summary>The string as a wiring.</summary>
    public Wiring WiringOf(int row)
    {
        var positions = new Wiring[_rows[row].Blocks];
        for ((int at, int i) = (row, positions.Length); at >= 0; at = _rows[at].Parent)
        {
            positions[--i] = Blocks[_rows[at].LastBlock].Wiring;
        }

        return Wiring.InSeries(positions);
    }

    private double Beside(int row)
    {
        double most = double.PositiveInfinity;
        for (int at = row; at >= 0; at = _rows[at].Parent)
        {
            foreach (int kind in Blocks[_rows[at].LastBlock].Kinds)
            {
                most = Math.Min(most, _problem.Stocks[kind].MaxBesideA);
            }
        }

        if (_problem.MaxBesideA is { } asked)
        {
            _effort.SpendOrGiveUp(NodesPerQuestion);
            most = Math.Min(most, asked(WiringOf(row)));
        }

        return most;
    }

    private IEnumerable<Block> BlocksOf(WiringFamily family)
    {
        int largest = family == WiringFamily.Strings ? 1 : Math.Max(1, Pile.Panels[Pile.Whole] - 1);
        for (int part = 1; part < Pile.States; part++)
        {
            if (Pile.Panels[part] <= largest && BlockOf(part) is { } block && Math.Max(block.ColdLabelV, block.ColdModelV) <= _highestV)
            {
                yield return block;
            }
        }
    }

    private Block BlockOf(int part)
    {
        int[] kinds = [.. Enumerable.Range(0, Pile.Counts.Length).SelectMany(kind => Enumerable.Repeat(kind, Pile.CountOf(part, kind)))];
        IEnumerable<SearchStock> panels = kinds.Select(kind => _problem.Stocks[kind]);
        return new Block(
            kinds,
            part,
            panels.Max(p => p.ColdLabelV),
            panels.Max(p => p.ColdModelV),
            panels.Min(p => p.MaxSystemV),
            panels.Sum(p => p.LabelIscA),
            panels.Sum(p => p.LabelImpA),
            Wiring.InParallel(panels.Select(Wiring (p) => new Wiring.Single(p.Name))));
    }

    private void Extend(int parent, Row row)
    {
        for (int b = row.LastBlock; b < Blocks.Length && Complete; b++)
        {
            Block block = Blocks[b];
            if (!Pile.Within(Pile.Packed[block.Part], Pile.Packed[Pile.Whole - row.Part]))
            {
                continue;
            }

            double labelV = row.ColdLabelV + block.ColdLabelV;
            double modelV = row.ColdModelV + block.ColdModelV;
            double coldV = Math.Max(labelV, modelV);
            double systemV = Math.Min(row.MaxSystemV, block.MaxSystemV);
            if (coldV > _highestV || coldV > Rounded.Most(systemV))
            {
                continue;
            }

            if (_rows.Count == _limit)
            {
                Complete = false;
                return;
            }

            bool isString = row.Blocks > 0 || block.Kinds.Length == 1;
            var longer = new Row(
                parent,
                b,
                row.Blocks + 1,
                row.Part + block.Part,
                coldV,
                labelV,
                modelV,
                systemV,
                Math.Max(row.IscA, block.IscA),
                Math.Min(row.ImpA, block.ImpA),
                isString);
            _rows.Add(longer);
            Extend(_rows.Count - 1, longer);
        }
    }
}
