using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Energy;

/// <summary>What the panels of a plan, or strings of them, give each by itself, and what the inputs could take of it: no wiring brings more.</summary>
/// <remarks>
/// Power is conserved, so what reaches an input is the sum of what its panels give less what copper and contacts burn, and no panel gives more than at its
/// summit; nor does a string. <see cref="EnergyRun"/> takes a step at its mean or as its bright and its clouded part, as the wiring has it: here the higher of
/// the two counts. See docs/models-search.md.
/// </remarks>
internal sealed class PanelsAlone
{
    /// <summary>Covers what the rules forgive in a sum of volts and what the solver leaves at a summit, as a share.</summary>
    private const double Slack = 1e-8;

    private readonly PlanPhysics _physics;
    private readonly SunSeries _series;
    private readonly InputWindow[] _windows;
    private readonly Owner[] _owners;
    private readonly PowerAlone[] _panels;

    /// <summary>Kinds whose sun may say which part of a step is bright, one for each sun.</summary>
    private readonly int[] _suns;

    /// <summary>The share of each step that is bright by each sun; 0 where a step is of one kind.</summary>
    private readonly double[][] _brightShare;

    /// <summary>The most of a string's voltage in each step, as a share of what its panels' cold voltages sum to.</summary>
    private readonly double[] _openShare;

    /// <param name="physics">The plan's panels.</param>
    /// <param name="series">The sun.</param>
    /// <param name="coldV">Cold voltage by the model of one panel of each kind, V: those of a string sum to no more than its input bears.</param>
    /// <param name="options">How the energy run is done that this bounds.</param>
    public PanelsAlone(PlanPhysics physics, SunSeries series, ReadOnlySpan<double> coldV, EnergyOptions options)
    {
        (_physics, _series) = (physics, series);
        _windows = [.. physics.Plan.Inputs.Select(planned => PlanPhysics.Window(planned.Input))];
        _owners = Owner.Of(physics.Plan);
        bool isSpread = options.SpreadWithinStep && series.AveragedOverH > WithinStep.ShortestH && _windows.Any(window => double.IsFinite(window.MaxA) || double.IsFinite(window.MaxW));
        _suns = isSpread ? [.. Suns(series.Stocks)] : [];
        _brightShare = [.. _suns.Select(_ => new double[series.Count])];
        _openShare = new double[series.Count];
        _panels = [.. physics.Plan.Panels.Select(_ => PowerAlone.Dark(series.Count, _suns.Length))];
        Fill(coldV);
    }

