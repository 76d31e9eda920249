namespace Arraywright.Search;

/// <summary>What each part of the pile can be worth on each input, and what the best sharing-out can be worth in all.</summary>
internal sealed class PartBounds
{
    private readonly Pile _pile;
    private readonly double[] _shares;
    private readonly Effort _effort;

    /// <summary>Computes the bounds.</summary>
    /// <param name="problem">Inputs, units, weights.</param>
    /// <param name="pile">The pile.</param>
    /// <param name="covers">Cover table of each input; alike inputs share one.</param>
    /// <param name="effort">Counts the work.</param>
    public PartBounds(SearchProblem problem, Pile pile, CoverTable[] covers, Effort effort)
    {
        _pile = pile;
        _effort = effort;
        Problem = problem;
        Covers = covers;
        double sum = problem.Weights.Sum();
        _shares = [.. problem.Weights.Select(weight => weight / sum)];
        PartW = new float[covers.Length][];
        TotalW = new double[covers.Length][];
        for (int input = 0; input < covers.Length; input++)
        {
            int twin = Array.IndexOf(covers, covers[input]);
            bool alike = twin < input && problem.Inputs[twin].Unit == problem.Inputs[input].Unit;
            (PartW[input], TotalW[input]) = alike ? (PartW[twin], TotalW[twin]) : Bound(problem, input);
        }

        TailW = Tails();
    }

    /// <summary>The problem.</summary>
    public SearchProblem Problem { get; }

    /// <summary>Cover table of each input.</summary>
    public CoverTable[] Covers { get; }

    /// <summary>Share of each moment in the weighted mean.</summary>
    public ReadOnlySpan<double> Shares => _shares;

    /// <summary>Bound of each part in each moment, an array an input: part times lanes plus moment, W.</summary>
    public float[][] PartW { get; }

    /// <summary>Weighted mean of the same; −1 where the part cannot go whole on that input.</summary>
    public double[][] TotalW { get; }

    /// <summary>Bound on what inputs from one on can make of a part, some of it left out; index input then part.</summary>
    public double[][] TailW { get; }

    /// <summary>No sharing-out is worth more, W.</summary>
    public double HighestW => TailW[0][_pile.Whole];

    /// <summary>What a unit takes at most; infinite for an input by itself.</summary>
    public double UnitMaxW(int input) => UnitMaxW(Problem, input);

    /// <summary>Whether the label watts of an input's part and of those of the inputs before it are within what their unit may have connected.</summary>
    public bool FitsUnit(ReadOnlySpan<int> parts, int input)
    {
        int unit = Problem.Inputs[input].Unit;
        if (unit < 0 || Problem.UnitMaxLabelPowerW.IsEmpty)
        {
            return true;
        }

        double sum = 0;
        for (int other = 0; other <= input; other++)
        {
            sum += Problem.Inputs[other].Unit == unit ? LabelPowerW(parts[other]) : 0;
        }

        return Rounded.Within(sum, Problem.UnitMaxLabelPowerW[unit]);
    }

    /// <summary>Bound on the worth of a sharing-out, one part an input, W.</summary>
    public double Of(ReadOnlySpan<int> parts)
    {
        Span<double> unitW = stackalloc double[Problem.UnitMaxW.Length];
        double sum = 0;
        for (int moment = 0; moment < _shares.Length; moment++)
        {
            unitW.Clear();
            double powerW = 0;
            for (int input = 0; input < parts.Length; input++)
            {
                double hereW = PartW[input][(parts[input] * Covers[input].Cells.Lanes) + moment];
                if (Problem.Inputs[input].Unit is >= 0 and int unit)
                {
                    unitW[unit] += hereW;
                }
                else
                {
                    powerW += hereW;
                }
            }

            for (int unit = 0; unit < unitW.Length; unit++)
            {
                powerW += Math.Min(unitW[unit], Problem.UnitMaxW[unit]);
            }

            sum += _shares[moment] * powerW;
        }

        return sum;
    }

    /// <summary>Marks the cells that a wiring worth more than a floor may work in; the others cannot matter.</summary>
    /// <returns>An array of flags, one a column, for each input.</returns>
    public bool[][] CellsAbove(double floorW)
    {
        double[][] best = [.. TotalW.Select(BestWithin)];
        bool[][] keep = [.. Covers.Select(cover => new bool[cover.Cells.Columns])];
        for (int input = 0; input < Covers.Length; input++)
        {
            bool[] marks = keep[Array.IndexOf(Covers, Covers[input])];
            keep[input] = marks;
            float[] othersW = OthersW(input);
            for (int part = 0; part < _pile.States; part++)
            {
                _effort.SpendOrGiveUp(1);
                double total = TotalW[input][part];
                for (int other = 0; other < Covers.Length && total >= 0; other++)
                {
                    total += other == input ? 0 : best[other][_pile.Whole - part];
                }

                if (total > floorW)
                {
                    MarkCells(input, part, total - floorW, othersW, marks);
                }
            }
        }

        return keep;
    }

