using System.Collections.Immutable;
using Arraywright.Electrical.Solving;
using static Arraywright.Electrical.Solving.HillFinder;

namespace Arraywright.Electrical;

/// <summary>The circuit of an array under given conditions: its curve, its maxima, and what an input takes from it.</summary>
/// <remarks>
/// Solves to about 1e-11 of the currents involved. Allocates when built, and not when solving (but for lists that grow once).
/// Keeps the last solution as the next starting point, so one instance belongs to one thread.
/// </remarks>
public sealed class Circuit
{
    /// <summary>Where the maximum power point of crystalline silicon usually is, as a share of the open-circuit voltage (common practice); only a first guess.</summary>
    private const double UsualTopShare = 0.8;

    /// <summary>Voltages this close, as a share, are not solved twice: the current differs by about as much.</summary>
    private const double SameV = 1e-6;

    /// <summary>Open-circuit voltage at or under which there is no power worth the name, V.</summary>
    private const double Dark = 1e-6;

    private readonly Network _network;
    private readonly HillFinder _hills;
    private readonly MovingTop _movingTop;
    private readonly Standing _lastOpen;
    private readonly Snapshot _open;
    private readonly Standing _lastLimit;
    private readonly Snapshot _limit;
    private double _topShare = UsualTopShare;

    /// <summary>Makes the circuit of a tree.</summary>
    public Circuit(CircuitTree tree)
    {
        _network = new Network(tree);
        SlopeBounds bounds = new(_network);
        _hills = new HillFinder(_network, bounds);
        _movingTop = new MovingTop(_network, bounds, _hills);
        _lastOpen = new Standing(_network);
        _open = new Snapshot(_network.Leaves.Count);
        _lastLimit = new Standing(_network);
        _limit = new Snapshot(_network.Leaves.Count);
        FindOpenCircuit();
    }

    /// <summary>Terminal voltage with nothing connected, V; 0 in the dark. In parallel, the voltage at which the branches' currents cancel, not the highest branch.</summary>
    public double OpenCircuitV { get; private set; }

    /// <summary>Newton steps on the whole circuit since it was made, each of a cost linear in its groups.</summary>
    internal long NewtonSteps => _network.Steps;

    /// <summary>Gives every group of cells other conditions, without building the circuit again.</summary>
    /// <remarks>Equal groups that the circuit was built with stand for one another: they must stay equal.</remarks>
    /// <param name="groups">The groups of each kind of panel (<see cref="PanelAtWork.Kind"/>) as they work now, kind after kind.</param>
    /// <param name="stride">Entries a kind, at least as many as its groups.</param>
    public void Update(ReadOnlySpan<DiodeParameters> groups, int stride)
    {
        CircuitTree.Group[] leaves = _network.Layout.Leaves;
        for (int leaf = 0; leaf < leaves.Length; leaf++)
        {
            _network.Leaves.Set(leaf, groups[(leaves[leaf].Kind * stride) + leaves[leaf].Place]);
        }

        FindOpenCircuit();
    }

    /// <summary>Current at 0 V, A.</summary>
    public double ShortCircuitA => CurrentAt(0);

    /// <summary>Current delivered at a terminal voltage, A; negative above the open-circuit voltage.</summary>
    /// <param name="voltageV">Any finite voltage.</param>
    public double CurrentAt(double voltageV)
    {
        if (!double.IsFinite(voltageV))
        {
            throw new ArgumentOutOfRangeException(nameof(voltageV), voltageV, "A voltage is a finite number.");
        }

        _network.SolveAtVoltage(voltageV);
        return _network.CurrentA;
    }

    /// <summary>Terminal voltage at a delivered current, V; negative where the bypass diodes carry it.</summary>
    /// <param name="currentA">Any finite current.</param>
    public double VoltageAt(double currentA)
    {
        if (!double.IsFinite(currentA))
        {
            throw new ArgumentOutOfRangeException(nameof(currentA), currentA, "A current is a finite number.");
        }

        _network.StartAtOpenCircuit();
        _network.SolveAtCurrent(currentA);
        return _network.VoltageV;
    }

    /// <summary>Currents at evenly spaced voltages from 0 to <see cref="OpenCircuitV"/>, both included.</summary>
    /// <param name="currentsA">Receives one current a point; at least two.</param>
    public void Sweep(Span<double> currentsA)
    {
        if (currentsA.Length < 2)
        {
            throw new ArgumentException("A sweep has at least two points.", nameof(currentsA));
        }

        double stepV = OpenCircuitV / (currentsA.Length - 1);
        for (int i = 0; i < currentsA.Length; i++)
        {
            _network.FollowToVoltage(i * stepV, isFirst: i == 0);
            currentsA[i] = _network.CurrentA;
        }
    }

