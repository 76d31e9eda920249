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
        yield return needs.Fuses.FirstOrDefault(fuse => fuse.SizeA is null) is { } misfit ? NoneFits(needs, misfit)
            : needs.Unknown.MaxBy(feed => feed.ReverseA / FuseNeeds.StrongA(context.Panel(feed.Panel))) is { } unknown ? NotKnown(context, needs, unknown)
            : Figure(needs, LeastRoom(needs)) with { Note = needs.Over.Length > 0 ? $"Fuses are compulsory: {Fuses(context, needs.Fuses)}." : Silent(needs) };
    }

    /// <summary>A fuse is needed that is not made: what decides is its size, not what it is needed for.</summary>
    private Finding NoneFits(FuseNeeds needs, StringFuse fuse)
    {
        BackFeed[] needing = [.. needs.Over.Concat(needs.Unknown).Where(feed => feed.String == fuse.String)];
        if (needing.FirstOrDefault(feed => needs.RatingA(feed) is { } ratingA && Figures.Over(StrongSunCurrentRule.Factor * feed.SameBlockA, ratingA)) is { } inBlock)
        {
            return Figure(needs, inBlock) with
            {
                Level = Level.Stop,
                Note = "What stands beside it in its own block is too much already, and no string fuse holds that back: fewer panels side by side there.",
            };
        }

        return new Finding(
            Card.Name,
            $"Smallest fuse for string {fuse.String + 1} that strong sun does not blow, against the largest it may have",
            Level.Stop,
            fuse.NextA,
            fuse.HighA,
            "A",
            $"{fuse.Working}; needed since {Reverse(needs, needing[0])}",
            Card.Source,
            $"String fuses are needed and no standard size fits string {fuse.String + 1}: fewer strings side by side.");
    }

    /// <summary>The label that decides is silent: no other panel's figure stands for it.</summary>
    private Finding NotKnown(RuleContext context, FuseNeeds needs, BackFeed unknown)
    {
        double strongA = FuseNeeds.StrongA(context.Panel(unknown.Panel));
        return new Finding(
            Card.Name,
            $"Current the rest can drive into a failed {unknown.Panel}, whose label gives no largest series fuse",
            Level.Ask,
            unknown.ReverseA,
            null,
            "A",
            $"{Reverse(needs, unknown)}; without a figure it is taken to bear 1.25 × 1.25 × {Figures.Label(context.Panel(unknown.Panel).ShortCircuitA, "A")} = {Figures.Result(strongA, "A")}",
            Card.Source,
            $"The label of {unknown.Panel} gives no largest series fuse. {(needs.Fuses.Length > 0 ? $"Take it that fuses are needed ({Fuses(context, needs.Fuses)}), and find that figure first." : "Find that figure first.")}");
    }

    /// <summary>The panel with the least room; where no label says, the one fed the most.</summary>
    private static BackFeed LeastRoom(FuseNeeds needs) =>
        needs.All.Where(feed => needs.RatingA(feed) is > 0).MaxBy(feed => feed.ReverseA / needs.RatingA(feed)!.Value)
        ?? needs.All.MaxBy(feed => feed.ReverseA)!;

    private Finding Figure(FuseNeeds needs, BackFeed feed) => new(
        Card.Name,
        "Current the rest can drive into a failed panel against its largest series fuse",
        Level.Go,
        feed.ReverseA,
        needs.RatingA(feed),
        "A",
        feed.ReverseA > 0 ? Reverse(needs, feed) : "one string: nothing beside it can feed it",
        Card.Source);

    private static string Reverse(FuseNeeds needs, BackFeed feed)
    {
        double? ratingA = needs.RatingA(feed);
        string others = Figures.Label(feed.OtherStringsA + feed.SameBlockA, "A");
        string reverse = ratingA is null ? Figures.Result(feed.ReverseA, "A") : Figures.Result(feed.ReverseA, ratingA.Value, "A");
        return $"1.25 × {others} from the others = {reverse} into string {feed.String + 1} ({feed.Panel}: {(ratingA is null ? "no figure" : Figures.Label(ratingA.Value, "A"))})";
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
