namespace Arraywright.Electrical.Solving;

/// <summary>Newton's method held inside a bracket that shrinks: what keeps it from leaving, and from going to and fro for ever.</summary>
/// <remarks>
/// A Newton step may land on the other side again and again, each time a hair nearer. So a step that is more than half the one before last
/// goes to the middle of the bracket instead (R. P. Brent, <i>Algorithms for Minimization without Derivatives</i> (1973), chapter 4; from memory).
/// </remarks>
/// <param name="lowV">Lower end, V.</param>
/// <param name="highV">Upper end, V.</param>
internal ref struct NewtonBracket(double lowV, double highV)
{
    private double _lastV = double.PositiveInfinity;
    private double _beforeLastV = double.PositiveInfinity;

    /// <summary>Lower end, V.</summary>
    public double LowV { get; private set; } = lowV;

    /// <summary>Upper end, V.</summary>
    public double HighV { get; private set; } = highV;

    /// <summary>Makes a voltage one of the ends.</summary>
    /// <param name="voltageV">Within the bracket, V.</param>
    /// <param name="isLow">Whether what is sought lies above it.</param>
    public void Close(double voltageV, bool isLow) => (LowV, HighV) = isLow ? (voltageV, HighV) : (LowV, voltageV);

    /// <summary>Where to go from a voltage, V.</summary>
    /// <param name="voltageV">Where Newton stands, V.</param>
    /// <param name="newtonV">Where its step would lead, V; may be not a number.</param>
    public double Next(double voltageV, double newtonV)
    {
        double allowedV = 0.5 * _beforeLastV;
        bool isFit = newtonV > LowV && newtonV < HighV && Math.Abs(newtonV - voltageV) <= allowedV;
        double nextV = isFit ? newtonV : 0.5 * (LowV + HighV);
        (_beforeLastV, _lastV) = (_lastV, Math.Abs(nextV - voltageV));
        return nextV;
    }
}
