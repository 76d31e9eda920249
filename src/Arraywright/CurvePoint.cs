namespace Arraywright;

/// <summary>One point of a current-voltage curve.</summary>
/// <param name="VoltageV">Volts.</param>
/// <param name="CurrentA">Amps.</param>
/// <param name="PowerW">Watts.</param>
public readonly record struct CurvePoint(double VoltageV, double CurrentA, double PowerW);
