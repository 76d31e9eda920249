using Arraywright.Gear;
using Arraywright.Limits.Conductors;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts;

/// <summary>What the leads of a panel and the connectors on them bear.</summary>
/// <remarks>
/// Nobody states it: the maker chose them for the panel's own current and for the largest series fuse on its label (IEC 61730, reverse current;
/// from memory), and beyond that they are taken to be as such leads usually are. Terminals of gear (NEC 110.14(C)) do not come in: a lead
/// ends in its own connector and box.
/// </remarks>
/// <param name="OwnA">What its own panel sends through it in strong sun, A.</param>
/// <param name="BearsA">The weaker of copper and connector, A.</param>
/// <param name="IsStated">Whether the plan states it; else it is what is usual.</param>
/// <param name="Working">How it was found, as a person would write it.</param>
internal readonly record struct LeadRating(double OwnA, double BearsA, bool IsStated, string Working)
{
    private const double LeadInsulationC = 90;

    /// <summary>The rating of a panel's leads.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="connectorA">The lowest rating of the array's connectors, where the plan states it, A.</param>
    /// <param name="place">How the plan's cable lies: its rules and its heat.</param>
    public static LeadRating Of(Panel panel, double? connectorA, ConductorPlace place)
    {
        double ownA = StrongSunCurrentRule.Factor * panel.ShortCircuitA;
        Ampacity ampacity = Ampacity.Of(UsualRatings.LeadMm2, place with
        {
            Laying = Laying.FreeAir,
            Class = CableClass.Flexible,
            Loaded = ConductorPlace.UsualLoaded,
            TerminalC = LeadInsulationC,
        });
        double vouchedA = Math.Max(ownA, panel.MaxSeriesFuseA ?? 0);
        double copperA = Math.Max(ampacity.CarriesA, vouchedA);
        double matedA = connectorA ?? Math.Max(UsualRatings.ConnectorA, ownA);
        string label = vouchedA > ampacity.CarriesA ? $", {Figures.Result(vouchedA, "A")} by {(vouchedA > ownA ? "its label's largest series fuse" : "its own panel's current")}" : "";
        return new LeadRating(
            ownA,
            Math.Min(copperA, matedA),
            connectorA is not null && matedA <= copperA,
            $"its connector {Figures.Label(matedA, "A")}{(connectorA is null ? ", the usual" : "")}; its copper {Figures.Result(ampacity.CarriesA, "A")}{label}");
    }
}
