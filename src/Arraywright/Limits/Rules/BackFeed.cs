using Arraywright.Electrical;

namespace Arraywright.Limits.Rules;

/// <summary>What the rest of an array can drive backwards into one panel that fails short.</summary>
/// <param name="Panel">The kind of panel that fails.</param>
/// <param name="String">Its string, from 0.</param>
/// <param name="OtherStringsA">Sum of the label short-circuit currents of the other strings, A: a fuse in its string holds this back.</param>
/// <param name="SameBlockA">Sum of those beside it in the same block, A: inside its string, where no string fuse helps.</param>
internal sealed record BackFeed(string Panel, int String, double OtherStringsA, double SameBlockA)
{
    /// <summary>Everything but its own, in strong sun, A (NEC 690.8(A)(1), 690.9(A); the stricter of the two forms in IEC 62548).</summary>
    public double ReverseA => StrongSunCurrentRule.Factor * (OtherStringsA + SameBlockA);

    /// <summary>One entry a panel, each string in turn.</summary>
    public static List<BackFeed> Into(RuleContext context)
    {
        List<BackFeed> feeds = [];
        for (int i = 0; i < context.Wiring.Strings.Length; i++)
        {
            Walk(context.Wiring.Strings[i], i, context.Wiring is Wiring.Parallel whole ? OthersA(whole, i, context) : 0, 0, context, feeds);
        }

        return feeds;
    }

    /// <summary>The same within one string, or a part of one, with nothing beside it.</summary>
    public static List<BackFeed> Inside(Wiring part, RuleContext context)
    {
        List<BackFeed> feeds = [];
        Walk(part, 0, 0, 0, context, feeds);
        return feeds;
    }

    private static void Walk(Wiring part, int index, double otherA, double blockA, RuleContext context, List<BackFeed> feeds)
    {
        switch (part)
        {
            case Wiring.Single single:
                feeds.Add(new BackFeed(single.Panel, index, otherA, blockA));
                break;
            case Wiring.Series series:
                foreach (Wiring inner in series.Parts)
                {
                    Walk(inner, index, otherA, blockA, context, feeds);
                }

                break;
            case Wiring.Parallel block:
                for (int own = 0; own < block.Parts.Length; own++)
                {
                    Walk(block.Parts[own], index, otherA, blockA + OthersA(block, own, context), context, feeds);
                }

                break;
        }
    }

    /// <summary>Added up over the others, not subtracted from the total: equal strings then give equal figures to the last bit.</summary>
    private static double OthersA(Wiring.Parallel block, int own, RuleContext context)
    {
        double sumA = 0;
        for (int i = 0; i < block.Parts.Length; i++)
        {
            sumA += i == own ? 0 : LabelSums.ShortCircuitA(block.Parts[i], context.Stock);
        }

        return sumA;
    }
}
