namespace Arraywright.Electrical.Solving;

/// <summary>Where every group stood at a solved point, to start from there again after conditions have changed a little.</summary>
/// <remarks>A group that gave power is remembered by how far it stood below its open circuit, which moves with sun and heat; a bypassed one by its voltage.</remarks>
internal sealed class Standing(Network network)
{
    private readonly double[] _belowOpenV = new double[network.Leaves.Count];
    private readonly double[] _bypassedV = new double[network.Leaves.Count];
    private bool _isKept;

    /// <summary>Remembers where the network stands.</summary>
    public void Keep()
    {
        double[] junctionV = network.Leaves.JunctionV;
        double[] openV = network.Leaves.OpenGuessV;
        for (int leaf = 0; leaf < _belowOpenV.Length; leaf++)
        {
            _bypassedV[leaf] = Math.Min(0, junctionV[leaf]);
            _belowOpenV[leaf] = openV[leaf] - junctionV[leaf];
        }

        _isKept = true;
    }

    /// <summary>Puts the network about there; where nothing is remembered, at open circuit.</summary>
    public void Recall()
    {
        if (!_isKept)
        {
            network.StartAtOpenCircuit();
            return;
        }

        double[] junctionV = network.Leaves.JunctionV;
        double[] openV = network.Leaves.OpenGuessV;
        for (int leaf = 0; leaf < _belowOpenV.Length; leaf++)
        {
            junctionV[leaf] = _bypassedV[leaf] < 0 ? _bypassedV[leaf] : openV[leaf] - _belowOpenV[leaf];
        }
    }
}