    /// <summary>Every local maximum of power between 0 V and open circuit, by rising voltage; empty in the dark.</summary>
    public ImmutableArray<CurvePoint> LocalMaxima()
    {
        FindTops(Sought.All);
        return [.. _hills.Tops.Select(top => new CurvePoint(top.VoltageV, top.CurrentA))];
    }

    /// <summary>The highest point of power; 0 V and 0 A in the dark.</summary>
    public CurvePoint MaximumPower()
    {
        FindTops(Sought.Highest);
        return HighestTop();
    }

    /// <summary>What an input takes: the highest power within its window and limits, on the high-voltage side where a limit holds it.</summary>
    public OperatingPoint TakenBy(InputWindow window)
    {
        FindTops(Sought.HighestAndAbove);
        CurvePoint unlimited = HighestTop();
        if (!Reaches(window))
        {
            return new OperatingPoint(OpenCircuitV, 0, 0, LimitedBy.Off, unlimited.PowerW, 0);
        }

        (double lowV, LimitedBy atLow) = LowEnd(window);
        double highV = Math.Min(window.MaxV, OpenCircuitV);
        if (lowV > window.MaxV || IsOverPowerAtItsTop(window))
        {
            return new OperatingPoint(OpenCircuitV, 0, 0, LimitedBy.AboveWindow, unlimited.PowerW, 0);
        }

        (CurvePoint best, LimitedBy heldBy) = unlimited.VoltageV > lowV && unlimited.VoltageV < highV
            ? (unlimited, LimitedBy.None)
            : BestBetween(lowV, atLow, highV, Sought.HighestAndAbove);
        CurvePoint firstHill = FirstHillFromAbove(best, highV);
        double firstHillW = Math.Min(firstHill.PowerW, window.MaxW);
        if (best.PowerW <= window.MaxW)
        {
            return new OperatingPoint(best.VoltageV, best.CurrentA, best.PowerW, heldBy, unlimited.PowerW, firstHillW);
        }

        double clippedV = HighSideV(best.VoltageV, highV, window.MaxW);
        return new OperatingPoint(clippedV, window.MaxW / clippedV, window.MaxW, LimitedBy.Power, unlimited.PowerW, firstHillW);
    }

    /// <summary>The highest power point after an <see cref="Update"/>, searched from where it was before: fast where conditions change little from one call to the next.</summary>
    public CurvePoint MaximumPowerAgain()
    {
        if (OpenCircuitV <= Dark)
        {
            return default;
        }

        (double voltageV, double currentA) = _movingTop.Find(_open, _topShare * OpenCircuitV, _network.MostCurrentA());
        CurvePoint top = new(voltageV, currentA);
        _topShare = top.VoltageV > 0 ? top.VoltageV / OpenCircuitV : UsualTopShare;
        return top;
    }

    /// <summary>The highest power at which the current stays at or under a limit, W, after <see cref="MaximumPowerAgain"/> found a top above that current.</summary>
    /// <param name="maxA">The limit, A, over 0 and under the current of that top.</param>
    public double PowerUnderCurrentW(double maxA)
    {
        _lastLimit.Recall();
        _network.SolveAtCurrent(maxA);
        _lastLimit.Keep();
        _limit.Take(_network);
        _hills.SearchBetween(_limit, _open);
        return Math.Max(_limit.PowerW, HighestTop().PowerW);
    }

    /// <summary>Power lost in copper and contacts at a terminal voltage, W.</summary>
    /// <param name="voltageV">Any finite voltage.</param>
    public double WireLossW(double voltageV)
    {
        if (!(Math.Abs(_network.VoltageV - voltageV) <= SameV * Math.Abs(voltageV)))
        {
            CurrentAt(voltageV);
        }

        return _network.WireHeatW();
    }

    /// <summary>The watts of <see cref="TakenBy"/> alone, faster.</summary>
    public double PowerTakenW(InputWindow window)
    {
        if (!Reaches(window))
        {
            return 0;
        }

        (double lowV, LimitedBy atLow) = LowEnd(window);
        return lowV > window.MaxV || IsOverPowerAtItsTop(window) ? 0 : Math.Min(BestBetween(lowV, atLow, Math.Min(window.MaxV, OpenCircuitV), Sought.Highest).Point.PowerW, window.MaxW);
    }

