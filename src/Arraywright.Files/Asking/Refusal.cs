namespace Arraywright.Files.Asking;

/// <summary>Why a question cannot be put to a plan that is itself sound.</summary>
/// <param name="Option">Name of the option at fault, without hyphens; null where the plan lacks something.</param>
/// <param name="Text">What was found and what was expected, in one line.</param>
public sealed record Refusal(string? Option, string Text);
