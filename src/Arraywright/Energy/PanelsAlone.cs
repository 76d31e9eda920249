using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Energy;

/// <summary>What the panels of a plan give each by itself, and what the inputs could take of it: no wiring brings more.</summary>
/// <remarks>
/// Power is conserved, so what reaches an input is the sum of what the panels give less what copper and contacts burn, and no panel gives more than at its
/// summit. <see cref="EnergyRun"/> takes a step at its mean or as its bright and its clouded part, as the wiring has it: here the higher of the two counts.
/// </remarks>
internal sealed class PanelsAlone
{
    private readonly InputWindow[] _windows;
    private readonly double[] _mostInputV;
    private readonly Owner[] _owners;
    private readonly int[] _pile;
    private readonly double _stepH;
    private readonly int _steps;
    private readonly double[][] _wholeW;

    /// <summary>The most of a string's voltage in each step, as a share of what its panels' cold voltages sum to.</summary>
    private readonly double[] _openShare;
    private readonly Spread[] _spreads;

    /// <param name="physics">The plan's panels.</param>
    /// <param name="series">The sun.</param>
    /// <param name="coldV">Cold voltage by the model of one panel of each kind, V: those of a string sum to no more than its input bears.</param>
    /// <param name="options">How the energy run is done that this bounds.</param>
    public PanelsAlone(PlanPhysics physics, SunSeries series, ReadOnlySpan<double> coldV, EnergyOptions options)
    {
        _windows = [.. physics.Plan.Inputs.Select(planned => PlanPhysics.Window(planned.Input))];
        _mostInputV = [.. physics.Plan.Inputs.Select(planned => planned.Input.MaxVoltageV)];
        _owners = Owner.Of(physics.Plan);
        _pile = [.. physics.Plan.Panels.Select(stock => stock.Count)];
        _stepH = series.StepH;
        _steps = series.Count;
        _openShare = new double[_steps];
        _wholeW = Table();
        bool isSpread = options.SpreadWithinStep && series.AveragedOverH > WithinStep.ShortestH && _windows.Any(window => double.IsFinite(window.MaxA) || double.IsFinite(window.MaxW));
        _spreads = isSpread ? [.. Suns(series.Stocks).Select(sun => new Spread(sun, new double[_steps], Table(), Table()))] : [];
        Fill(physics, series, coldV);
    }

    /// <summary>Energy that no wiring of the pile brings more of into the inputs, kWh.</summary>
    public double MostKWh()
    {
        if (_windows.Length == 1)
        {
            return MostKWh([_pile]);
        }

        double sumWh = 0;
        for (int step = 0; step < _steps; step++)
        {
            double panelsW = 0;
            for (int stock = 0; stock < _pile.Length; stock++)
            {
                panelsW += _pile[stock] * MostW(stock, step);
            }

            double inputsW = 0;
            foreach (Owner owner in _owners)
            {
                double ownerW = 0;
                foreach (int input in owner.Inputs)
                {
                    ownerW += CapW(input, step);
                }

                inputsW += Math.Min(ownerW, owner.MaxW);
            }

            sumWh += Math.Min(panelsW, inputsW) * _stepH;
        }

        return sumWh / 1000;
    }

    /// <summary>Energy that no wiring of given panels brings more of, kWh.</summary>
    /// <param name="counts">For each input, how many of each kind are on it.</param>
    public double MostKWh(int[][] counts)
    {
        double sumWh = 0;
        for (int step = 0; step < _steps; step++)
        {
            foreach (Owner owner in _owners)
            {
                double ownerW = 0;
                foreach (int input in owner.Inputs)
                {
                    ownerW += InputW(counts[input], CapW(input, step), step);
                }

                sumWh += Math.Min(ownerW, owner.MaxW) * _stepH;
            }
        }

        return sumWh / 1000;
    }

    private double[][] Table() => [.. _pile.Select(_ => new double[_steps])];

