namespace Arraywright.Electrical;

/// <summary>A point of a current-voltage curve, computed or measured.</summary>
/// <param name="VoltageV">Volts at the terminals.</param>
/// <param name="CurrentA">Amps delivered.</param>
public readonly record struct CurvePoint(double VoltageV, double CurrentA)
{
    /// <summary>Watts delivered.</summary>
    public double PowerW => VoltageV * CurrentA;
}
