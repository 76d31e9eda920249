using System.Collections.Immutable;

namespace Arraywright;

/// <summary>A letter to the maker of one input.</summary>
/// <param name="Input">Name of the input.</param>
/// <param name="Text">The letter, ready to send.</param>
/// <param name="WhereTheAnswerGoes">Which lines of the plan file the answer fills in.</param>
public sealed record InputLetter(string Input, string Text, string WhereTheAnswerGoes);

/// <summary>The questions that a design leaves open.</summary>
/// <param name="Result">The answer they belong to.</param>
/// <param name="Letters">One for each input with an open question, in plan order; empty when nothing needs asking.</param>
public sealed record AskResult(PlanResult Result, ImmutableArray<InputLetter> Letters);
