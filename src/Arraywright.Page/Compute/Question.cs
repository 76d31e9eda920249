namespace Arraywright.Page.Compute;

/// <summary>What the worker is asked: a plan as text, and what about it.</summary>
internal sealed record Question
{
    /// <summary>Of <see cref="QuestionKind"/>.</summary>
    public required string Kind { get; init; }

    /// <summary>The plan file.</summary>
    public required string Text { get; init; }

    /// <summary>The wirings on the screen, one an input, null for nothing: judged at once under the figures of now, before the search for better ones. Empty for none.</summary>
    public IReadOnlyList<string?> Before { get; init; } = [];

    /// <summary>Sun for the meter, W/m²; null for strong sun.</summary>
    public double? IrradianceWPerM2 { get; init; }

    /// <summary>Air for the meter, °C; null for a mild day.</summary>
    public double? AirC { get; init; }

    /// <summary>The day asked about; null for none.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Whether the sky is without a cloud.</summary>
    public bool IsClear { get; init; }
}

/// <summary>What may be asked.</summary>
internal static class QuestionKind
{
    public const string Plan = "plan";
    public const string Check = "check";
    public const string Year = "year";
    public const string Day = "day";
    public const string Tilt = "tilt";
    public const string Grow = "grow";
    public const string Parts = "parts";
    public const string Ask = "ask";
    public const string Report = "report";
    public const string Netlist = "netlist";
}
