using System.Collections.Immutable;

namespace Arraywright;

/// <summary>One of the moments a wiring is ranked by: how much it counts, and what each kind of panel sees.</summary>
/// <param name="WeightH">Hours a year it stands for (or, where no place is known, its share of 1).</param>
/// <param name="ByStock">Conditions of each kind of panel, in plan order.</param>
public sealed record Moment(double WeightH, ImmutableArray<Conditions> ByStock);
