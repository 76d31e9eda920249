using System.Collections.Immutable;

namespace Arraywright.Electrical;

/// <summary>How panels are joined: a panel, a series of wirings, or a parallel of wirings. Immutable.</summary>
/// <remarks>
/// Written <c>a + b</c> for series, <c>a | b</c> for parallel, <c>3*a</c> for three of the same in series, with brackets;
/// <c>+</c> binds tighter than <c>|</c>.
/// </remarks>
public abstract record Wiring
{
    private Wiring()
    {
    }

    /// <summary>One panel of a kind.</summary>
    /// <param name="Panel">Name of the kind.</param>
    public sealed record Single(string Panel) : Wiring;

    /// <summary>Parts in series: the same current, voltages add.</summary>
    /// <param name="Parts">At least two.</param>
    public sealed record Series(ImmutableArray<Wiring> Parts) : Wiring
    {
        /// <summary>Equal when the parts are equal in order.</summary>
        public bool Equals(Series? other) => other is not null && Parts.SequenceEqual(other.Parts);

        /// <inheritdoc/>
        public override int GetHashCode() => Hash(1, Parts);
    }

    /// <summary>Parts in parallel: the same voltage, currents add.</summary>
    /// <param name="Parts">At least two.</param>
    public sealed record Parallel(ImmutableArray<Wiring> Parts) : Wiring
    {
        /// <summary>Equal when the parts are equal in order.</summary>
        public bool Equals(Parallel? other) => other is not null && Parts.SequenceEqual(other.Parts);

        /// <inheritdoc/>
        public override int GetHashCode() => Hash(2, Parts);
    }

    /// <summary>The parts in series; the part itself when there is one.</summary>
    /// <exception cref="ArgumentException">There is no part.</exception>
    public static Wiring InSeries(IEnumerable<Wiring> parts) =>
        parts.ToImmutableArray() is var all && all.Length == 1 ? all[0] : NotEmpty(all, nameof(parts), static p => new Series(p));

    /// <summary>The parts in parallel; the part itself when there is one.</summary>
    /// <exception cref="ArgumentException">There is no part.</exception>
    public static Wiring InParallel(IEnumerable<Wiring> parts) =>
        parts.ToImmutableArray() is var all && all.Length == 1 ? all[0] : NotEmpty(all, nameof(parts), static p => new Parallel(p));

    /// <summary>The panels of the tree from left to right, one entry a panel.</summary>
    public IEnumerable<string> Panels => this switch
    {
        Single single => [single.Panel],
        Series series => series.Parts.SelectMany(part => part.Panels),
        Parallel parallel => parallel.Parts.SelectMany(part => part.Panels),
        _ => throw new InvalidOperationException("A wiring is a panel, a series or a parallel."),
    };

    /// <summary>The strings of the tree: the branches of its outermost parallel, or the tree itself.</summary>
    public ImmutableArray<Wiring> Strings => this is Parallel parallel ? parallel.Parts : [this];

    private static Wiring NotEmpty(ImmutableArray<Wiring> parts, string name, Func<ImmutableArray<Wiring>, Wiring> make) =>
        parts.Length > 1 ? make(parts) : throw new ArgumentException("A wiring has at least one part.", name);

    private static int Hash(int seed, ImmutableArray<Wiring> parts)
    {
        HashCode hash = default;
        hash.Add(seed);
        foreach (Wiring part in parts)
        {
            hash.Add(part);
        }

        return hash.ToHashCode();
    }
}
