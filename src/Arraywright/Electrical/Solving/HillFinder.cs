namespace Arraywright.Electrical.Solving;

/// <summary>Finds every local maximum of P(V) = V·I(V) in an interval, and misses none.</summary>
/// <remarks>
/// An interval is dropped when dP/dV provably keeps one sign in it, or when P is provably convex in it (no maximum inside);
/// where P is provably concave and dP/dV changes sign, it holds exactly one maximum, which Newton's method then finds.
/// Otherwise it is halved. Intervals narrower than <see cref="Resolution"/> are settled by the signs at their ends.
/// </remarks>
internal sealed class HillFinder
{
    /// <summary>Share of the interval searched below which two maxima are not told apart.</summary>
    public const double Resolution = 1e-9;

    /// <summary>Newton's step, as a share of the voltage, that ends the climb: the error left is its square.</summary>
    private const double LastStep = 1e-6;

    /// <summary>More than halving the widest bracket takes, with a Newton step between.</summary>
    private const int MostSteps = 100;

    /// <summary>Which tops must not be missed.</summary>
    public enum Sought
    {
        /// <summary>Every one.</summary>
        All,

        /// <summary>The highest, and every one at a higher voltage.</summary>
        HighestAndAbove,

        /// <summary>The highest.</summary>
        Highest,
    }

    private readonly Network _network;
    private readonly SlopeBounds _bounds;
    private readonly List<Snapshot> _pool = [];
    private readonly Stack<(Snapshot Left, Snapshot Right)> _open = new();
    private readonly Snapshot _trial;

    public HillFinder(Network network, SlopeBounds bounds)
    {
        _network = network;
        _bounds = bounds;
        _trial = new Snapshot(network.Leaves.Count);
    }

    /// <summary>The tops found by the last call, by rising voltage.</summary>
    public List<(double VoltageV, double CurrentA)> Tops { get; } = [];

    /// <summary>Searches between two voltages; the network may stand anywhere.</summary>
    /// <param name="lowV">Lower end, V, at least 0.</param>
    /// <param name="highV">Upper end, V, above the lower.</param>
    /// <param name="sought">What must not be missed; the less, the faster.</param>
    /// <param name="worthW">Unless all are sought: tops at or under this power do not matter.</param>
    /// <param name="guessV">Where the highest top may be: a good guess saves work, a bad one costs some.</param>
    public void Search(double lowV, double highV, Sought sought, double worthW, double guessV)
    {
        Tops.Clear();
        double narrow = (highV - lowV) * Resolution;
        int used = 0;
        double bestW = worthW;
        double bestV = sought == Sought.Highest ? double.PositiveInfinity : lowV;
        Snapshot high = At(highV, ref used);
        Snapshot low = At(lowV, ref used);
        bestW = Math.Max(bestW, Math.Max(low.PowerW, high.PowerW));
        _open.Clear();
        if (guessV > lowV && guessV < highV)
        {
            bestW = Math.Max(bestW, Split(low, high, guessV, ref used));
        }
        else
        {
            _open.Push((low, high));
        }

        Settle(sought, bestW, bestV, narrow, used, double.NaN);
    }

    /// <summary>Finds the highest top between two solved points, where it is above the power of the lower one.</summary>
    public void SearchBetween(Snapshot low, Snapshot high)
    {
        Tops.Clear();
        _open.Clear();
        _open.Push((low, high));
        Settle(Sought.Highest, low.PowerW, double.PositiveInfinity, high.VoltageV * Resolution, 0, double.NaN);
    }

    /// <summary>Finds the highest top beside a known one between two solved points, where it is above a power.</summary>
    /// <param name="low">The lower point.</param>
    /// <param name="middle">A point on the way, solved too.</param>
    /// <param name="high">The upper point.</param>
    /// <param name="knownV">The known top, V.</param>
    /// <param name="worthW">The power, W.</param>
    public void SearchBeside(Snapshot low, Snapshot middle, Snapshot high, double knownV, double worthW)
    {
        Tops.Clear();
        _open.Clear();
        _open.Push((low, middle));
        _open.Push((middle, high));
        Settle(Sought.Highest, worthW, double.PositiveInfinity, high.VoltageV * Resolution, 0, knownV);
    }

    private void Settle(Sought sought, double bestW, double bestV, double narrow, int used, double knownV)
    {
        while (_open.TryPop(out (Snapshot Left, Snapshot Right) interval))
        {
            (Snapshot left, Snapshot right) = interval;
            SlopeBounds.Range bounds = _bounds.Between(left, right);
            if (sought != Sought.All && right.VoltageV <= bestV && HighestPower(left, right, bounds) <= bestW)
            {
                continue;
            }

            Turn turn = TurnWithin(left, right, bounds, narrow);
            if (turn == Turn.Top && !(knownV > left.VoltageV && knownV < right.VoltageV))
            {
                double topW = Climb(left, right);
                if (topW >= bestW)
                {
                    bestW = topW;
                    bestV = sought == Sought.Highest ? bestV : Tops[^1].VoltageV;
                }
            }

            if (turn != Turn.Unsettled)
            {
                continue;
            }

            bestW = Math.Max(bestW, Split(left, right, 0.5 * (left.VoltageV + right.VoltageV), ref used));
        }

        Tops.Sort(static (one, other) => one.VoltageV.CompareTo(other.VoltageV));
    }

