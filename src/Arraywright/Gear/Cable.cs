namespace Arraywright.Gear;

/// <summary>The copper between panels and input.</summary>
/// <param name="LengthM">One-way length of the run from the array to the input, m; the current goes there and back.</param>
/// <param name="AreaMm2">Cross-section of its copper, mm².</param>
/// <param name="StringLengthM">One-way length of the extra run of each string to the point where strings join, m.</param>
/// <param name="StringAreaMm2">Cross-section of that run, mm².</param>
/// <param name="ContactOhm">Resistance of one mated connector, Ω.</param>
public sealed record Cable(
    Sourced<double> LengthM,
    Sourced<double> AreaMm2,
    Sourced<double> StringLengthM,
    Sourced<double> StringAreaMm2,
    Sourced<double> ContactOhm)
{
    /// <summary>Resistivity times metres of copper at 20 °C, Ω·mm²/m (100 % IACS), raised by 0.393 %/K to a conductor at 50 °C in the sun.</summary>
    private const double OhmMm2PerM = 0.017241 * (1 + (0.00393 * 30));

    /// <summary>Resistance of the run to the input, there and back, Ω.</summary>
    public double RunOhm => 2 * LengthM.Value * OhmMm2PerM / AreaMm2.Value;

    /// <summary>Resistance of one string's own run, there and back, Ω, without its contacts.</summary>
    public double StringRunOhm => 2 * StringLengthM.Value * OhmMm2PerM / StringAreaMm2.Value;
}
