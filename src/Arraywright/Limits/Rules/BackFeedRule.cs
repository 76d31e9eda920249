using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>What the other strings drive into a string that fails short, against the panels' largest series fuse; and when string fuses become compulsory.</summary>
internal sealed class BackFeedRule : IRule
{
    public RuleCard Card { get; } = new(
        "back_feed",
        "1.25 × the other strings' short-circuit current, into each panel in turn, against the largest series fuse on its label; over it each such string needs a fuse, and a standard size must fit",
        "NFPA 70 (NEC) 690.8(A), 690.9(A); IEC 62548 for the fuse window",
        Level.Stop);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        FuseNeeds needs = new(context);
        bool noneFits = needs.Fuses.Any(fuse => fuse.SizeA is null);
        Level level = noneFits ? Level.Stop : needs.Unknown.Length > 0 ? Level.Ask : Level.Go;
        yield return Figure(needs) with
        {
            Level = level,
            Note = level switch
            {
                Level.Stop => $"String fuses are needed and no standard size fits string {needs.Fuses.First(fuse => fuse.SizeA is null).String + 1}: fewer strings side by side.",
                Level.Ask => $"The label of {needs.Unknown[0].Panel} gives no largest series fuse. {(needs.Fuses.Length > 0 ? $"Take it that fuses are needed ({Fuses(context, needs.Fuses)}), and find that figure first." : "Find that figure first.")}",
                _ => needs.Over.Length > 0 ? $"Fuses are compulsory: {Fuses(context, needs.Fuses)}." : Silent(needs),
            },
        };
    }

    /// <summary>Most label amps that the other strings may offer together before this one is stopped, or asked about where nothing worse than <see cref="Level.Go"/> will do, A.</summary>
    /// <param name="alone">The string by itself.</param>
    /// <param name="worst">The worst that may be said.</param>
    /// <returns>Infinite where a fuse settles it; negative where its own blocks are too strong already.</returns>
    public static double MostBesideA(RuleContext alone, Level worst)
    {
        FuseNeeds needs = new(alone);
        bool fuseFits = needs.Fuse(0).SizeA is not null;
        double mostA = double.PositiveInfinity;
        foreach (BackFeed feed in needs.All)
        {
            double? ratingA = needs.RatingA(feed);
            if (!fuseFits || (ratingA is null && worst == Level.Go))
            {
                double besideA = ((ratingA ?? FuseNeeds.StrongA(alone.Panel(feed.Panel))) / StrongSunCurrentRule.Factor) - feed.SameBlockA;

                // By itself a string needs no fuse for what no label forbids: that is only asked about.
                mostA = Math.Min(mostA, ratingA is null && worst > Level.Go ? Math.Max(besideA, 0) : besideA);
            }
        }

        return mostA;
    }

    /// <summary>The most that this gives for any string that holds a panel, A: where its label gives a figure, a fuse may settle it.</summary>
    public static double MostBesideA(Panel panel, Level worst) =>
        panel.MaxSeriesFuseA is null && worst == Level.Go ? FuseNeeds.StrongA(panel) / StrongSunCurrentRule.Factor : double.PositiveInfinity;

    private Finding Figure(FuseNeeds needs)
    {
        // The panel with the least room; where no label says, the one fed the most.
        BackFeed worst = needs.All.Where(feed => needs.RatingA(feed) is > 0).MaxBy(feed => feed.ReverseA / needs.RatingA(feed)!.Value)
            ?? needs.All.MaxBy(feed => feed.ReverseA)!;
        double? ratingA = needs.RatingA(worst);
        string others = Figures.Label(worst.OtherStringsA + worst.SameBlockA, "A");
        string reverse = ratingA is null ? Figures.Result(worst.ReverseA, "A") : Figures.Result(worst.ReverseA, ratingA.Value, "A");
        return new Finding(
            Card.Name,
            "Current the rest can drive into a failed panel against its largest series fuse",
            Level.Go,
            worst.ReverseA,
            ratingA,
            "A",
            worst.ReverseA > 0
                ? $"1.25 × {others} from the others = {reverse} into string {worst.String + 1} ({worst.Panel}: {(ratingA is null ? "no figure" : Figures.Label(ratingA.Value, "A"))})"
                : "one string: nothing beside it can feed it",
            Card.Source);
    }

    private static string Fuses(RuleContext context, StringFuse[] fuses) =>
        fuses.Length == context.Wiring.Strings.Length && fuses.DistinctBy(fuse => fuse.SizeA).Count() == 1
            ? $"each string needs a {Figures.Label(fuses[0].SizeA!.Value, "A")} gPV fuse"
            : string.Join(", ", fuses.Select(fuse => $"string {fuse.String + 1} needs a {Figures.Label(fuse.SizeA!.Value, "A")} gPV fuse"));

    private static string? Silent(FuseNeeds needs) =>
        needs.All.FirstOrDefault(feed => feed.ReverseA > 0 && needs.RatingA(feed) is null) is { } silent
            ? $"The label of {silent.Panel} gives no largest series fuse; with no more than a second string like it, no panel minds."
            : null;
}
