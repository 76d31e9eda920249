using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>What a string leaves for the strings beside it to drive back into its panels, put together position by position.</summary>
/// <param name="RatedA">Label amps beside it that its panels bear without a fuse, as far as their labels say, A.</param>
/// <param name="SilentA">The same of those whose labels say nothing, A.</param>
/// <param name="BornA">The largest fuse that all with a figure on their label bear, A.</param>
/// <param name="ShortCircuitA">Its label short-circuit current, A.</param>
internal readonly record struct BackFeedRoom(double RatedA, double SilentA, double BornA, double ShortCircuitA)
{
    /// <summary>That of a string or a part of one; infinite where nothing is held.</summary>
    public static BackFeedRoom Of(Wiring part, RuleContext context)
    {
        (double ratedA, double silentA, double bornA) = (double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        foreach (BackFeed feed in BackFeed.Inside(part, context))
        {
            Panel panel = context.Panel(feed.Panel);
            if (panel.MaxSeriesFuseA is { } ratingA)
            {
                // What its panels bear is lessened by what a block adds inside the string, where the string's fuse does not help (IEC 62548, a fuse for a group).
                ratedA = Math.Min(ratedA, (ratingA / StrongSunCurrentRule.Factor) - feed.SameBlockA);
                bornA = Math.Min(bornA, ratingA - (StrongSunCurrentRule.Factor * feed.SameBlockA));
            }
            else
            {
                silentA = Math.Min(silentA, (FuseNeeds.StrongA(panel) / StrongSunCurrentRule.Factor) - feed.SameBlockA);
            }
        }

        return new BackFeedRoom(ratedA, silentA, bornA, LabelSums.ShortCircuitA(part, context.Stock));
    }

    /// <summary>That of both in one string.</summary>
    public BackFeedRoom InSeriesWith(BackFeedRoom next) => new(
        Math.Min(RatedA, next.RatedA),
        Math.Min(SilentA, next.SilentA),
        Math.Min(BornA, next.BornA),
        Math.Max(ShortCircuitA, next.ShortCircuitA));

    /// <summary>The fuse that the string would take.</summary>
    public StringFuse Fuse(int index, RuleSet rules) => new(index, rules, ShortCircuitA, BornA);

    /// <summary>Most label amps that the other strings may offer together before this one is stopped, or asked about where nothing worse than <see cref="Level.Go"/> will do, A.</summary>
    /// <returns>Infinite where a fuse settles it; negative where its own blocks are too strong already.</returns>
    public double BesideA(RuleSet rules, Level worst)
    {
        bool fuseFits = Fuse(0, rules).SizeA is not null;
        double ratedA = fuseFits ? double.PositiveInfinity : RatedA;

        // By itself a string needs no fuse for what no label forbids: that is only asked about.
        double silentA = worst == Level.Go ? SilentA : fuseFits ? double.PositiveInfinity : Math.Max(SilentA, 0);
        return Math.Min(ratedA, silentA);
    }

    /// <summary>The most that any string that holds a panel leaves, A: where its label gives a figure, a fuse may settle it.</summary>
    public static double BesideA(Panel panel, Level worst) =>
        panel.MaxSeriesFuseA is null && worst == Level.Go ? FuseNeeds.StrongA(panel) / StrongSunCurrentRule.Factor : double.PositiveInfinity;
}