    private Snapshot At(double voltageV, ref int used)
    {
        if (used == _pool.Count)
        {
            _pool.Add(new Snapshot(_network.Leaves.Count));
        }

        Snapshot point = _pool[used++];
        _network.SolveAtVoltage(voltageV);
        point.Take(_network);
        return point;
    }

    /// <summary>Solves inside an interval and opens both parts, the high-voltage side to be looked at first: the highest top is mostly there. Returns the power there.</summary>
    private double Split(Snapshot left, Snapshot right, double atV, ref int used)
    {
        _network.StartBetween(left, right, (atV - left.VoltageV) / (right.VoltageV - left.VoltageV));
        Snapshot middle = At(atV, ref used);
        _open.Push((left, middle));
        _open.Push((middle, right));
        return middle.PowerW;
    }

    private enum Turn
    {
        /// <summary>No maximum inside.</summary>
        NoTop,

        /// <summary>Exactly one maximum inside.</summary>
        Top,

        /// <summary>Not proved either way.</summary>
        Unsettled,
    }

    /// <summary>Whether P is concave between two points, so that it has one top there at the most.</summary>
    public static bool IsConcave(Snapshot left, Snapshot right, SlopeBounds.Range bounds) => CurvatureHigh(left, right, bounds) < 0;

    /// <summary>P″ = −2s + V·k is nowhere higher in the interval.</summary>
    private static double CurvatureHigh(Snapshot left, Snapshot right, SlopeBounds.Range bounds) =>
        (-2 * bounds.SlopeLow) + (bounds.CurvatureHigh * (bounds.CurvatureHigh > 0 ? right : left).VoltageV);

    /// <summary>What is proved of the maxima of P inside the interval, from the signs at its ends and the bounds of P′ and P″ over it.</summary>
    private static Turn TurnWithin(Snapshot left, Snapshot right, SlopeBounds.Range bounds, double narrowV)
    {
        double widthV = right.VoltageV - left.VoltageV;
        double curvatureHigh = CurvatureHigh(left, right, bounds);
        double curvatureLow = (-2 * bounds.SlopeHigh) + (bounds.CurvatureLow * (bounds.CurvatureLow < 0 ? right : left).VoltageV);
        bool turns = left.PowerSlopeA > 0 && right.PowerSlopeA <= 0;
        if (curvatureHigh < 0 || widthV < narrowV)
        {
            return turns ? Turn.Top : Turn.NoTop;
        }

        // P′ = I − V·s with I between its ends; and P′ no further from either end than P″ can take it.
        double slopeHighA = Math.Min(
            left.CurrentA - (left.VoltageV * bounds.SlopeLow),
            Math.Min(left.PowerSlopeA + (Math.Max(0, curvatureHigh) * widthV), right.PowerSlopeA + (Math.Max(0, -curvatureLow) * widthV)));
        double slopeLowA = Math.Max(
            right.CurrentA - (right.VoltageV * bounds.SlopeHigh),
            Math.Max(left.PowerSlopeA - (Math.Max(0, -curvatureLow) * widthV), right.PowerSlopeA - (Math.Max(0, curvatureHigh) * widthV)));
        return curvatureLow > 0 || slopeHighA < 0 || slopeLowA > 0 ? Turn.NoTop : Turn.Unsettled;
    }

    /// <summary>No point of the interval gives more: I(V) lies under both lines of the steepest and flattest slope from its ends.</summary>
    private static double HighestPower(Snapshot left, Snapshot right, SlopeBounds.Range bounds)
    {
        double fromLeft = HighestOnLine(left.CurrentA + (left.VoltageV * bounds.SlopeLow), bounds.SlopeLow, left.VoltageV, right.VoltageV);
        double fromRight = HighestOnLine(right.CurrentA + (right.VoltageV * bounds.SlopeHigh), bounds.SlopeHigh, left.VoltageV, right.VoltageV);
        return Math.Min(fromLeft, fromRight);
    }

    private static double HighestOnLine(double atZeroA, double slopeS, double lowV, double highV)
    {
        double v = Math.Clamp(atZeroA / (2 * slopeS), lowV, highV);
        return v * (atZeroA - (slopeS * v));
    }

    /// <summary>Newton's method on dP/dV = 0 inside a bracket that shrinks. Returns the power of the top.</summary>
    private double Climb(Snapshot left, Snapshot right)
    {
        NewtonBracket bracket = new(left.VoltageV, right.VoltageV);
        Snapshot nearest = left.PowerSlopeA < -right.PowerSlopeA ? left : right;
        double v = bracket.Next(nearest.VoltageV, NewtonV(nearest));
        double nextV = v;
        nearest.GiveBack(_network);
        for (int step = 0; step < MostSteps; step++)
        {
            v = nextV;
            _network.SolveAtVoltage(v);
            _trial.Take(_network);
            bracket.Close(v, isLow: _trial.PowerSlopeA > 0);
            nextV = bracket.Next(v, NewtonV(_trial));
            if (Math.Abs(nextV - v) <= LastStep * bracket.HighV)
            {
                break;
            }
        }

        // From the last solved point to the top along its tangent: both errors are squares of the last step.
        double topV = nextV;
        double topA = _network.CurrentA - (_network.SlopeS * (topV - v));
        Tops.Add((topV, topA));
        return topV * topA;
    }

    /// <summary>Newton's step on dP/dV = 0 from a solved point.</summary>
    private double NewtonV(Snapshot point)
    {
        (double slopeS, double curvature) = _bounds.At(point);
        return point.VoltageV - (point.PowerSlopeA / ((-2 * slopeS) + (point.VoltageV * curvature)));
    }
}
