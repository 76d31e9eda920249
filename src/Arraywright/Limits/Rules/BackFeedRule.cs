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
        BackFeed[] all = [.. BackFeed.Into(context)];
        BackFeed[] over = [.. all.Where(feed => RatingA(context, feed) is { } ratingA && Figures.Over(feed.ReverseA, ratingA))];
        BackFeed[] unknown = [.. all.Where(feed => RatingA(context, feed) is null && IsStrong(context, feed))];

        // A string's fuse holds back what comes from other strings, not what comes from the same block.
        int[] fused = [.. over.Concat(unknown.Where(feed => feed.OtherStringsA > 0)).Select(feed => feed.String).Distinct().Order()];
        double?[] fusesA = [.. fused.Select(index => FuseA(context, index, all))];

        Level level = fusesA.Contains(null) ? Level.Stop : unknown.Length > 0 ? Level.Ask : Level.Go;
        yield return Figure(context, Worst(context, all)) with
        {
            Level = level,
            Note = level switch
            {
                Level.Stop => $"String fuses are needed and no standard size fits string {NoFit(fused, fusesA)}: fewer strings side by side.",
                Level.Ask => $"The label of {unknown[0].Panel} gives no largest series fuse. {(fused.Length > 0 ? $"Take it that fuses are needed ({Fuses(context, fused, fusesA)}), and find that figure first." : "Find that figure first.")}",
                _ => over.Length > 0 ? $"Fuses are compulsory: {Fuses(context, fused, fusesA)}." : Silent(context, all),
            },
        };
    }

    /// <summary>Most label amps that the other strings may offer together before this one is stopped, or asked about where nothing worse than <see cref="Level.Go"/> will do, A.</summary>
    /// <param name="alone">The string by itself.</param>
    /// <param name="worst">The worst that may be said.</param>
    /// <returns>Infinite where a fuse settles it; negative where its own blocks are too strong already.</returns>
    public static double MostBesideA(RuleContext alone, Level worst)
    {
        BackFeed[] all = [.. BackFeed.Into(alone)];
        bool fuseFits = FuseA(alone, 0, all) is not null;
        double mostA = double.PositiveInfinity;
        foreach (BackFeed feed in all)
        {
            double? ratingA = RatingA(alone, feed);
            if (!fuseFits || (ratingA is null && worst == Level.Go))
            {
                double besideA = ((ratingA ?? StrongA(alone.Panel(feed.Panel))) / StrongSunCurrentRule.Factor) - feed.SameBlockA;

                // By itself a string needs no fuse for what no label forbids: that is only asked about.
                mostA = Math.Min(mostA, ratingA is null && worst > Level.Go ? Math.Max(besideA, 0) : besideA);
            }
        }

        return mostA;
    }

    /// <summary>The most that this gives for any string that holds a panel, A: where its label gives a figure, a fuse may settle it.</summary>
    public static double MostBesideA(Panel panel, Level worst) =>
        panel.MaxSeriesFuseA is null && worst == Level.Go ? StrongA(panel) / StrongSunCurrentRule.Factor : double.PositiveInfinity;

    private Finding Figure(RuleContext context, BackFeed worst)
    {
        double? ratingA = RatingA(context, worst);
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

    private static double? RatingA(RuleContext context, BackFeed feed) => context.Panel(feed.Panel).MaxSeriesFuseA;

    /// <summary>The panel with the least room; where no label says, the one fed the most.</summary>
    private static BackFeed Worst(RuleContext context, BackFeed[] all) =>
        all.Where(feed => RatingA(context, feed) is > 0).MaxBy(feed => feed.ReverseA / RatingA(context, feed)!.Value)
        ?? all.MaxBy(feed => feed.ReverseA)!;

    private static bool IsStrong(RuleContext context, BackFeed feed) => Figures.Over(feed.ReverseA, StrongA(context.Panel(feed.Panel)));

    /// <summary>What a second string like its own could send: 1.25 × 1.25 × its own current, which any panel fit for a string fuse bears (NEC 690.9(B), 156 %).</summary>
    private static double StrongA(Panel panel) => 1.25 * StrongSunCurrentRule.Factor * panel.ShortCircuitA;

    /// <summary>What its panels bear is lessened by what a block adds inside the string, where the string's fuse does not help (IEC 62548, a fuse for a group).</summary>
    private static double? FuseA(RuleContext context, int index, BackFeed[] all)
    {
        double highestA = all
            .Where(feed => feed.String == index && RatingA(context, feed) is not null)
            .Select(feed => RatingA(context, feed)!.Value - (StrongSunCurrentRule.Factor * feed.SameBlockA))
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
        return StringFuse.For(LabelSums.ShortCircuitA(context.Wiring.Strings[index], context.Stock), highestA);
    }

    private static int NoFit(int[] fused, double?[] fusesA) => fused[Array.IndexOf(fusesA, null)] + 1;

    private static string Fuses(RuleContext context, int[] fused, double?[] fusesA) =>
        fused.Length == context.Wiring.Strings.Length && fusesA.Distinct().Count() == 1
            ? $"each string needs a {Figures.Label(fusesA[0]!.Value, "A")} gPV fuse"
            : string.Join(", ", fused.Zip(fusesA, (index, sizeA) => $"string {index + 1} needs a {Figures.Label(sizeA!.Value, "A")} gPV fuse"));

    private static string? Silent(RuleContext context, BackFeed[] all) =>
        all.FirstOrDefault(feed => feed.ReverseA > 0 && RatingA(context, feed) is null) is { } silent
            ? $"The label of {silent.Panel} gives no largest series fuse; with no more than a second string like it, no panel minds."
            : null;
}