    /// <summary>Kinds that may say how long a step is bright: the first of each sun.</summary>
    private static IEnumerable<int> Suns(ImmutableArray<StockSun> stocks) => Enumerable.Range(0, stocks.Length).Where(stock => !stocks.Take(stock).Any(earlier =>
        earlier.UsefulWPerM2.AsSpan().SequenceEqual(stocks[stock].UsefulWPerM2) && earlier.ClearWPerM2.AsSpan().SequenceEqual(stocks[stock].ClearWPerM2)));

    private void Fill(PlanPhysics physics, SunSeries series, ReadOnlySpan<double> coldV)
    {
        var whole = new PanelSummits(physics);
        (PanelSummits Bright, PanelSummits Clouded)[] parts = [.. _spreads.Select(_ => (new PanelSummits(physics), new PanelSummits(physics)))];
        double[] openV = new double[_pile.Length];
        for (int step = 0; step < _steps; step++)
        {
            Solve(whole, step, 1, _wholeW, coldV);
            for (int i = 0; i < _spreads.Length; i++)
            {
                StockSun sun = series.Stocks[_spreads[i].Sun];
                if (WithinStep.Of(sun.UsefulWPerM2[step], sun.ClearWPerM2[step]) is { } part)
                {
                    _spreads[i].BrightShare[step] = part.BrightShare;
                    Solve(parts[i].Bright, step, part.Bright, _spreads[i].BrightW, coldV);
                    Solve(parts[i].Clouded, step, part.Clouded, _spreads[i].CloudedW, coldV);
                }
            }
        }

        void Solve(PanelSummits summits, int step, double brightness, double[][] powerW, ReadOnlySpan<double> coldV)
        {
            summits.Solve(series.Stocks, step, brightness);
            for (int stock = 0; stock < _pile.Length; stock++)
            {
                powerW[stock][step] = summits.PowerW(stock);
                _openShare[step] = Math.Max(_openShare[step], summits.MostOpenV(stock) / coldV[stock]);
            }
        }
    }

    /// <summary>What an input takes at most, whatever hangs on it, W.</summary>
    private double CapW(int input, int step) =>
        Math.Min(_windows[input].MaxW, _windows[input].MaxA * _mostInputV[input] * _openShare[step] * (1 + Slack));

    private double InputW(int[] counts, double capW, int step)
    {
        double mostW = Math.Min(Sum(_wholeW, counts, step), capW);
        foreach (Spread spread in _spreads)
        {
            double share = spread.BrightShare[step];
            mostW = share > 0
                ? Math.Max(mostW, (share * Math.Min(Sum(spread.BrightW, counts, step), capW)) + ((1 - share) * Math.Min(Sum(spread.CloudedW, counts, step), capW)))
                : mostW;
        }

        return mostW;
    }

    /// <summary>What one panel gives at most over a step, W.</summary>
    private double MostW(int stock, int step)
    {
        double mostW = _wholeW[stock][step];
        foreach (Spread spread in _spreads)
        {
            double share = spread.BrightShare[step];
            mostW = share > 0 ? Math.Max(mostW, (share * spread.BrightW[stock][step]) + ((1 - share) * spread.CloudedW[stock][step])) : mostW;
        }

        return mostW;
    }

    private static double Sum(double[][] powerW, int[] counts, int step)
    {
        double sum = 0;
        for (int stock = 0; stock < counts.Length; stock++)
        {
            sum += counts[stock] * powerW[stock][step];
        }

        return sum;
    }

    /// <summary>Covers what rules forgive in a sum of volts, as a share.</summary>
    private const double Slack = 1e-8;

    /// <summary>The bright and the clouded part of every step as one kind's sun has it, with the watts of every kind in them; a share of 0 where a step is of one kind.</summary>
    private sealed record Spread(int Sun, double[] BrightShare, double[][] BrightW, double[][] CloudedW);
}
