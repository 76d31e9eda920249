using System.Runtime.Intrinsics;

namespace Arraywright.Electrical.Solving;

/// <summary>All bypassed groups of a circuit, evaluated together, two at a time in vector registers.</summary>
/// <remarks>
/// The unknown of a group is its junction voltage x. Everything else follows without solving: the cells' current
/// ic = IL − I0·(exp(x/a) − 1) − x·Gsh, the group's voltage v = x − ic·Rs, the bypass current Is·(exp(−v/ab) − 1), and their slopes.
/// Arrays are padded to an even length; the padding repeats the last group and is never read.
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
        int padded = Count + (Count & 1);
        double[] Fill(Func<CircuitTree.Group, double> pick)
        {
            double[] values = new double[padded];
            for (int i = 0; i < padded; i++)
            {
                values[i] = pick(leaves[Math.Min(i, Count - 1)]);
            }

            return values;
        }

        _lightPlusSaturationA = Fill(leaf => leaf.Cells.LightCurrentA + leaf.Cells.SaturationCurrentA);
        _saturationA = Fill(leaf => leaf.Cells.SaturationCurrentA);
        _seriesOhm = Fill(leaf => leaf.Cells.SeriesOhm);
        _shuntS = Fill(leaf => leaf.Cells.ShuntSiemens);
        _perIdealityV = Fill(leaf => 1 / leaf.Cells.IdealityV);
        _bypassSaturationA = Fill(leaf => leaf.Bypass.SaturationCurrentA);
        _perBypassV = Fill(leaf => 1 / leaf.Bypass.IdealityV);
        IdealityV = Fill(leaf => leaf.Cells.IdealityV);
        CriticalV = Fill(leaf => leaf.Cells.IdealityV * Math.Log(leaf.Cells.IdealityV / (Math.Sqrt(2) * leaf.Cells.SaturationCurrentA)));
        BypassIdealityV = Fill(leaf => leaf.Bypass.IdealityV);
        BypassCriticalV = Fill(leaf => leaf.Bypass.SaturationCurrentA > 0
            ? leaf.Bypass.IdealityV * Math.Log(leaf.Bypass.IdealityV / (Math.Sqrt(2) * leaf.Bypass.SaturationCurrentA))
            : double.PositiveInfinity);
        OpenGuessV = Fill(OpenCircuitGuessV);
        _bypassSilentAboveV = BypassReach * leaves.Max(leaf => leaf.Bypass.IdealityV);

        JunctionV = new double[padded];
        VoltageV = new double[padded];
        CurrentA = new double[padded];
        VoltPerJunctionVolt = new double[padded];
        CellSlopeS = new double[padded];
        CellCurvature = new double[padded];
        BypassSlopeS = new double[padded];
    }

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

    public double[] IdealityV { get; }

    public double[] CriticalV { get; }

    public double[] BypassIdealityV { get; }

    public double[] BypassCriticalV { get; }

    /// <summary>A guess of each group's open-circuit junction voltage, V.</summary>
    public double[] OpenGuessV { get; }

    /// <summary>1/ab of each group's bypass diode, 1/V.</summary>
    public double[] PerBypassV => _perBypassV;

    /// <summary>Everything that follows from <see cref="JunctionV"/>.</summary>
    public void Evaluate()
    {
        for (int i = 0; i < JunctionV.Length; i += 2)
        {
            Vector128<double> x = Vector128.Create(JunctionV, i);
            Vector128<double> perA = Vector128.Create(_perIdealityV, i);
            Vector128<double> rs = Vector128.Create(_seriesOhm, i);
            Vector128<double> shunt = Vector128.Create(_shuntS, i);
            Vector128<double> diodeA = Vector128.Create(_saturationA, i) * Exponential.Of(x * perA);
            Vector128<double> diodeS = diodeA * perA;
            Vector128<double> junctionS = diodeS + shunt;
            Vector128<double> cellsA = Vector128.Create(_lightPlusSaturationA, i) - diodeA - (x * shunt);
            Vector128<double> stretch = Vector128<double>.One + (junctionS * rs);
            Vector128<double> v = x - (cellsA * rs);

            Vector128<double> saturation = Vector128.Create(_bypassSaturationA, i);
            Vector128<double> bypassA = -saturation;
            Vector128<double> bypassS = Vector128<double>.Zero;
            if (Vector128.LessThanAny(v, Vector128.Create(_bypassSilentAboveV)))
            {
                Vector128<double> perAb = Vector128.Create(_perBypassV, i);
                Vector128<double> forwardA = saturation * Exponential.Of(-v * perAb);
                bypassA = forwardA - saturation;
                bypassS = forwardA * perAb;
            }

            v.CopyTo(VoltageV, i);
            (cellsA + bypassA).CopyTo(CurrentA, i);
            stretch.CopyTo(VoltPerJunctionVolt, i);
            (junctionS / stretch).CopyTo(CellSlopeS, i);
            (diodeS * perA).CopyTo(CellCurvature, i);
            bypassS.CopyTo(BypassSlopeS, i);
        }
    }

    private static double OpenCircuitGuessV(CircuitTree.Group leaf)
    {
        double diodeV = leaf.Cells.IdealityV * Math.Log((Math.Max(leaf.Cells.LightCurrentA, 0) / leaf.Cells.SaturationCurrentA) + 1);
        return Math.Min(diodeV, leaf.Cells.LightCurrentA / leaf.Cells.ShuntSiemens);
    }
}
