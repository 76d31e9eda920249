namespace Arraywright.Electrical;

/// <summary>The five parameters of the single-diode model for one panel, or one group of its cells, under given conditions.</summary>
/// <remarks>I = IL − I0·(exp((V + I·Rs)/a) − 1) − (V + I·Rs)·Gsh. Plain doubles: this is what the solver works on.</remarks>
/// <param name="LightCurrentA">IL, A.</param>
/// <param name="SaturationCurrentA">I0, A.</param>
/// <param name="SeriesOhm">Rs, Ω.</param>
/// <param name="ShuntSiemens">Gsh = 1/Rsh, S. Never 0 in a circuit, so that a dark group still has a defined current.</param>
/// <param name="IdealityV">a = n·Ns·k·T/q, V, for all cells in series of this panel or group.</param>
public readonly record struct DiodeParameters(
    double LightCurrentA,
    double SaturationCurrentA,
    double SeriesOhm,
    double ShuntSiemens,
    double IdealityV)
{
    /// <summary>The parameters of one of <paramref name="groups"/> equal groups of this panel's cells in series.</summary>
    public DiodeParameters OneOf(int groups) => new(
        LightCurrentA,
        SaturationCurrentA,
        SeriesOhm / groups,
        ShuntSiemens * groups,
        IdealityV / groups);
}

/// <summary>A bypass diode: I = Is·(exp(V/a) − 1), V its own forward voltage. Held at one temperature (27 °C), as its drop matters little.</summary>
/// <param name="SaturationCurrentA">Is, A; 0 means there is no diode.</param>
/// <param name="IdealityV">a = n·k·T/q, V.</param>
public readonly record struct BypassDiode(double SaturationCurrentA, double IdealityV)
{
    /// <summary>No diode.</summary>
    public static BypassDiode None { get; } = new(0, 0.025);

    /// <summary>A Schottky diode that drops 0.5 V at the given current (0.4 to 0.6 V at rated current is common practice): Is = 1 µA.</summary>
    /// <param name="ratedA">Current at which it drops 0.5 V, A; over 1 mA.</param>
    public static BypassDiode Schottky(double ratedA) => new(1e-6, 0.5 / Math.Log((ratedA / 1e-6) + 1));
}
