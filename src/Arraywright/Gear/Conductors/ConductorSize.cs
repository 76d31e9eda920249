namespace Arraywright.Gear;

/// <summary>A size of copper that is made and sold: mm² after IEC 60228, or a gauge of the AWG.</summary>
/// <param name="Name">As it is printed on the cable: "4 mm2", "12 AWG".</param>
/// <param name="AreaMm2">Cross-section of the copper, mm².</param>
/// <param name="IsGauge">True for a gauge of the AWG.</param>
public sealed record ConductorSize(string Name, double AreaMm2, bool IsGauge);
