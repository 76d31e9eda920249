using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>Which strings need a fuse of their own, and which fuse.</summary>
internal sealed class FuseNeeds
{
    private readonly RuleContext _context;

    public FuseNeeds(RuleContext context)
    {
        _context = context;
        All = [.. BackFeed.Into(context)];
        Over = [.. All.Where(feed => RatingA(feed) is { } ratingA && Figures.Over(feed.ReverseA, ratingA))];
        Unknown = [.. All.Where(feed => RatingA(feed) is null && IsStrong(feed))];

        // A string's fuse holds back what comes from other strings, not what comes from the same block.
        Fuses = [.. Over.Concat(Unknown.Where(feed => feed.OtherStringsA > 0)).Select(feed => feed.String).Distinct().Order().Select(Fuse)];
    }

    /// <summary>One entry a panel.</summary>
    public BackFeed[] All { get; }

    /// <summary>Those that the rest can drive more into than their label allows.</summary>
    public BackFeed[] Over { get; }

    /// <summary>Those whose label is silent and that the rest can drive more into than a second string like their own could.</summary>
    public BackFeed[] Unknown { get; }

    /// <summary>The fuses that are needed, in string order; one without a size where none fits.</summary>
    public StringFuse[] Fuses { get; }

    /// <summary>The fuse that a string would take.</summary>
    public StringFuse Fuse(int index) => BackFeedRoom.Of(_context.Wiring.Strings[index], _context).Fuse(index, _context.Rules);

    /// <summary>The largest series fuse on the label of a panel, A; null when it is silent.</summary>
    public double? RatingA(BackFeed feed) => _context.Panel(feed.Panel).MaxSeriesFuseA;

    /// <summary>What a second string like its own could send: 1.25 × 1.25 × its own current, which any panel fit for a string fuse bears (NEC 690.9(B), 156 %).</summary>
    public static double StrongA(Panel panel) => StringFuse.UsLow * panel.ShortCircuitA;

    private bool IsStrong(BackFeed feed) => Figures.Over(feed.ReverseA, StrongA(_context.Panel(feed.Panel)));
}
