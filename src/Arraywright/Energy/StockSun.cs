namespace Arraywright.Energy;

/// <summary>What one kind of panel sees, step by step: means over each step.</summary>
/// <param name="PlaneWPerM2">Irradiance in its plane, W/m².</param>
/// <param name="UsefulWPerM2">The same less what glass reflects at low angles, the horizon hides and dirt keeps off, W/m².</param>
/// <param name="ShadedFraction">Share kept off by shade at that hour, 0 to 1; steady shade is the panel's own.</param>
/// <param name="CellC">Cell temperature, °C.</param>
/// <param name="ClearWPerM2">What the useful irradiance would be under a clear sky, W/m²: what it may rise to within the step.</param>
public sealed record StockSun(double[] PlaneWPerM2, double[] UsefulWPerM2, double[] ShadedFraction, double[] CellC, double[] ClearWPerM2);
