namespace Arraywright.Electrical.Solving;

/// <summary>The network as it stood at one solved point.</summary>
internal sealed class Snapshot(int leaves)
{
    public double VoltageV { get; private set; }

    public double CurrentA { get; private set; }

    public double SlopeS { get; private set; }

    /// <summary>How far, in ideality voltages, the slopes may be off: see <see cref="Network.LastStep"/>.</summary>
    public double LastStep { get; private set; }

    public double PowerW => VoltageV * CurrentA;

    /// <summary>dP/dV, A.</summary>
    public double PowerSlopeA => CurrentA - (VoltageV * SlopeS);

    public double[] JunctionV { get; } = new double[leaves];

    public double[] Stretch { get; } = new double[leaves];

    public double[] CellSlopeS { get; } = new double[leaves];

    public double[] CellCurvature { get; } = new double[leaves];

    public double[] BypassSlopeS { get; } = new double[leaves];

    public void Take(Network network)
    {
        LeafBank bank = network.Leaves;
        VoltageV = network.VoltageV;
        CurrentA = network.CurrentA;
        SlopeS = network.SlopeS;
        LastStep = network.LastStep;
        bank.JunctionV.AsSpan(0, leaves).CopyTo(JunctionV);
        bank.VoltPerJunctionVolt.AsSpan(0, leaves).CopyTo(Stretch);
        bank.CellSlopeS.AsSpan(0, leaves).CopyTo(CellSlopeS);
        bank.CellCurvature.AsSpan(0, leaves).CopyTo(CellCurvature);
        bank.BypassSlopeS.AsSpan(0, leaves).CopyTo(BypassSlopeS);
    }

    /// <summary>Puts the network back there.</summary>
    public void GiveBack(Network network) => JunctionV.CopyTo(network.Leaves.JunctionV, 0);
}
