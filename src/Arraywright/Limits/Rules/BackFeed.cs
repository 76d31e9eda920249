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
    public static IEnumerable<BackFeed> Into(RuleContext context)
    {
        double ShortCircuitA(Wiring part) => LabelSums.ShortCircuitA(part, context.Stock);

        // Added up over the others, not subtracted from the total: equal strings then give equal figures to the last bit.
        double Others(Wiring.Parallel block, int own) => block.Parts.Where((_, index) => index != own).Sum(ShortCircuitA);

        IEnumerable<BackFeed> Walk(Wiring part, int index, double otherA, double blockA) => part switch
        {
            Wiring.Single single => [new BackFeed(single.Panel, index, otherA, blockA)],
            Wiring.Series series => series.Parts.SelectMany(inner => Walk(inner, index, otherA, blockA)),
            Wiring.Parallel block => block.Parts.SelectMany((inner, own) => Walk(inner, index, otherA, blockA + Others(block, own))),
            _ => throw new InvalidOperationException("A wiring is a panel, a series or a parallel."),
        };

        return context.Wiring.Strings.SelectMany((part, index) =>
            Walk(part, index, context.Wiring is Wiring.Parallel whole ? Others(whole, index) : 0, 0));
    }
}
