namespace Arraywright.Electrical.Solving;

/// <summary>Newton's method on a whole tree at once.</summary>
/// <remarks>
/// Each step replaces every group by the tangent to its curve, a line v = e − r·i. Lines in series and in parallel are lines again, so the
/// whole tree folds into one line at its terminals, which meets the terminal condition; unfolding gives every group's new voltage.
/// That is the exact Newton step of the full system, at a cost linear in the number of elements and without a matrix.
/// Steps along an exponential are shortened in the manner usual in circuit simulation (Nagel 1975, junction limiting), so that it does not overflow.
/// </remarks>
internal sealed class Network
{
    /// <summary>Steps under this share of the ideality voltage of the diode that conducts end the iteration: the error left is its square.</summary>
    private const double SmallStep = 1e-5;

    /// <summary>The same for a rough solution, to be bounded by or to go on from.</summary>
    private const double RoughStep = 1e-2;

    /// <summary>A start that has not led to the solution by this step is too far off.</summary>
    private const int StepsFromAStart = 40;

    /// <summary>No stride along the walk from open circuit is shorter than this share of it.</summary>
    private const double ShortestStride = 1e-6;

    private readonly Layout _layout;
    private readonly double[] _lineV;
    private readonly double[] _lineOhm;
    private readonly double[] _innerV;
    private readonly double[] _currentA;
    private readonly double[] _beforeV;
    private readonly double[] _earlierV;
    private int _followed;

    public Network(CircuitTree tree)
    {
        _layout = new Layout(tree);
        Leaves = new LeafBank(_layout.Leaves);
        int nodes = _layout.Parent.Length;
        _lineV = new double[nodes];
        _lineOhm = new double[nodes];
        _innerV = new double[nodes];
        _currentA = new double[nodes];
        _beforeV = new double[Leaves.JunctionV.Length];
        _earlierV = new double[Leaves.JunctionV.Length];
    }

    public LeafBank Leaves { get; }

    public Layout Layout => _layout;

    /// <summary>Terminal voltage of the last solution, V.</summary>
    public double VoltageV { get; private set; }

    /// <summary>Terminal current of the last solution, A.</summary>
    public double CurrentA { get; private set; }

    /// <summary>−dI/dV at the terminals of the last solution, S.</summary>
    public double SlopeS { get; private set; }

    /// <summary>The last step of the last solution, in ideality voltages of the diode that conducts: slopes and curvatures are from before it.</summary>
    public double LastStep { get; private set; }

    /// <summary>Steps taken since the network was made: what a solution costs, counted alike on any machine.</summary>
    public long Steps { get; private set; }

    /// <summary>No terminal current at or above 0 V is higher, A: in series the strongest group's light current, in parallel the sum.</summary>
    public double MostCurrentA()
    {
        double[] most = _currentA;
        Array.Clear(most);
        for (int leaf = 0; leaf < Leaves.Count; leaf++)
        {
            int parent = _layout.LeafParent[leaf];
            double currentA = Leaves.MostCurrentA(leaf);
            most[parent] = _layout.IsSeries[parent] ? Math.Max(most[parent], currentA) : most[parent] + (_layout.LeafCount[leaf] * currentA);
        }

        for (int node = 0; node < most.Length - 1; node++)
        {
            int parent = _layout.Parent[node];
            most[parent] = _layout.IsSeries[parent] ? Math.Max(most[parent], most[node]) : most[parent] + (_layout.Count[node] * most[node]);
        }

        return most[^1];
    }

    /// <summary>Heat in all resistances of the last solution, W.</summary>
    public double WireHeatW()
    {
        double heatW = 0;
        for (int node = 0; node < _currentA.Length; node++)
        {
            heatW += _layout.Times[node] * _layout.Ohm[node] * _currentA[node] * _currentA[node];
        }

        return heatW;
    }

    /// <summary>Starts from every group at about its open-circuit voltage.</summary>
    public void StartAtOpenCircuit() => Leaves.OpenGuessV.CopyTo(Leaves.JunctionV, 0);

    /// <summary>Starts with every group at a share of the way between two solved points.</summary>
    public void StartBetween(Snapshot one, Snapshot other, double share)
    {
        for (int leaf = 0; leaf < Leaves.Count; leaf++)
        {
            Leaves.JunctionV[leaf] = one.JunctionV[leaf] + (share * (other.JunctionV[leaf] - one.JunctionV[leaf]));
        }
    }

    /// <summary>Solves for a given terminal voltage, from where the network stands.</summary>
    /// <exception cref="ArithmeticException">No convergence: a defect of the solver, not of the plan.</exception>
    public void SolveAtVoltage(double voltageV) => Solve(Terminal.Voltage, voltageV, SmallStep);

    /// <summary>As <see cref="SolveAtVoltage"/>, to about 1e-4 ideality voltages: <see cref="LastStep"/> bounds the error.</summary>
    public void SolveRoughlyAtVoltage(double voltageV) => Solve(Terminal.Voltage, voltageV, RoughStep);

    /// <summary>As <see cref="SolveAtVoltage"/>, for evenly spaced voltages in turn: each group's next junction voltage is guessed by the parabola through its last three.</summary>
    public void FollowToVoltage(double voltageV, bool isFirst)
    {
        _followed = isFirst ? 0 : _followed;
        double[] x = Leaves.JunctionV;
        for (int leaf = 0; leaf < x.Length; leaf++)
        {
            double now = x[leaf];
            (double before, double earlier) = (_beforeV[leaf], _earlierV[leaf]);
            (_beforeV[leaf], _earlierV[leaf]) = (now, before);
            x[leaf] = _followed < 3 ? now : (3 * (now - before)) + earlier;
        }

        _followed++;
        SolveAtVoltage(voltageV);
    }

