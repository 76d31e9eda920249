using Arraywright.Gear;

namespace Arraywright.Electrical;

/// <summary>The figures of a label that the model is fitted to, at standard test conditions.</summary>
/// <param name="ShortCircuitA">Isc, A; over 0.</param>
/// <param name="OpenCircuitV">Voc, V; over 0.</param>
/// <param name="MaximumPowerV">Vmp, V; between 0 and Voc.</param>
/// <param name="MaximumPowerA">Imp, A; between 0 and Isc.</param>
/// <param name="OpenCircuitVPerK">dVoc/dT at 25 °C, V/K; negative on a sound label.</param>
/// <param name="ShortCircuitAPerK">dIsc/dT at 25 °C, A/K; taken as the α of the light current, as De Soto does.</param>
/// <param name="Cells">Cells in series; only the reported ideality depends on it.</param>
/// <param name="Technology">Sets the band gap.</param>
public sealed record LabelPoints(
    double ShortCircuitA,
    double OpenCircuitV,
    double MaximumPowerV,
    double MaximumPowerA,
    double OpenCircuitVPerK,
    double ShortCircuitAPerK,
    int Cells,
    Technology Technology)
{
    /// <summary>False where the figures describe no panel at all; true for a merely odd label.</summary>
    internal bool DescribeAPanel =>
        MaximumPowerV > 0 && MaximumPowerV < OpenCircuitV && double.IsFinite(OpenCircuitV)
        && MaximumPowerA > 0 && MaximumPowerA < ShortCircuitA && double.IsFinite(ShortCircuitA)
        && double.IsFinite(OpenCircuitVPerK) && double.IsFinite(ShortCircuitAPerK) && Cells > 0;
}
