namespace Arraywright.Gear;

/// <summary>Who says what an input bears. Only evidence moves a finding from ask to go; none moves a voltage finding.</summary>
public enum EvidenceKind
{
    /// <summary>Nobody: the figure stands alone.</summary>
    None,

    /// <summary>Printed on the unit.</summary>
    Label,

    /// <summary>Written in its manual or datasheet.</summary>
    Manual,

    /// <summary>A written answer of the maker.</summary>
    Maker,
}

/// <summary>The word that a limit rests on.</summary>
/// <param name="Kind">Who says it.</param>
/// <param name="ExceedFraction">What that word allows above the figure, as a fraction (0.2 for 20 %); 0 when it allows nothing or says nothing.</param>
/// <param name="Note">The user's note: date, wording, which quantity it speaks of.</param>
public sealed record Evidence(EvidenceKind Kind, double ExceedFraction, string? Note)
{
    /// <summary>Nobody has said anything.</summary>
    public static Evidence Nothing { get; } = new(EvidenceKind.None, 0, null);
}

/// <summary>One current or power limit of an input with the word it rests on. Volts are never a <see cref="Limit"/>: they are hard.</summary>
/// <param name="Figure">The figure, in the unit of the member that holds it (A or W).</param>
/// <param name="Evidence">The word behind it.</param>
public sealed record Limit(double Figure, Evidence Evidence)
{
    /// <summary>The figure raised by what the evidence allows; without evidence, the bare figure.</summary>
    public double Allowed => Evidence.Kind == EvidenceKind.None ? Figure : Figure * (1 + Evidence.ExceedFraction);
}