    /// <summary>Solves for a given terminal current.</summary>
    public void SolveAtCurrent(double currentA) => Solve(Terminal.Current, currentA, SmallStep);

    private enum Terminal
    {
        Voltage,
        Current,
    }

    private void Solve(Terminal terminal, double target, double smallStep)
    {
        if (!Settles(terminal, target, smallStep))
        {
            WalkFromOpenCircuit(terminal, target, smallStep);
        }
    }

    /// <summary>Newton's steps from where the network stands; false if they do not come to rest.</summary>
    private bool Settles(Terminal terminal, double target, double smallStep)
    {
        for (int step = 0; step < StepsFromAStart; step++)
        {
            Steps++;
            Leaves.Evaluate();
            Fold();
            int root = _lineV.Length - 1;
            (VoltageV, CurrentA) = terminal == Terminal.Voltage
                ? (target, (_lineV[root] - target) / _lineOhm[root])
                : (_lineV[root] - (_lineOhm[root] * target), target);
            SlopeS = 1 / _lineOhm[root];
            LastStep = Unfold();
            if (LastStep < smallStep)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Source stepping: solves at open circuit, which every group is near, and from there on by as long strides as Newton's steps follow.</summary>
    /// <remarks>Needed where groups in series have very unequal light: a step may then throw several over their knees, and the next throw them back, for ever.</remarks>
    private void WalkFromOpenCircuit(Terminal terminal, double target, double smallStep)
    {
        StartAtOpenCircuit();
        double share = 0;
        double stride = Settles(Terminal.Current, 0, SmallStep) ? 1 : 0;
        double from = terminal == Terminal.Voltage ? VoltageV : 0;
        double[] solved = [.. Leaves.JunctionV];
        while (share < 1)
        {
            if (stride < ShortestStride)
            {
                throw new ArithmeticException($"The circuit did not settle at {terminal} {target}.");
            }

            double next = Math.Min(1, share + stride);
            if (Settles(terminal, from + (next * (target - from)), smallStep))
            {
                share = next;
                stride *= 2;
                Leaves.JunctionV.CopyTo(solved, 0);
            }
            else
            {
                stride /= 2;
                solved.CopyTo(Leaves.JunctionV, 0);
            }
        }
    }

    /// <summary>From leaves to root: the line of every node.</summary>
    private void Fold()
    {
        double[] lineV = _lineV;
        double[] lineOhm = _lineOhm;
        Array.Clear(lineV);
        Array.Clear(lineOhm);
        for (int leaf = 0; leaf < Leaves.Count; leaf++)
        {
            int parent = _layout.LeafParent[leaf];
            double count = _layout.LeafCount[leaf];
            if (_layout.IsSeries[parent])
            {
                lineV[parent] += count * Leaves.LineV[leaf];
                lineOhm[parent] += count * Leaves.LineOhm[leaf];
            }
            else
            {
                lineV[parent] += count * Leaves.LineV[leaf] / Leaves.LineOhm[leaf];
                lineOhm[parent] += count / Leaves.LineOhm[leaf];
            }
        }

        for (int node = 0; node < lineV.Length; node++)
        {
            if (!_layout.IsSeries[node])
            {
                // Until here a parallel node holds amps and siemens.
                lineOhm[node] = 1 / lineOhm[node];
                lineV[node] *= lineOhm[node];
            }

            lineOhm[node] += _layout.Ohm[node];
            int parent = _layout.Parent[node];
            if (parent < 0)
            {
                continue;
            }

            double count = _layout.Count[node];
            if (_layout.IsSeries[parent])
            {
                lineV[parent] += count * lineV[node];
                lineOhm[parent] += count * lineOhm[node];
            }
            else
            {
                lineV[parent] += count * lineV[node] / lineOhm[node];
                lineOhm[parent] += count / lineOhm[node];
            }
        }
    }

    /// <summary>From root to leaves: every group's new junction voltage. Returns the largest step, in ideality voltages of the diode that conducts.</summary>
    private double Unfold()
    {
        for (int node = _lineV.Length - 1; node >= 0; node--)
        {
            int parent = _layout.Parent[node];
            double voltageV;
            double currentA;
            if (parent < 0)
            {
                (voltageV, currentA) = (VoltageV, CurrentA);
            }
            else if (_layout.IsSeries[parent])
            {
                currentA = _currentA[parent];
                voltageV = _lineV[node] - (_lineOhm[node] * currentA);
            }
            else
            {
                voltageV = _innerV[parent];
                currentA = (_lineV[node] - voltageV) / _lineOhm[node];
            }

            _currentA[node] = currentA;
            _innerV[node] = voltageV + (_layout.Ohm[node] * currentA);
        }

        for (int leaf = 0; leaf < Leaves.Count; leaf++)
        {
            int parent = _layout.LeafParent[leaf];
            Leaves.WantedV[leaf] = _layout.IsSeries[parent]
                ? Leaves.LineV[leaf] - (Leaves.LineOhm[leaf] * _currentA[parent])
                : _innerV[parent];
        }

        return Leaves.Step();
    }
}
