using System.Numerics;

namespace Arraywright.Electrical.Solving;

/// <summary>All bypassed groups of a circuit, evaluated together, as many at a time as a vector register holds.</summary>
/// <remarks>
/// The unknown of a group is its junction voltage x. Everything else follows without solving: the cells' current
/// ic = IL − I0·(exp(x/a) − 1) − x·Gsh, the group's voltage v = x − ic·Rs, the bypass current Is·(exp(−v/ab) − 1), and their slopes.
/// Arrays are padded to whole registers; the padding repeats the last group and never moves.
/// </remarks>
internal sealed class LeafBank
{
    /// <summary>Beyond 40 ideality voltages the bypass diode's exponential is under 1e-17 of its saturation current.</summary>
    private const double BypassReach = 40;

    private readonly double[] _lightPlusSaturationA;
    private readonly double[] _saturationA;
    private readonly double[] _seriesOhm;
    private readonly double[] _shuntS;
    private readonly double[] _perIdealityV;
    private readonly double[] _bypassSaturationA;
    private readonly double[] _perBypassV;
    private readonly double _bypassSilentAboveV;

    public LeafBank(CircuitTree.Group[] leaves)
    {
        Count = leaves.Length;
        int width = Vector<double>.Count;
        int padded = (Count + width - 1) / width * width;
        _lightPlusSaturationA = new double[padded];
        _saturationA = new double[padded];
        _seriesOhm = new double[padded];
        _shuntS = new double[padded];
        _perIdealityV = new double[padded];
        _bypassSaturationA = new double[padded];
        _perBypassV = new double[padded];
        IdealityV = new double[padded];
        BypassIdealityV = new double[padded];
        BypassCriticalV = new double[padded];
        OpenGuessV = new double[padded];
        JunctionV = new double[padded];
        WantedV = new double[padded];
        VoltageV = new double[padded];
        CurrentA = new double[padded];
        VoltPerJunctionVolt = new double[padded];
        CellSlopeS = new double[padded];
        CellCurvature = new double[padded];
        BypassSlopeS = new double[padded];
        LineOhm = new double[padded];
        LineV = new double[padded];
        for (int i = 0; i < padded; i++)
        {
            CircuitTree.Group leaf = leaves[Math.Min(i, Count - 1)];
            SetBypass(i, leaf.Bypass);
            SetCells(i, leaf.Cells);
        }

        _bypassSilentAboveV = BypassReach * leaves.Max(leaf => leaf.Bypass.IdealityV);
    }

    /// <summary>Gives a group other parameters; the network keeps its last solution as a start.</summary>
    public void Set(int leaf, in DiodeParameters cells)
    {
        SetCells(leaf, cells);
        for (int i = Count; leaf == Count - 1 && i < JunctionV.Length; i++)
        {
            SetCells(i, cells);
        }
    }

    /// <summary>No current of a group at or above 0 V is higher, A.</summary>
    public double MostCurrentA(int leaf) => _lightPlusSaturationA[leaf] + _bypassSaturationA[leaf];

    private void SetCells(int i, in DiodeParameters cells)
    {
        _lightPlusSaturationA[i] = cells.LightCurrentA + cells.SaturationCurrentA;
        _saturationA[i] = cells.SaturationCurrentA;
        _seriesOhm[i] = cells.SeriesOhm;
        _shuntS[i] = cells.ShuntSiemens;
        _perIdealityV[i] = 1 / cells.IdealityV;
        IdealityV[i] = cells.IdealityV;
        OpenGuessV[i] = Math.Min(
            cells.IdealityV * Math.Log((cells.LightCurrentA / cells.SaturationCurrentA) + 1),
            cells.LightCurrentA / cells.ShuntSiemens);
    }

