using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Reference.Tests.Climate;

namespace Arraywright.Reference.Tests;

/// <summary>What the data set's own reduction gives for one measured curve.</summary>
/// <param name="Id">Joins the curve to its points.</param>
/// <param name="Utc">When, universal time.</param>
/// <param name="ModuleC">Temperature of the module, °C.</param>
/// <param name="ShortCircuitA">Isc, A.</param>
/// <param name="OpenCircuitV">Voc, V.</param>
/// <param name="MaximumPowerA">Imp, A.</param>
/// <param name="MaximumPowerV">Vmp, V.</param>
/// <param name="Steady">The sun stood still before and after.</param>
internal sealed record MeasuredFeatures(
    string Id, DateTime Utc, double ModuleC, double ShortCircuitA, double OpenCircuitV, double MaximumPowerA, double MaximumPowerV, bool Steady)
{
    public double PowerW => MaximumPowerA * MaximumPowerV;
}

/// <summary>
/// shared/measured: outdoor curves of one anonymous 60-cell silicon module, March and April 2019, no label known
/// (R data-analysis package SunsVoc 0.1.2, BSD 3-Clause; README.md there says how the features were made). Irradiance as the module
/// sees it is uncertain by 5 to 8 %, so that curves are compared at equal short-circuit current.
/// </summary>
internal static class MeasuredModule
{
    /// <summary>Features of all curves, in file order. Skips the test where the data are not at hand.</summary>
    public static List<MeasuredFeatures> Features() =>
        [.. Rows("measured/module_iv_features.csv").Select(field => new MeasuredFeatures(
            field[0], DateTime.Parse(field[1], CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal), Number(field[3]), Number(field[4]), Number(field[5]), Number(field[6]), Number(field[7]), field[10] == "1"))];

    /// <summary>Points by curve, of one kind ("normal" or "stepped": part of the module shaded, a bypass diode conducting).</summary>
    public static Dictionary<string, CurvePoint[]> Curves(string kind) =>
        Rows("measured/module_iv_curves.csv")
            .Where(field => field[1] == kind)
            .GroupBy(field => field[0], field => new CurvePoint(Number(field[4]), Number(field[5])))
            .ToDictionary(curve => curve.Key, curve => curve.ToArray());

    private static IEnumerable<string[]> Rows(string relative) =>
        File.ReadLines(SharedFiles.PathOrSkip(relative)).Skip(1).Select(line => line.Split(','));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
