using System.Collections.Immutable;

namespace Arraywright;

/// <summary>The clock on the wall of a place: how far it is ahead of universal time, and when that changes.</summary>
/// <remarks>Its own table rather than the machine's, so that a plan gives the same answer everywhere. Two are equal when their names are.</remarks>
public sealed record PlaceZone
{
    /// <summary>A zone.</summary>
    /// <param name="name">Its IANA name, such as Europe/London.</param>
    /// <param name="changes">Every change in order of time; what the first says held before it too.</param>
    /// <exception cref="ArgumentException">There is no change, they are out of order, or one is more than a day ahead or behind.</exception>
    public PlaceZone(string name, ImmutableArray<ZoneChange> changes)
    {
        if (changes.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A zone has at least one entry.", nameof(changes));
        }

        for (int i = 0; i < changes.Length; i++)
        {
            if (!(Math.Abs(changes[i].AheadH) <= 24) || (i > 0 && changes[i].FromUtc <= changes[i - 1].FromUtc))
            {
                throw new ArgumentException("The entries of a zone run in order of time, each at most a day ahead or behind.", nameof(changes));
            }
        }

        (Name, Changes) = (name, changes);
    }

    /// <summary>Its IANA name.</summary>
    public string Name { get; }

    /// <summary>Every change in order of time.</summary>
    public ImmutableArray<ZoneChange> Changes { get; }

    /// <summary>The clock less universal time, h, daylight saving included.</summary>
    public double AheadH(DateTime utc)
    {
        int low = 0;
        int high = Changes.Length;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = Changes[middle].FromUtc <= utc ? (middle, high) : (low, middle);
        }

        return Changes[low].AheadH;
    }

    /// <inheritdoc/>
    public bool Equals(PlaceZone? other) => other is not null && Name == other.Name;

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);
}

/// <summary>From when on a clock is how far ahead.</summary>
/// <param name="FromUtc">Universal time.</param>
/// <param name="AheadH">The clock less universal time, h.</param>
public readonly record struct ZoneChange(DateTime FromUtc, double AheadH);