    private void SetBypass(int i, BypassDiode bypass)
    {
        _bypassSaturationA[i] = bypass.SaturationCurrentA;
        _perBypassV[i] = 1 / bypass.IdealityV;
        BypassIdealityV[i] = bypass.IdealityV;
        BypassCriticalV[i] = bypass.SaturationCurrentA > 0 ? Critical(bypass.IdealityV, bypass.SaturationCurrentA) : double.PositiveInfinity;
    }

    /// <summary>The voltage of sharpest bend of a diode's curve (Nagel 1975).</summary>
    private static double Critical(double idealityV, double saturationA) => idealityV * Math.Log(idealityV / (Math.Sqrt(2) * saturationA));

    public int Count { get; }

    /// <summary>The unknowns: junction voltage of each group, V.</summary>
    public double[] JunctionV { get; }

    /// <summary>Voltage of each group at its junction voltage, V.</summary>
    public double[] VoltageV { get; }

    /// <summary>Current of each group, A.</summary>
    public double[] CurrentA { get; }

    /// <summary>dv/dx of each group.</summary>
    public double[] VoltPerJunctionVolt { get; }

    /// <summary>−d(ic)/dv of the cells, S: grows with x.</summary>
    public double[] CellSlopeS { get; }

    /// <summary>I0/a²·exp(x/a), A/V²: the numerator of the cells' curvature; grows with x.</summary>
    public double[] CellCurvature { get; }

    /// <summary>Conductance of the bypass diode, S: falls as v grows.</summary>
    public double[] BypassSlopeS { get; }

    /// <summary>Resistance of each group's tangent v = e − r·i, Ω.</summary>
    public double[] LineOhm { get; }

    /// <summary>Where each group's tangent meets zero current, e, V.</summary>
    public double[] LineV { get; }

    /// <summary>Voltage each group should move to, V: set by the network before <see cref="Step"/>.</summary>
    public double[] WantedV { get; }

    public double[] IdealityV { get; }

    public double[] BypassIdealityV { get; }

    public double[] BypassCriticalV { get; }

    /// <summary>A guess of each group's open-circuit junction voltage, V.</summary>
    public double[] OpenGuessV { get; }

    /// <summary>1/ab of each group's bypass diode, 1/V.</summary>
    public double[] PerBypassV => _perBypassV;

    /// <summary>Everything that follows from <see cref="JunctionV"/>.</summary>
    public void Evaluate()
    {
        for (int i = 0; i < JunctionV.Length; i += Vector<double>.Count)
        {
            Vector<double> x = new Vector<double>(JunctionV, i);
            Vector<double> perA = new Vector<double>(_perIdealityV, i);
            Vector<double> rs = new Vector<double>(_seriesOhm, i);
            Vector<double> shunt = new Vector<double>(_shuntS, i);
            Vector<double> diodeA = new Vector<double>(_saturationA, i) * Exponential.Of(x * perA);
            Vector<double> diodeS = diodeA * perA;
            Vector<double> junctionS = diodeS + shunt;
            Vector<double> cellsA = new Vector<double>(_lightPlusSaturationA, i) - diodeA - (x * shunt);
            Vector<double> stretch = Vector<double>.One + (junctionS * rs);
            Vector<double> v = x - (cellsA * rs);

            Vector<double> saturation = new Vector<double>(_bypassSaturationA, i);
            Vector<double> bypassA = -saturation;
            Vector<double> bypassS = Vector<double>.Zero;
            if (Vector.LessThanAny(v, new Vector<double>(_bypassSilentAboveV)))
            {
                Vector<double> perAb = new Vector<double>(_perBypassV, i);
                Vector<double> forwardA = saturation * Exponential.Of(-v * perAb);
                bypassA = forwardA - saturation;
                bypassS = forwardA * perAb;
            }

            Vector<double> currentA = cellsA + bypassA;
            Vector<double> cellS = junctionS / stretch;
            Vector<double> ohm = Vector<double>.One / (cellS + bypassS);
            v.CopyTo(VoltageV, i);
            currentA.CopyTo(CurrentA, i);
            stretch.CopyTo(VoltPerJunctionVolt, i);
            cellS.CopyTo(CellSlopeS, i);
            ohm.CopyTo(LineOhm, i);
            (v + (currentA * ohm)).CopyTo(LineV, i);
            (diodeS * perA).CopyTo(CellCurvature, i);
            bypassS.CopyTo(BypassSlopeS, i);
        }
    }

