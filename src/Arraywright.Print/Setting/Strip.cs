namespace Arraywright.Print.Setting;

/// <summary>What is not cut at the end of a page: a line, a row of a table, a picture.</summary>
/// <param name="HeightPt">Its height.</param>
/// <param name="Draw">Draws it, given the height of its upper edge below that of the page.</param>
internal sealed record Strip(double HeightPt, Action<Sheet, double> Draw)
{
    /// <summary>Whether it may not be the last on its page.</summary>
    public bool KeepsWithNext { get; init; }

    /// <summary>Whether it is room between others, of no use at the head of a page.</summary>
    public bool IsGap { get; init; }

    /// <summary>What is drawn again above it where it begins a page; null for nothing.</summary>
    public Strip? Head { get; init; }

    /// <summary>How low it can be made by <see cref="Lower"/>; its own height where it cannot.</summary>
    public double LeastHeightPt { get; init; } = HeightPt;

    /// <summary>The same, of a lower height; null where it has but one.</summary>
    public Func<double, Strip>? Lower { get; init; }

    /// <summary>Name to link to; null for none.</summary>
    public string? Anchor { get; init; }

    /// <summary>The same, lower by so much.</summary>
    public Strip Lowered(double byPt) => Lower!(HeightPt - byPt) with { KeepsWithNext = KeepsWithNext };

    /// <summary>Empty room.</summary>
    public static Strip Gap(double heightPt) => new(heightPt, static (_, _) => { }) { IsGap = true };

    /// <summary>Something done between two strips, such as the end of a tag.</summary>
    public static Strip Act(Action<Sheet> act, bool keepsWithNext) => new(0, (sheet, _) => act(sheet)) { KeepsWithNext = keepsWithNext };
}
