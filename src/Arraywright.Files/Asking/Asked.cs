namespace Arraywright.Files.Asking;

/// <summary>What came of a question: its result, or why it cannot be put to this plan.</summary>
/// <typeparam name="T">The result.</typeparam>
/// <param name="Result">The result; null when refused.</param>
/// <param name="Refusal">Why not; null when there is a result.</param>
public readonly record struct Asked<T>(T? Result, Refusal? Refusal)
    where T : class
{
    /// <summary>A result.</summary>
    public static implicit operator Asked<T>(T result) => new(result, null);

    /// <summary>A refusal.</summary>
    public static implicit operator Asked<T>(Refusal refusal) => new(null, refusal);
}
