namespace Arraywright.Electrical;

/// <summary>How far a fitted curve misses the label, each as a signed fraction of the label figure.</summary>
/// <param name="ShortCircuit">Short-circuit current.</param>
/// <param name="OpenCircuit">Open-circuit voltage.</param>
/// <param name="MaximumPowerCurrent">Current at the label's maximum power voltage.</param>
/// <param name="Slope">dP/dV at the label's maximum power voltage, over the label's Imp; 0 where the power has its summit there.</param>
/// <param name="OpenCircuitCoefficient">dVoc/dT at 25 °C, the exact derivative, against the label's coefficient (against 0.01 %/K of Voc where that is larger).</param>
public readonly record struct FitResiduals(
    double ShortCircuit,
    double OpenCircuit,
    double MaximumPowerCurrent,
    double Slope,
    double OpenCircuitCoefficient)
{
    /// <summary>The largest of them, without its sign.</summary>
    public double Largest => Math.Max(
        Math.Max(Math.Max(Math.Abs(ShortCircuit), Math.Abs(OpenCircuit)), Math.Abs(MaximumPowerCurrent)),
        Math.Max(Math.Abs(Slope), Math.Abs(OpenCircuitCoefficient)));
}

/// <summary>The five-parameter model fitted to a label, and how well it fits.</summary>
/// <param name="Parameters">At standard test conditions, for the whole panel. Physical: IL, I0, a over 0; Rs from 0; Gsh over 0.</param>
/// <param name="BandGap">The band gap that the temperature law uses: the technology's own, or an effective one (see <paramref name="Note"/>).</param>
/// <param name="LightCurrentAPerK">α of the temperature law, from the label, A/K.</param>
/// <param name="IdealityPerCell">n = a·q/(Ns·k·T). Of the label's cell count, which may be assumed; nothing else depends on that count.</param>
/// <param name="Residuals">What is left of the five conditions.</param>
/// <param name="Note">In plain words: what was fitted, what gave way, by how much.</param>
public sealed record PanelFit(
    DiodeParameters Parameters,
    BandGap BandGap,
    double LightCurrentAPerK,
    double IdealityPerCell,
    FitResiduals Residuals,
    string Note)
{
    /// <summary>The largest residual of a fit that counts as meeting the label.</summary>
    public const double Tolerance = 1e-8;

    /// <summary>True when physical parameters meet all five conditions of the label; false when the nearest physical ones stand in.</summary>
    public bool Physical => Residuals.Largest <= Tolerance;

    /// <summary>The five parameters of the whole panel under other conditions.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="DeSoto.Translate"/>.</exception>
    public DiodeParameters At(Conditions conditions) =>
        DeSoto.Translate(Parameters, BandGap, LightCurrentAPerK, Conditions.Standard, conditions);
}
