namespace Arraywright.Electrical.Solving;

/// <summary>The highest top of P(V) from one set of conditions to the next, where they change little: climbed to from where it was, then proved.</summary>
/// <remarks>
/// The proof needs two points below the top, both roughly solved from where they were. No current is above the array's most, so nothing under the first
/// can give as much as the top. From the second up to open circuit P is mostly concave, which leaves room for one top; between the two
/// <see cref="HillFinder"/> shows that nothing is higher, or finds it.
/// </remarks>
internal sealed class MovingTop
{
    /// <summary>Newton's step, as a share of the open-circuit voltage, after which the top is solved finely: the error left is its square.</summary>
    private const double RoughStep = 1e-4;

    /// <summary>The same for the last step: the power left is of the order of its square, the heat in copper of its size.</summary>
    private const double LastStep = 1e-7;

    /// <summary>A climb that has not arrived by this step had a bad start.</summary>
    private const int MostSteps = 12;

    /// <summary>More than a roughly solved power may be out by, as a share.</summary>
    private const double RoughShare = 1e-5;

    private readonly Network _network;
    private readonly SlopeBounds _bounds;
    private readonly HillFinder _hills;
    private readonly Standing _lastTop;
    private readonly Standing _lastLow;
    private readonly Standing _lastMiddle;
    private readonly Snapshot _top;
    private readonly Snapshot _low;
    private readonly Snapshot _middle;
    private double _bendAPerV;

    public MovingTop(Network network, SlopeBounds bounds, HillFinder hills)
    {
        _network = network;
        _bounds = bounds;
        _hills = hills;
        int leaves = network.Leaves.Count;
        (_lastTop, _lastLow, _lastMiddle) = (new Standing(network), new Standing(network), new Standing(network));
        (_top, _low, _middle) = (new Snapshot(leaves), new Snapshot(leaves), new Snapshot(leaves));
    }

    /// <summary>Finds the highest top below open circuit, and leaves the network standing there.</summary>
    /// <param name="open">Open circuit, solved.</param>
    /// <param name="guessV">Where the top may be, V, between 0 and that point.</param>
    /// <param name="mostA">No current of the array is above this, A.</param>
    public (double VoltageV, double CurrentA) Find(Snapshot open, double guessV, double mostA)
    {
        double topV = RoughTopV(guessV, open.VoltageV);
        bool isClimbed = !double.IsNaN(topV);
        if (isClimbed)
        {
            SearchBeside(topV, open, mostA);
        }
        else
        {
            _hills.Search(0, open.VoltageV, HillFinder.Sought.Highest, 0, guessV);
        }

        (double VoltageV, double CurrentA) top = isClimbed ? Settled(topV, open.VoltageV) : default;
        if (_hills.Tops.Count > 0 && _hills.Tops.MaxBy(PowerW) is var other && PowerW(other) > PowerW(top))
        {
            top = other;
            _network.SolveAtVoltage(top.VoltageV);
        }

        _lastTop.Keep();
        return top;
    }

    private static double PowerW((double VoltageV, double CurrentA) top) => top.VoltageV * top.CurrentA;

    /// <summary>Climbs from a guess; NaN where it does not arrive.</summary>
    private double RoughTopV(double guessV, double openV)
    {
        (double lowV, double highV) = (0, openV);
        double v = guessV;
        _lastTop.Recall();
        for (int step = 0; step < MostSteps; step++)
        {
            _network.SolveRoughlyAtVoltage(v);
            _top.Take(_network);
            _bendAPerV = BendAPerV();
            (lowV, highV) = _top.PowerSlopeA > 0 ? (v, highV) : (lowV, v);
            double nextV = v - (_top.PowerSlopeA / _bendAPerV);
            nextV = nextV > lowV && nextV < highV ? nextV : 0.5 * (lowV + highV);
            if (Math.Abs(nextV - v) <= RoughStep * openV)
            {
                return _bendAPerV < 0 ? nextV : double.NaN;
            }

            v = nextV;
        }

        return double.NaN;
    }

    /// <summary>P″ where the network stood, A/V.</summary>
    private double BendAPerV()
    {
        (double slopeS, double curvature) = _bounds.At(_top);
        return (-2 * slopeS) + (_top.VoltageV * curvature);
    }

    /// <summary>Looks for every other top that may be as high as the one climbed to; none found is a proof that there is none.</summary>
    private void SearchBeside(double topV, Snapshot open, double mostA)
    {
        _hills.Tops.Clear();
        double worthW = _top.PowerW * (1 - RoughShare);
        Place(_low, _lastLow, worthW / mostA);
        if (HillFinder.IsConcave(_low, open, _bounds.Between(_low, open)))
        {
            return;
        }

        Place(_middle, _lastMiddle, 0.5 * (_low.VoltageV + topV));
        _hills.SearchBeside(_low, _middle, open, topV, worthW);
    }

    private void Place(Snapshot point, Standing last, double voltageV)
    {
        last.Recall();
        _network.SolveRoughlyAtVoltage(voltageV);
        last.Keep();
        point.Take(_network);
    }

    /// <summary>The top from a voltage close to it: solved there, and on along the tangent by what is left.</summary>
    private (double VoltageV, double CurrentA) Settled(double v, double openV)
    {
        _top.GiveBack(_network);
        for (int step = 0; ; step++)
        {
            _network.SolveAtVoltage(v);
            double leftV = -(_network.CurrentA - (v * _network.SlopeS)) / _bendAPerV;
            if (Math.Abs(leftV) <= LastStep * openV || step == MostSteps)
            {
                return (v + leftV, _network.CurrentA - (_network.SlopeS * leftV));
            }

            v += leftV;
        }
    }
}