    private void FindOpenCircuit()
    {
        _lastOpen.Recall();
        _network.SolveAtCurrent(0);
        _lastOpen.Keep();
        _open.Take(_network);
        OpenCircuitV = Math.Max(0, _network.VoltageV);
    }

    /// <summary>Whether an input runs at all: the open circuit reaches its start and its window.</summary>
    public bool Reaches(InputWindow window) => OpenCircuitV > Dark && OpenCircuitV >= window.StartV && OpenCircuitV > window.MinV;

    private void FindTops(Sought sought)
    {
        if (OpenCircuitV <= Dark)
        {
            _hills.Tops.Clear();
            return;
        }

        _hills.Search(0, OpenCircuitV, sought, worthW: 0, UsualTopShare * OpenCircuitV);
    }

    private CurvePoint HighestTop()
    {
        CurvePoint best = default;
        foreach ((double voltageV, double currentA) in _hills.Tops)
        {
            best = voltageV * currentA > best.PowerW ? new CurvePoint(voltageV, currentA) : best;
        }

        return best;
    }

    /// <summary>The highest power from one voltage to another, and what holds it there.</summary>
    private (CurvePoint Point, LimitedBy HeldBy) BestBetween(double lowV, LimitedBy atLow, double highV, Sought sought)
    {
        CurvePoint best = At(lowV);
        LimitedBy heldBy = atLow;
        _hills.Tops.Clear();
        if (lowV >= highV)
        {
            return (best, heldBy);
        }

        if (highV < OpenCircuitV && At(highV) is var end && end.PowerW > best.PowerW)
        {
            (best, heldBy) = (end, LimitedBy.Voltage);
        }

        _hills.Search(lowV, highV, sought, sought == Sought.Highest ? best.PowerW : 0, UsualTopShare * OpenCircuitV);
        return HighestTop() is var top && top.PowerW > best.PowerW ? (top, LimitedBy.None) : (best, heldBy);
    }

    /// <summary>Where a tracker stops that comes down from the upper end of its window: there if power rises towards it, else at the first top it meets, at the latest at the best point.</summary>
    private CurvePoint FirstHillFromAbove(CurvePoint best, double highV)
    {
        if (best.VoltageV < highV && highV < OpenCircuitV && At(highV) is var end && end.CurrentA > highV * _network.SlopeS)
        {
            return end;
        }

        CurvePoint first = best;
        foreach ((double voltageV, double currentA) in _hills.Tops)
        {
            first = voltageV > first.VoltageV && voltageV < highV ? new CurvePoint(voltageV, currentA) : first;
        }

        return first;
    }

    private CurvePoint At(double voltageV) => new(voltageV, CurrentAt(voltageV));

    /// <summary>Whether the array gives too much power even at the upper end of the window: the input would have to move on above it.</summary>
    private bool IsOverPowerAtItsTop(InputWindow window) => window.MaxV < OpenCircuitV && At(window.MaxV).PowerW > window.MaxW;

    /// <summary>The lowest voltage the input may work at: the window's end, or where the current limit cuts the curve, which may be above the window.</summary>
    private (double VoltageV, LimitedBy By) LowEnd(InputWindow window)
    {
        if (double.IsFinite(window.MaxA) && CurrentAt(window.MinV) > window.MaxA)
        {
            _network.SolveAtCurrent(window.MaxA);
            return (_network.VoltageV, LimitedBy.Current);
        }

        return (window.MinV, LimitedBy.Voltage);
    }

    /// <summary>The voltage above that of a top, up to an end, where the power has fallen to a limit.</summary>
    private double HighSideV(double topV, double highV, double powerW)
    {
        NewtonBracket bracket = new(topV, highV);
        double v = 0.5 * (bracket.LowV + bracket.HighV);
        for (int step = 0; step < 80; step++)
        {
            _network.SolveAtVoltage(v);
            double excessW = (v * _network.CurrentA) - powerW;
            bracket.Close(v, isLow: excessW > 0);
            double slopeA = _network.CurrentA - (v * _network.SlopeS);
            double nextV = bracket.Next(v, v - (excessW / slopeA));
            bool settled = Math.Abs(nextV - v) <= 1e-10 * bracket.HighV;
            v = nextV;
            if (settled)
            {
                break;
            }
        }

        return v;
    }
}
