using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Limits.Rules;

/// <summary>The labels' short-circuit currents, strings added up, against what the array may offer.</summary>
internal sealed class ShortCircuitCurrentRule : IRule
{
    public RuleCard Card { get; } = new(
        "short_circuit_current",
        "Sum of the strings' label short-circuit currents at standard conditions against what the array may offer; a drawn or unexplained current stands in until told",
        "labels (IEC 60904-3 conditions) and the evidence stated for the input",
        Level.Ask);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        double offeredA = LabelSums.ShortCircuitA(context.Wiring, context.Stock);
        OfferedCurrent? allowed = OfferedCurrent.To(context.Input);
        bool over = allowed is null || Figures.Over(offeredA, allowed.Limit.Allowed);
        string sum = WiringSums.Sum(context.Wiring.Strings.Select(part => Figures.Label(LabelSums.ShortCircuitA(part, context.Stock), "A")));
        string result = allowed is null ? Figures.Result(offeredA, "A") : Figures.Result(offeredA, allowed.Limit.Allowed, "A");
        yield return new Finding(
            Card.Name,
            "Short-circuit current of the array against what it may offer",
            over ? Level.Ask : Level.Go,
            offeredA,
            allowed?.Limit.Allowed,
            "A",
            allowed is null ? $"{WiringSums.Worked(sum, result)}; the input states no current" : $"{WiringSums.Worked(sum, result)}; {allowed.Field} {OfferedCurrent.Written(allowed.Limit, "A")}",
            allowed is null ? "panel labels" : $"panel labels; limit: {OfferedCurrent.Word(allowed.Limit)}",
            Join(over ? Question(allowed) : null, Shares(context, offeredA), Uneven(context)));
    }

    private static string Question(OfferedCurrent? allowed) => allowed?.Field switch
    {
        "max_short_circuit_current" => "More than the array may have: only the maker can allow it.",
        "rated_current" => "The printed current does not say whether it is drawn or offered: ask the maker which.",
        "max_current" => "Nobody has said what the array may offer, so the drawn current stands in: ask the maker.",
        _ => "Nothing is known of the current this input bears: ask the maker.",
    };

    /// <summary>What each string contributes, where they differ.</summary>
    private static string? Shares(RuleContext context, double offeredA)
    {
        double[] strings = [.. context.Wiring.Strings.Select(part => LabelSums.ShortCircuitA(part, context.Stock))];
        return strings.Distinct().Count() < 2
            ? null
            : $"Shares: {string.Join(", ", strings.Select((stringA, index) => $"string {index + 1} {Figures.Label(stringA, "A")} ({Figures.Percent(Math.Round(stringA / offeredA, 2))})"))}.";
    }

    /// <summary>A string of unequal panels counts with its largest: say what its smallest is.</summary>
    private static string? Uneven(RuleContext context)
    {
        ImmutableArray<Wiring> strings = context.Wiring.Strings;
        for (int i = 0; i < strings.Length; i++)
        {
            double largestA = LabelSums.ShortCircuitA(strings[i], context.Stock);
            double smallestA = strings[i].Fold(name => context.Panel(name).ShortCircuitA, Enumerable.Min, Enumerable.Sum);
            if (Figures.Over(largestA, smallestA))
            {
                return $"String {i + 1} is uneven, {Figures.Label(smallestA, "A")} to {Figures.Label(largestA, "A")}: its largest counts, since the rest may be bypassed.";
            }
        }

        return null;
    }

    private static string? Join(params string?[] sentences)
    {
        string text = string.Join(" ", sentences.OfType<string>());
        return text.Length == 0 ? null : text;
    }
}