    private static double UnitMaxW(SearchProblem problem, int input) =>
        problem.Inputs[input].Unit is >= 0 and int unit ? problem.UnitMaxW[unit] : double.PositiveInfinity;

    private (float[] PartW, double[] TotalW) Bound(SearchProblem problem, int input)
    {
        VoltageCells cells = Covers[input].Cells;
        float[] none = new float[cells.Columns];
        float[] partW = new float[_pile.States * cells.Lanes];
        double[] totalW = new double[_pile.States];
        double unitW = UnitMaxW(problem, input);
        for (int part = 1; part < _pile.States; part++)
        {
            _effort.SpendOrGiveUp(1);
            totalW[part] = -1;
            if (Covers[input].Amps.Possible[part] && Rounded.Within(LabelPowerW(part), problem.Inputs[input].MaxLabelPowerW))
            {
                Span<float> boundW = partW.AsSpan(part * cells.Lanes, cells.Lanes);
                cells.Worth(Covers[input].Of(part), none, none, boundW);
                totalW[part] = 0;
                for (int moment = 0; moment < _shares.Length; moment++)
                {
                    totalW[part] += _shares[moment] * Math.Min(boundW[moment], unitW);
                }
            }
        }

        return (partW, totalW);
    }

    /// <summary>Label watts of a part.</summary>
    private double LabelPowerW(int part)
    {
        double sum = 0;
        for (int kind = 0; kind < _pile.Counts.Length; kind++)
        {
            sum += _pile.CountOf(part, kind) * Problem.Stocks[kind].LabelPowerW;
        }

        return sum;
    }

    /// <summary>The best of all parts within each part.</summary>
    private double[] BestWithin(double[] totalW)
    {
        double[] best = [.. totalW];
        for (int part = 1; part < best.Length; part++)
        {
            for (int kind = _pile.Lowest[part]; kind < _pile.Counts.Length; kind++)
            {
                if (_pile.CountOf(part, kind) > 0)
                {
                    best[part] = Math.Max(best[part], best[part - _pile.Strides[kind]]);
                }
            }
        }

        return best;
    }

    private double[][] Tails()
    {
        double[][] tails = new double[Covers.Length][];
        Span<int> scratch = new int[2 * _pile.Counts.Length];
        for (int input = Covers.Length - 1; input >= 0; input--)
        {
            if (input == Covers.Length - 1)
            {
                tails[input] = BestWithin(TotalW[input]);
                continue;
            }

            tails[input] = new double[_pile.States];
            for (int part = input == 0 ? _pile.Whole : 0; part < _pile.States; part++)
            {
                _effort.SpendOrGiveUp(_pile.PartsIn(part) / WiringCount.StepsPerNode);
                var taken = new PartsWithin(_pile, part, scratch);
                do
                {
                    double here = TotalW[input][taken.Current];
                    tails[input][part] = here < 0 ? tails[input][part] : Math.Max(tails[input][part], here + tails[input + 1][part - taken.Current]);
                }
                while (taken.Next());
            }
        }

        return tails;
    }

    /// <summary>The most that the other inputs of the same unit can take in each moment, W.</summary>
    private float[] OthersW(int input)
    {
        int lanes = Covers[input].Cells.Lanes;
        float[] sum = new float[lanes];
        int unit = Problem.Inputs[input].Unit;
        for (int other = 0; other < Covers.Length; other++)
        {
            if (other != input && unit >= 0 && Problem.Inputs[other].Unit == unit)
            {
                for (int lane = 0; lane < lanes; lane++)
                {
                    float most = 0;
                    for (int at = lane; at < PartW[other].Length; at += lanes)
                    {
                        most = Math.Max(most, PartW[other][at]);
                    }

                    sum[lane] += most;
                }
            }
        }

        return sum;
    }

    private void MarkCells(int input, int part, double spareW, float[] othersW, bool[] marks)
    {
        VoltageCells cells = Covers[input].Cells;
        ReadOnlySpan<float> row = Covers[input].Of(part);
        double unitW = UnitMaxW(input);
        for (int column = 0; column < marks.Length; column++)
        {
            int moment = column % cells.Lanes;
            if (!marks[column] && moment < _shares.Length && column / cells.Lanes < cells.Of(moment).Length)
            {
                double bestW = PartW[input][(part * cells.Lanes) + moment] + othersW[moment];
                double aloneW = cells.WorthAt(column, row[column]);
                double hereW = aloneW + othersW[moment];
                marks[column] = aloneW > 0 && _shares[moment] * (Math.Min(bestW, unitW) - Math.Min(hereW, unitW)) < spareW;
            }
        }
    }
}
