namespace Arraywright;

/// <summary>Where a value came from: what every screen must be able to say about a figure.</summary>
public enum Origin
{
    /// <summary>Stated in the plan.</summary>
    Given,

    /// <summary>Computed from stated values, nothing guessed.</summary>
    Derived,

    /// <summary>Filled in by a typical figure, because the plan leaves it out.</summary>
    Assumed,
}

/// <summary>A value that remembers where it came from.</summary>
/// <param name="Value">The value; its unit is in the name of the member that holds it.</param>
/// <param name="Origin">Given, derived or assumed.</param>
/// <param name="Why">For a derived or assumed value: how, and after which source.</param>
public readonly record struct Sourced<T>(T Value, Origin Origin, string? Why = null);

/// <summary>Makes <see cref="Sourced{T}"/> values.</summary>
public static class Sourced
{
    /// <summary>A value that the plan states.</summary>
    public static Sourced<T> Given<T>(T value) => new(value, Origin.Given);

    /// <summary>A value computed from stated ones.</summary>
    public static Sourced<T> Derived<T>(T value, string why) => new(value, Origin.Derived, why);

    /// <summary>A value filled in by a typical figure.</summary>
    public static Sourced<T> Assumed<T>(T value, string why) => new(value, Origin.Assumed, why);
}

/// <summary>One thing the plan left out, filled in openly.</summary>
/// <param name="What">The quantity, as a person names it: "coldest air temperature".</param>
/// <param name="Value">The figure with its unit: "-14 °C".</param>
/// <param name="Why">Why this figure, and how much the answer moves if it is wrong.</param>
public sealed record Assumption(string What, string Value, string Why);
