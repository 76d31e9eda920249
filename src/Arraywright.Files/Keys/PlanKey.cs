using Arraywright.Files.Quantities;

namespace Arraywright.Files.Keys;

/// <summary>A key of the plan file: what the reader reads, the schema states and a fault suggests.</summary>
/// <param name="Name">As written in the file.</param>
/// <param name="Example">A value as one writes it.</param>
/// <param name="About">What it is, one sentence.</param>
internal abstract record PlanKey(string Name, string Example, string About)
{
    /// <summary>True when the plan cannot do without it.</summary>
    public bool Required { get; init; }

    /// <summary>What happens when it is left out; null for a required key.</summary>
    public string? Otherwise { get; init; }

    /// <summary>What the value must be, as a fault says it, with an example.</summary>
    public virtual string Expected => $"{ExpectedKind} such as \"{Example}\"";

    /// <summary>What the value must be, without example: "a voltage".</summary>
    protected abstract string ExpectedKind { get; }
}

/// <summary>A line of text.</summary>
internal sealed record TextKey(string Name, string Example, string About) : PlanKey(Name, Example, About)
{
    public const int Longest = 500;

    protected override string ExpectedKind => "a line of text";
}

/// <summary>A figure whose quantity is that of the limit it stands in.</summary>
internal sealed record LimitValueKey(string Name, string Example, string About) : PlanKey(Name, Example, About)
{
    protected override string ExpectedKind => "a figure with its unit";
}

/// <summary>A name by which other keys call something.</summary>
internal sealed record NameKey(string Name, string Example, string About) : PlanKey(Name, Example, About)
{
    protected override string ExpectedKind => "a name of letters, digits and hyphens";
}

/// <summary>A wiring in the notation of <c>+</c> and <c>|</c>.</summary>
internal sealed record WiringKey(string Name, string Example, string About) : PlanKey(Name, Example, About)
{
    protected override string ExpectedKind => "a wiring";
}

/// <summary>One of a few words, in the order of the enumeration it stands for.</summary>
internal sealed record ChoiceKey(string Name, string[] Options, string Example, string About) : PlanKey(Name, Example, About)
{
    public override string Expected => "one of: " + string.Join(", ", Options);

    protected override string ExpectedKind => "a choice";
}

/// <summary>A whole number.</summary>
internal sealed record CountKey(string Name, int Min, int Max, string Example, string About) : PlanKey(Name, Example, About)
{
    public override string Expected => $"a whole number from {Min} to {Max}";

    protected override string ExpectedKind => "a whole number";
}

/// <summary>A figure with its unit.</summary>
internal sealed record QuantityKey(string Name, Quantity Quantity, string Example, string About) : PlanKey(Name, Example, About)
{
    protected override string ExpectedKind => Quantity.Name;
}

/// <summary>Two figures of one unit, lower and upper.</summary>
internal sealed record RangeKey(string Name, Quantity Quantity, string Example, string About) : PlanKey(Name, Example, About)
{
    protected override string ExpectedKind => "a range";
}

/// <summary>A current or power limit: a figure, or a group of keys that says what the figure rests on.</summary>
internal sealed record LimitKey(string Name, Quantity Quantity, string Example, string About) : PlanKey(Name, Example, About)
{
    protected override string ExpectedKind => Quantity.Name;
}

/// <summary>A local clock hour.</summary>
internal sealed record HourKey(string Name, string Example, string About) : PlanKey(Name, Example, About)
{
    protected override string ExpectedKind => "an hour of the day from 0:00 to 24:00";
}

/// <summary>Shade: a share, a list of hours, or a share for each group of cells.</summary>
internal sealed record ShadeKey(string Name, string Example, string About) : PlanKey(Name, Example, About)
{
    public override string Expected => "a share such as \"30 %\", a list of hours, or \"groups: [80 %, 0 %]\"";

    protected override string ExpectedKind => "shade";
}

/// <summary>Several shares in a list.</summary>
internal sealed record SharesKey(string Name, string Example, string About) : PlanKey(Name, Example, About)
{
    public const int Most = 20;

    protected override string ExpectedKind => "a list of shares";
}

/// <summary>A group of keys.</summary>
internal sealed record SectionKey(string Name, PlanSection Section, string About) : PlanKey(Name, "", About)
{
    public override string Expected => $"a group of keys such as \"{Section.Keys[0].Name}: {Section.Keys[0].Example}\", one a line, indented";

    protected override string ExpectedKind => "a group of keys";
}

/// <summary>A list of groups of keys.</summary>
internal sealed record ListKey(string Name, PlanSection Section, int Most, string About) : PlanKey(Name, "", About)
{
    public override string Expected => $"a list, each item beginning with \"- {Section.Keys[0].Name}: {Section.Keys[0].Example}\"";

    protected override string ExpectedKind => "a list";
}

/// <summary>Keys that stand together.</summary>
/// <param name="Title">With its article: "an input".</param>
/// <param name="Keys">In the order they are written.</param>
internal sealed record PlanSection(string Title, PlanKey[] Keys)
{
    /// <summary>The key of that name; null when there is none.</summary>
    public PlanKey? Find(string name)
    {
        foreach (PlanKey key in Keys)
        {
            if (key.Name == name)
            {
                return key;
            }
        }

        return null;
    }
}
