using System.Collections.Immutable;
using Arraywright.Files.Keys;

namespace Arraywright.Files.Drafts;

/// <summary>What the plan file's own table says of a key: a form asks for it in the same words.</summary>
/// <param name="Name">As written in the file.</param>
/// <param name="Example">A value as one writes it; empty for groups and lists.</param>
/// <param name="About">What it is, one sentence.</param>
/// <param name="Otherwise">What happens when it is left out; null when it is required.</param>
/// <param name="Expected">What the value must be, as a fault says it.</param>
/// <param name="Options">The words to choose from; empty where there is no such choice.</param>
/// <param name="Unit">The unit that the example is written in; empty where there is none.</param>
public sealed record KeyWords(string Name, string Example, string About, string? Otherwise, string Expected, ImmutableArray<string> Options, string Unit)
{
    internal static KeyWords Of(PlanKey key) => new(
        key.Name,
        key.Example,
        key.About,
        key.Otherwise,
        key.Expected,
        key is ChoiceKey choice ? [.. choice.Options] : [],
        key is QuantityKey or LimitKey or LimitValueKey or RangeKey or ShadeKey or LoadKey or YearSharesKey ? UnitOf(key.Example) : "");

    private static string UnitOf(string example) => example.LastIndexOf(' ') is var space and > 0 ? example[(space + 1)..] : "";
}