    /// <summary>Moves every group to its wanted voltage, along its tangent. Returns the largest step, in ideality voltages of the diode that conducts.</summary>
    public double Step()
    {
        for (int i = Count; i < JunctionV.Length; i++)
        {
            WantedV[i] = VoltageV[i];
        }

        Vector<double> two = new Vector<double>(2);
        Vector<double> largest = Vector<double>.Zero;
        Vector<long> tooFar = Vector<long>.Zero;
        for (int i = 0; i < JunctionV.Length; i += Vector<double>.Count)
        {
            Vector<double> wantedV = new Vector<double>(WantedV, i);
            Vector<double> step = Vector.Abs(wantedV - new Vector<double>(VoltageV, i)) / new Vector<double>(VoltPerJunctionVolt, i);
            Vector<double> cellSteps = step * new Vector<double>(_perIdealityV, i);
            Vector<double> bypassSteps = step * new Vector<double>(_perBypassV, i);
            Vector<long> bypassed = Vector.GreaterThan(new Vector<double>(BypassSlopeS, i), new Vector<double>(CellSlopeS, i));
            largest = Vector.Max(largest, Vector.ConditionalSelect(bypassed, bypassSteps, cellSteps));
            Vector<long> forward = Vector.LessThan(wantedV, -new Vector<double>(BypassCriticalV, i));
            tooFar |= Vector.GreaterThan(cellSteps, two) | (forward & Vector.GreaterThan(bypassSteps, two));
        }

        if (tooFar != Vector<long>.Zero)
        {
            StepWithCare();
        }
        else
        {
            for (int i = 0; i < JunctionV.Length; i += Vector<double>.Count)
            {
                Vector<double> step = (new Vector<double>(WantedV, i) - new Vector<double>(VoltageV, i)) / new Vector<double>(VoltPerJunctionVolt, i);
                (new Vector<double>(JunctionV, i) + step).CopyTo(JunctionV, i);
            }
        }

        double most = 0;
        for (int lane = 0; lane < Vector<double>.Count; lane++)
        {
            most = Math.Max(most, largest[lane]);
        }

        return most;
    }

    /// <summary>Shortens the steps of groups whose exponentials would run away.</summary>
    private void StepWithCare()
    {
        for (int i = 0; i < Count; i++)
        {
            double oldV = VoltageV[i];
            double wantedV = WantedV[i];
            double x = JunctionV[i];
            double wantedX = x + ((wantedV - oldV) / VoltPerJunctionVolt[i]);
            if (wantedX > x)
            {
                // The bend is a logarithm away: asked for only where the step is long.
                double idealityV = IdealityV[i];
                bool isLong = wantedX - x > 2 * idealityV && wantedX > Critical(idealityV, _saturationA[i]);
                JunctionV[i] = isLong ? Shortened(wantedX, x, idealityV) : wantedX;
                continue;
            }

            bool isFarForward = oldV - wantedV > 2 * BypassIdealityV[i] && -wantedV > BypassCriticalV[i];
            JunctionV[i] = isFarForward ? x + ((-Shortened(-wantedV, -oldV, BypassIdealityV[i]) - oldV) / VoltPerJunctionVolt[i]) : wantedX;
        }
    }

    /// <summary>A step along a diode's forward voltage, shortened as its exponential would run away.</summary>
    private static double Shortened(double newV, double oldV, double idealityV) => oldV > 0
        ? oldV + (idealityV * Math.Log(1 + ((newV - oldV) / idealityV)))
        : idealityV * Math.Log(newV / idealityV);
}
