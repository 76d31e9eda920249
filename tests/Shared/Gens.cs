using Arraywright.Electrical;
using CsCheck;

namespace Arraywright.Testing;

/// <summary>Random inputs for property tests.</summary>
public static partial class Gens
{
    /// <summary>Names that a wiring must tell apart from counts and from each other.</summary>
    public static readonly string[] PanelNames = ["a", "b", "shed-120", "120w-old", "7", "A"];

    /// <summary>Any tree of up to four levels and 81 panels, in no particular order and with needless nesting.</summary>
    public static Gen<Wiring> Wiring { get; } = WiringOf(PanelNames, 4, 3);

    /// <summary>Trees over the given panel names.</summary>
    /// <param name="names">Kinds of panel to draw from; each may come any number of times.</param>
    /// <param name="deepest">Most levels of joining; 0 gives single panels only.</param>
    /// <param name="widest">Most parts of one joining, at least 2.</param>
    public static Gen<Wiring> WiringOf(string[] names, int deepest, int widest)
    {
        Gen<Wiring> tree = Gen.OneOf(names).Select(name => (Wiring)new Wiring.Single(name));
        for (int level = 0; level < deepest; level++)
        {
            Gen<Wiring> part = tree;
            Gen<Wiring[]> parts = part.Array[2, widest];
            tree = Gen.OneOf(part, parts.Select(Electrical.Wiring.InSeries), parts.Select(Electrical.Wiring.InParallel));
        }

        return tree;
    }

    /// <summary>A wiring, and the same circuit with the parts of every joining in another order.</summary>
    public static Gen<(Wiring Wiring, Wiring Shuffled)> ShuffledWiring { get; } =
        Gen.Select(Wiring, Gen.Int, (wiring, seed) => (wiring, Shuffle(wiring, new Random(seed))));

    private static Wiring Shuffle(Wiring wiring, Random random)
    {
        switch (wiring)
        {
            case Wiring.Series series:
                Wiring[] parts = [.. series.Parts.Select(part => Shuffle(part, random))];
                random.Shuffle(parts);
                return Electrical.Wiring.InSeries(parts);
            case Wiring.Parallel parallel:
                Wiring[] branches = [.. parallel.Parts.Select(branch => Shuffle(branch, random))];
                random.Shuffle(branches);
                return Electrical.Wiring.InParallel(branches);
            default:
                return wiring;
        }
    }
}
