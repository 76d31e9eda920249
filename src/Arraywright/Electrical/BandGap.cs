using Arraywright.Gear;

namespace Arraywright.Electrical;

/// <summary>Band gap of the cells as De Soto's temperature law uses it.</summary>
/// <param name="StandardEv">At 25 °C, eV.</param>
/// <param name="PerK">Its change a kelvin as a fraction of the value at 25 °C (1/K); negative.</param>
public readonly record struct BandGap(double StandardEv, double PerK)
{
    /// <summary>At a cell temperature, eV.</summary>
    /// <param name="cellC">Cell temperature, °C.</param>
    public double AtEv(double cellC) => StandardEv * (1 + (PerK * (cellC - 25)));

    /// <summary>The usual figures of a technology.</summary>
    /// <remarks>
    /// Silicon: De Soto, Klein, Beckman, Solar Energy 80 (2006) 78. The thin films are from memory of the semiconductor literature
    /// (CdTe 1.475 eV; CIGS with usual gallium share 1.15 eV; hydrogenated amorphous silicon 1.75 eV) and uncertain by 0.1 eV;
    /// the fit to the label takes up what is wrong, because it reproduces the label's own voltage coefficient.
    /// </remarks>
    public static BandGap Of(Technology technology) => technology switch
    {
        Technology.CadmiumTelluride => new(1.475, -0.0003),
        Technology.Cigs => new(1.15, -0.0001),
        Technology.AmorphousSilicon => new(1.75, -0.00025),
        _ => new(1.121, -0.0002677),
    };
}
