using System.Collections.Immutable;
using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits.Conductors;

/// <summary>What a conductor must do.</summary>
/// <param name="DesignA">The current it must be able to carry, A.</param>
/// <param name="OperatingA">What it carries in strong sun, A.</param>
/// <param name="OperatingV">The volts of the array then, V.</param>
/// <param name="LengthM">One-way length, m; the drop counts there and back.</param>
/// <param name="OtherDropV">What everything else between the panels and the unit drops, V.</param>
public readonly record struct ConductorDuty(double DesignA, double OperatingA, double OperatingV, double LengthM, double OtherDropV);

/// <summary>A chosen size.</summary>
/// <param name="Size">The size.</param>
/// <param name="Ampacity">What it carries as it lies.</param>
/// <param name="DropFraction">What it and everything else drops there and back, share of the volts.</param>
/// <param name="IsEnough">False where even the thickest of the table carries too little, or drops more than wanted.</param>
public sealed record ConductorChoice(ConductorSize Size, Ampacity Ampacity, double DropFraction, bool IsEnough);

/// <summary>Chooses the thinnest size that carries the current as it lies and drops no more than wanted.</summary>
public static class ConductorSizing
{
    /// <summary>Drop from array to unit that is aimed at, share of the volts. Common practice for small arrays at low voltage, 2 to 3 %; NEC 210.19 advises 3 % for a branch.</summary>
    public const double UsualDropFraction = 0.03;

    /// <summary>Solar cable thinner than panel leads is hardly sold: 4 mm² or 12 AWG. Common practice.</summary>
    private const double ThinnestMm2 = 3.3;

    /// <summary>Sizes to choose from, thinnest first.</summary>
    public static ImmutableArray<ConductorSize> Offered(RuleSet rules) =>
        [.. (rules == RuleSet.Us ? ConductorSize.Gauges : ConductorSize.Metric).Where(size => size.AreaMm2 >= ThinnestMm2)];

    /// <summary>The next thicker size of the same kind, mm² or gauge; null above the thickest.</summary>
    public static ConductorSize? Thicker(ConductorSize size) =>
        Offered(size.IsGauge ? RuleSet.Us : RuleSet.Iec).FirstOrDefault(other => other.AreaMm2 > size.AreaMm2 * 1.005);

    /// <summary>The thinnest size that will do; the thickest of all where none does.</summary>
    /// <param name="duty">What it must do.</param>
    /// <param name="place">How it lies and after whose rules.</param>
    /// <param name="maxDropFraction">Drop wanted at most, share of the volts.</param>
    public static ConductorChoice Choose(ConductorDuty duty, ConductorPlace place, double maxDropFraction) =>
        Choose(place.Rules, size => Judge(size, duty, place, maxDropFraction));

    /// <summary>The thinnest size that will do as somebody judges it; the thickest of all where none does.</summary>
    internal static ConductorChoice Choose(RuleSet rules, Func<ConductorSize, ConductorChoice> judge)
    {
        ConductorChoice? choice = null;
        foreach (ConductorSize size in Offered(rules))
        {
            choice = judge(size);
            if (choice.IsEnough)
            {
                return choice;
            }
        }

        return choice!;
    }

    /// <summary>One size against a duty.</summary>
    public static ConductorChoice Judge(ConductorSize size, ConductorDuty duty, ConductorPlace place, double maxDropFraction)
    {
        double dropV = duty.OtherDropV + (2 * duty.OperatingA * duty.LengthM * CopperResistance.PerMetreOhm(size.AreaMm2, place.Class, Cable.ConductorC));
        return Judge(size, duty.DesignA, duty.OperatingV > 0 ? dropV / duty.OperatingV : 0, place, maxDropFraction);
    }

    /// <summary>One size against a current, its drop known.</summary>
    internal static ConductorChoice Judge(ConductorSize size, double designA, double dropFraction, ConductorPlace place, double maxDropFraction)
    {
        Ampacity ampacity = Ampacity.Of(size.AreaMm2, place);
        return new ConductorChoice(size, ampacity, dropFraction, !Figures.Over(designA, ampacity.CarriesA) && !Figures.Over(dropFraction, maxDropFraction));
    }
}