    /// <summary>Energy that no wiring of the pile brings more of into the inputs, kWh.</summary>
    public double MostKWh()
    {
        ImmutableArray<PanelStock> stocks = _physics.Plan.Panels;
        if (_windows.Length == 1)
        {
            return MostKWh([[.. stocks.Select((stock, index) => ((double)stock.Count, _panels[index]))]]);
        }

        double sumWh = 0;
        for (int step = 0; step < _series.Count; step++)
        {
            double panelsW = 0;
            for (int stock = 0; stock < stocks.Length; stock++)
            {
                panelsW += stocks[stock].Count * MostW([(1, _panels[stock])], double.PositiveInfinity, step);
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

            sumWh += Math.Min(panelsW, inputsW) * _series.StepH;
        }

        return sumWh / 1000;
    }

    /// <summary>Energy that no wiring of given panels or strings brings more of, kWh.</summary>
    /// <param name="inputs">For each input, what is on it, and how many of each.</param>
    public double MostKWh((double Count, PowerAlone Power)[][] inputs)
    {
        double sumWh = 0;
        for (int step = 0; step < _series.Count; step++)
        {
            foreach (Owner owner in _owners)
            {
                double ownerW = 0;
                foreach (int input in owner.Inputs)
                {
                    ownerW += MostW(inputs[input], CapW(input, step), step);
                }

                sumWh += Math.Min(ownerW, owner.MaxW) * _series.StepH;
            }
        }

        return sumWh / 1000;
    }

    /// <summary>Energy of one panel of a kind at its summit, held by nothing, kWh.</summary>
    public double PanelKWh(int stock)
    {
        double sumWh = 0;
        for (int step = 0; step < _series.Count; step++)
        {
            sumWh += MostW([(1, _panels[stock])], double.PositiveInfinity, step) * _series.StepH;
        }

        return sumWh / 1000;
    }

    /// <summary>One panel of a kind.</summary>
    public PowerAlone Panel(int stock) => _panels[stock];

    /// <summary>What a string gives by itself at the input, through its own copper and the run.</summary>
    public PowerAlone String(Wiring part)
    {
        PowerAlone power = PowerAlone.Dark(_series.Count, _suns.Length);
        var array = new MovingArray(_physics, part, OpenInput, hasLadder: false);
        double[] levelsW = new double[Enum.GetValues<Stage>().Length];
        for (int step = 0; step < _series.Count; step++)
        {
            power.WholeW[step] = SummitW(step, StepPart.Whole, 1);
            for (int sun = 0; sun < _suns.Length; sun++)
            {
                if (PartsBy(sun, step) is { } parts)
                {
                    power.BrightW[sun][step] = SummitW(step, StepPart.Bright, parts.Bright);
                    power.CloudedW[sun][step] = SummitW(step, StepPart.Clouded, parts.Clouded);
                }
            }
        }

        return power;

        double SummitW(int step, StepPart part, double brightness)
        {
            array.Levels(_series.Stocks, step, part, brightness, levelsW);
            return array.Top.PowerW * (1 + Slack);
        }
    }

    private static DcInput OpenInput { get; } = new() { Name = "open", MaxVoltageV = double.MaxValue };

    private static IEnumerable<int> Suns(ImmutableArray<StockSun> stocks) => Enumerable.Range(0, stocks.Length).Where(stock => !stocks.Take(stock).Any(earlier =>
        earlier.UsefulWPerM2.AsSpan().SequenceEqual(stocks[stock].UsefulWPerM2) && earlier.ClearWPerM2.AsSpan().SequenceEqual(stocks[stock].ClearWPerM2)));

    private void Fill(ReadOnlySpan<double> coldV)
    {
        var whole = new PanelSummits(_physics);
        (PanelSummits Bright, PanelSummits Clouded)[] parts = [.. _suns.Select(_ => (new PanelSummits(_physics), new PanelSummits(_physics)))];
        for (int step = 0; step < _series.Count; step++)
        {
            Solve(whole, step, 1, coldV);
            for (int stock = 0; stock < _panels.Length; stock++)
            {
                _panels[stock].WholeW[step] = whole.PowerW(stock);
            }

            for (int sun = 0; sun < _suns.Length; sun++)
            {
                if (PartsBy(sun, step) is { } part)
                {
                    _brightShare[sun][step] = part.BrightShare;
                    Solve(parts[sun].Bright, step, part.Bright, coldV);
                    Solve(parts[sun].Clouded, step, part.Clouded, coldV);
                    for (int stock = 0; stock < _panels.Length; stock++)
                    {
                        _panels[stock].BrightW[sun][step] = parts[sun].Bright.PowerW(stock);
                        _panels[stock].CloudedW[sun][step] = parts[sun].Clouded.PowerW(stock);
                    }
                }
            }
        }
    }

    private void Solve(PanelSummits summits, int step, double brightness, ReadOnlySpan<double> coldV)
    {
        summits.Solve(_series.Stocks, step, brightness);
        for (int stock = 0; stock < _panels.Length; stock++)
        {
            _openShare[step] = Math.Max(_openShare[step], summits.MostOpenV(stock) / coldV[stock]);
        }
    }

    private (double BrightShare, double Bright, double Clouded)? PartsBy(int sun, int step)
    {
        StockSun seen = _series.Stocks[_suns[sun]];
        return WithinStep.Of(seen.UsefulWPerM2[step], seen.ClearWPerM2[step]);
    }

    /// <summary>What an input takes at most, whatever hangs on it, W: its watts, and its amps at the highest voltage a string can have.</summary>
    private double CapW(int input, int step)
    {
        InputWindow window = _windows[input];
        return double.IsFinite(window.MaxA)
            ? Math.Min(window.MaxW, window.MaxA * _physics.Plan.Inputs[input].Input.MaxVoltageV * _openShare[step] * (1 + Slack))
            : window.MaxW;
    }

    private double MostW((double Count, PowerAlone Power)[] sources, double capW, int step)
    {
        double wholeW = 0;
        foreach ((double count, PowerAlone power) in sources)
        {
            wholeW += count * power.WholeW[step];
        }

        double mostW = Math.Min(wholeW, capW);
        for (int sun = 0; sun < _suns.Length; sun++)
        {
            double share = _brightShare[sun][step];
            if (share > 0)
            {
                double brightW = 0;
                double cloudedW = 0;
                foreach ((double count, PowerAlone power) in sources)
                {
                    brightW += count * power.BrightW[sun][step];
                    cloudedW += count * power.CloudedW[sun][step];
                }

                mostW = Math.Max(mostW, (share * Math.Min(brightW, capW)) + ((1 - share) * Math.Min(cloudedW, capW)));
            }
        }

        return mostW;
    }
}
