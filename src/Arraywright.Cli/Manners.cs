namespace Arraywright.Cli;

/// <summary>How a result is to be written.</summary>
/// <param name="Json">Only JSON.</param>
/// <param name="Quiet">One line instead of a page; no progress.</param>
/// <param name="NoColor">No colour.</param>
internal readonly record struct Manners(bool Json, bool Quiet, bool NoColor);
