using Arraywright.Gear;
using CsCheck;

namespace Arraywright.Testing;

/// <summary>Random panel labels that a maker could print: 5 W to 700 W, thin film to heterojunction.</summary>
/// <remarks>The ranges are of each technology's datasheets, from memory, and are not those that the code under test uses.</remarks>
public static partial class Gens
{
    /// <summary>Everything stated and consistent; figures are not rounded to print.</summary>
    public static Gen<PanelLabel> Label { get; } = Gen.OneOf(
        Labels(Technology.CrystallineSilicon, [18, 32, 36, 48, 54, 60, 72], (0.60, 0.70), (0.70, 0.80), (-0.36, -0.27), (-0.45, -0.36)),
        Labels(Technology.MonoPerc, [32, 36, 54, 60, 66, 68, 72, 78], (0.65, 0.70), (0.75, 0.80), (-0.31, -0.25), (-0.40, -0.33)),
        Labels(Technology.Multicrystalline, [18, 36, 54, 60, 72], (0.59, 0.635), (0.70, 0.785), (-0.37, -0.29), (-0.47, -0.39)),
        Labels(Technology.TopCon, [36, 54, 60, 66, 72, 78], (0.70, 0.74), (0.78, 0.82), (-0.27, -0.24), (-0.32, -0.28)),
        Labels(Technology.Heterojunction, [54, 60, 66, 72, 96], (0.715, 0.755), (0.77, 0.83), (-0.26, -0.22), (-0.30, -0.26)),
        Labels(Technology.BackContact, [32, 36, 54, 66, 72, 96, 104], (0.67, 0.73), (0.76, 0.82), (-0.28, -0.22), (-0.36, -0.28)),
        Labels(Technology.CadmiumTelluride, [36, 108, 116, 154, 264], (0.77, 0.87), (0.63, 0.77), (-0.28, -0.24), (-0.33, -0.25)),
        Labels(Technology.Cigs, [36, 72, 110, 150, 172], (0.55, 0.69), (0.59, 0.73), (-0.36, -0.26), (-0.44, -0.31)),
        Labels(Technology.AmorphousSilicon, [14, 22, 45, 72, 108], (0.82, 0.92), (0.54, 0.67), (-0.38, -0.28), (-0.26, -0.20)));

    /// <summary>The panels of <see cref="Label"/>.</summary>
    public static Gen<Panel> Panel { get; } = Label.Select(label =>
        PanelReader.Read(label).Panel ?? throw new InvalidOperationException($"A feasible label was refused: {label}"));

    private static Gen<PanelLabel> Labels(
        Technology technology,
        int[] cells,
        (double Low, double High) cellV,
        (double Low, double High) fillFactor,
        (double Low, double High) vocPercentPerK,
        (double Low, double High) powerPercentPerK) =>
        Gen.Select(
            Gen.OneOf(cells),
            Between(cellV),
            Between(fillFactor),
            Gen.Double[0.3, 18.5],
            Gen.Double[0, 1],
            Between(vocPercentPerK),
            Between(powerPercentPerK)).Where((count, volts, fill, amps, _, _, _) => count * volts * amps * fill is >= 5 and <= 700)
        .Select((count, volts, fill, amps, split, vocPercent, powerPercent) =>
        {
            // Datasheets put 0.74 to 0.84 of what the fill factor lacks into the voltage, thin film 0.64 to 0.74.
            bool thinFilm = technology >= Technology.CadmiumTelluride;
            double share = (thinFilm ? 0.64 : 0.74) + (0.1 * split);
            double vocV = count * volts;
            double vmpV = vocV * (1 - (share * (1 - fill)));
            double powerW = vocV * amps * fill;
            return new PanelLabel
            {
                Name = "any",
                Technology = technology,
                PowerW = powerW,
                OpenCircuitV = vocV,
                ShortCircuitA = amps,
                MaximumPowerV = vmpV,
                MaximumPowerA = powerW / vmpV,
                OpenCircuitPerK = vocPercent / 100,
                ShortCircuitPerK = (thinFilm ? 0.02 + (0.05 * split) : 0.03 + (0.03 * split)) / 100,
                PowerPerK = powerPercent / 100,
                Cells = count,
                BypassDiodes = thinFilm || count < 30 ? 1 : count <= 48 ? 2 : 3,
                MaxSeriesFuseA = Math.Ceiling(amps * 1.4),
                MaxSystemVoltageV = 600,
                ToleranceFraction = 0.03,
                NoctC = 45,
            };
        });

    private static Gen<double> Between((double Low, double High) range) => Gen.Double[range.Low, range.High];
}
