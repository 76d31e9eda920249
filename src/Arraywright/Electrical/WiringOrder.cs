using System.Collections.Immutable;

namespace Arraywright.Electrical;

/// <summary>The order of parts in the canonical form, as <see cref="WiringText"/> states it. 0 exactly for equal trees.</summary>
internal static class WiringOrder
{
    public static int Compare(Wiring left, Wiring right) => (left, right) switch
    {
        _ when ReferenceEquals(left, right) => 0,
        (Wiring.Single a, Wiring.Single b) => string.CompareOrdinal(a.Panel, b.Panel),
        (Wiring.Series a, Wiring.Series b) => Compare(a.Parts, b.Parts),
        (Wiring.Parallel a, Wiring.Parallel b) => Compare(a.Parts, b.Parts),
        _ => Kind(left) - Kind(right),
    };

    private static int Compare(ImmutableArray<Wiring> left, ImmutableArray<Wiring> right)
    {
        for (int i = 0; i < Math.Min(left.Length, right.Length); i++)
        {
            int order = Compare(left[i], right[i]);
            if (order != 0)
            {
                return order;
            }
        }

        return left.Length - right.Length;
    }

    private static int Kind(Wiring wiring) => wiring switch
    {
        Wiring.Single => 0,
        Wiring.Series => 1,
        _ => 2,
    };
}
