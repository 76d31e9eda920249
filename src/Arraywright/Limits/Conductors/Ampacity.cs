using System.Globalization;
using Arraywright.Gear;
using Arraywright.Limits.Rules;
using static Arraywright.Limits.Conductors.AmpacityTables;

namespace Arraywright.Limits.Conductors;

/// <summary>What a conductor carries as it lies.</summary>
/// <param name="CarriesA">The maximum circuit current (1.25 × Isc) that it may be given, A; 0 where no table has its size, or the place is too hot.</param>
/// <param name="Working">The arithmetic as a person would write it.</param>
/// <param name="Source">The tables.</param>
public sealed record Ampacity(double CarriesA, string Working, string Source)
{
    /// <summary>NEC 690.8(B)(1): conductors are rated 125 % of the maximum circuit current, before correction.</summary>
    private const double Continuous = 1.25;

    /// <summary>The ampacity of a size in a place.</summary>
    /// <param name="areaMm2">Cross-section, mm².</param>
    /// <param name="place">How it lies and after whose rules.</param>
    public static Ampacity Of(double areaMm2, ConductorPlace place) => place.Rules == RuleSet.Us ? Us(areaMm2, place) : Iec(areaMm2, place);

    /// <summary>The lower of: the terminals' column over 1.25, uncorrected; the insulation's column with every correction (NEC 690.8(B), 110.14(C)).</summary>
    private static Ampacity Us(double areaMm2, ConductorPlace place)
    {
        Column terminal = place.TerminalC switch { 60 => Column.Us60, 75 => Column.Us75, _ => Column.Us90 };
        Column insulation = place.Laying == Laying.FreeAir && place.Class == CableClass.Flexible ? Column.UsFreeAir90 : Column.Us90;
        double terminalA = OfA(terminal, areaMm2);
        double tableA = OfA(insulation, areaMm2);
        double ambient = Correction.UsAmbient(90, place.AmbientC);
        double bundle = Correction.UsBundle(place.Loaded);
        double atTerminalsA = terminalA / Continuous;
        double asLaidA = tableA * ambient * bundle;
        string together = bundle < 1 ? $" × {Figures.Plain(bundle)} for {place.Loaded} wires together" : "";
        return new Ampacity(
            Math.Min(atTerminalsA, asLaidA),
            $"terminals of {Figures.Celsius(place.TerminalC)}: {Figures.Label(terminalA, "A")} / 1.25 = {Figures.Result(atTerminalsA, "A")}; as laid: {Figures.Label(tableA, "A")} × {Figures.Plain(ambient)} at {Figures.Celsius(place.AmbientC)}{together} = {Figures.Result(asLaidA, "A")}",
            $"NEC 690.8(B), 110.14(C); {Table(terminal)}{(insulation == Column.UsFreeAir90 ? $" and {Table(insulation)}" : "")}; Table 310.15(B)(1)");
    }

    private static Ampacity Iec(double areaMm2, ConductorPlace place)
    {
        (Column column, double limitC, double referenceC) = (place.Laying, place.Class) switch
        {
            (Laying.Conduit, _) => (Column.IecConduit, 90.0, 30.0),
            (_, CableClass.Fixed) => (Column.IecFixed, 90.0, 30.0),
            (Laying.FreeAir, _) => (Column.IecFreeAir, 120.0, 60.0),
            _ => (Column.IecPair, 120.0, 60.0),
        };
        double tableA = OfA(column, areaMm2);
        double ambient = Correction.IecAmbient(limitC, referenceC, place.AmbientC);
        int circuits = (place.Loaded + 1) / 2;
        double group = Correction.IecGrouping(circuits);
        double carriesA = tableA * ambient * group;
        string together = group < 1 ? $" × {Figures.Plain(group)} for {circuits} pairs together" : "";
        return new Ampacity(
            carriesA,
            ambient < 1 || group < 1
                ? $"{Figures.Label(tableA, "A")} × {Two(ambient)} at {Figures.Celsius(place.AmbientC)}{together} = {Figures.Result(carriesA, "A")}"
                : $"{Figures.Label(tableA, "A")}, all of it at {Figures.Celsius(place.AmbientC)}",
            $"{Table(column)}{(group < 1 ? "; IEC 60364-5-52 Table B.52.17" : "")}");
    }

    private static string Two(double factor) => factor.ToString("0.##", CultureInfo.InvariantCulture);
}
