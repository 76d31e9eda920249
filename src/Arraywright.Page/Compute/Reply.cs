using System.Text.Json.Serialization;

namespace Arraywright.Page.Compute;

/// <summary>What comes back from the worker: one of its members, or the reason why there is none.</summary>
public sealed record Reply
{
    /// <summary>Why there is no answer; null where there is one.</summary>
    public string? Refusal { get; init; }

    /// <summary>The answer to a plan or a check.</summary>
    public AnswerSheet? Answer { get; init; }

    /// <summary>Pictures of the first design, which follow the answer.</summary>
    public PictureSheet? Pictures { get; init; }

    /// <summary>The circuit of the same, which comes last; empty while that of before is another's.</summary>
    public string? Diagram { get; init; }

    /// <summary>Whether the best wiring with all that is seen of it is told with this.</summary>
    public bool IsSettled { get; init; }

    /// <summary>Any other answer, as a document.</summary>
    public Sheet? Sheet { get; init; }
}

/// <summary>How much of an answer is there.</summary>
public enum AnswerStage
{
    /// <summary>The wiring that was on the screen is judged, while the search for a better one goes on.</summary>
    Before,

    /// <summary>The best is certain; what else there is to choose from is looked for.</summary>
    Best,

    /// <summary>All of it.</summary>
    Whole,
}

/// <summary>The answer to a plan, every figure written as the command writes it.</summary>
public sealed record AnswerSheet
{
    /// <summary>How much of it is there.</summary>
    public required AnswerStage Stage { get; init; }

    /// <summary>"go", "ask" or "stop".</summary>
    public required string Level { get; init; }

    /// <summary>The verdict's word: "ASK FIRST".</summary>
    public required string Word { get; init; }

    /// <summary>What follows the word.</summary>
    public required string Sentence { get; init; }

    /// <summary>What the search may claim; null for a check.</summary>
    public required string? Proof { get; init; }

    public required IReadOnlyList<DesignSheet> Designs { get; init; }

    public required IReadOnlyList<AssumedLine> Assumed { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>The same in the command's JSON, without the seconds it took; empty before it is whole.</summary>
    public required string Json { get; init; }
}

/// <summary>A wiring for every input.</summary>
public sealed record DesignSheet
{
    public required int Rank { get; init; }

    public required string Level { get; init; }

    /// <summary>"612.3 kWh" or "480 W".</summary>
    public required string Amount { get; init; }

    /// <summary>"a year", the days of the goal, or "power".</summary>
    public required string AmountOf { get; init; }

    /// <summary>Power under the conditions of the meter.</summary>
    public required string Power { get; init; }

    public required string ChosenFor { get; init; }

    public required string LeftOver { get; init; }

    public required IReadOnlyList<InputSheet> Inputs { get; init; }

    public required IReadOnlyList<LossLine> Losses { get; init; }
}

/// <summary>What is connected to one input.</summary>
public sealed record InputSheet
{
    public required string Input { get; init; }

    public required string Level { get; init; }

    /// <summary>In the notation of the plan file; null where nothing is connected.</summary>
    public required string? Wiring { get; init; }

    /// <summary>The wiring in words, and how to join it.</summary>
    public required string Words { get; init; }

    /// <summary>Its fuses, and what unrated connectors and sockets must bear; empty where there is nothing to say.</summary>
    public required string Parts { get; init; }

    /// <summary>The wiring drawn in characters, for a screen reader too.</summary>
    public required string Drawn { get; init; }

    public required IReadOnlyList<MeterLine> Meter { get; init; }

    /// <summary>What is against it first.</summary>
    public required IReadOnlyList<FindingLine> Findings { get; init; }
}

/// <summary>A line of what the meter will show.</summary>
public sealed record MeterLine(string What, string Figure, string Remark);

/// <summary>What one rule says.</summary>
public sealed record FindingLine(
    string Rule, string Level, string Word, string Title, string Value, string Limit, string Margin, string Working, string Source, string? Note);

/// <summary>A step of the ladder of watts.</summary>
/// <param name="Stage">Its name.</param>
/// <param name="Amount">With its unit and sign.</param>
/// <param name="Share">What is left after it, as a share of the tallest step.</param>
/// <param name="IsLevel">Whether it is a level and takes nothing.</param>
public sealed record LossLine(string Stage, string Amount, double Share, bool IsLevel);

/// <summary>Something filled in.</summary>
public sealed record AssumedLine(string What, string Value, string Why);

/// <summary>Pictures as SVG.</summary>
/// <param name="Arrangement">The panels and their plugs.</param>
/// <param name="Curves">The curve of each connected input.</param>
public sealed record PictureSheet(string? Arrangement, IReadOnlyList<NamedPicture> Curves);

/// <summary>A picture with the input it is of.</summary>
public sealed record NamedPicture(string Input, string Svg, CurveLine Curve);

/// <summary>The curve behind a picture, to read values off.</summary>
public sealed record CurveLine(IReadOnlyList<double> VoltageV, IReadOnlyList<double> CurrentA);

/// <summary>A document: headed blocks in order.</summary>
public sealed record Sheet(string Title, IReadOnlyList<Block> Blocks)
{
    /// <summary>Files that go with it; empty for none.</summary>
    public IReadOnlyList<SheetFile> Files { get; init; } = [];
}

/// <summary>A file to save.</summary>
public sealed record SheetFile(string Name, string Type, string Text);

/// <summary>What a piece of a document is.</summary>
public static class BlockKind
{
    public const string Verdict = "verdict", Section = "section", Heading = "heading", Paragraph = "paragraph", Bullets = "bullets",
        Steps = "steps", Table = "table", Picture = "picture", Text = "text";
}

/// <summary>A piece of a document; which of its members are there depends on its kind.</summary>
public sealed record Block(string Kind)
{
    public string Words { get; init; } = "";

    public string Level { get; init; } = "";

    public IReadOnlyList<TableColumn> Columns { get; init; } = [];

    public IReadOnlyList<TableRow> Rows { get; init; } = [];

    public IReadOnlyList<BulletLine> Items { get; init; } = [];

    public IReadOnlyList<StepLine> Steps { get; init; } = [];

    /// <summary>The picture laid out for a telephone, where it has such a layout, else the only one.</summary>
    public string Svg { get; init; } = "";

    public static Block Of(string kind, string words) => new(kind) { Words = words };
}

public sealed record TableColumn(string Title, bool IsNumber);

public sealed record TableRow(IReadOnlyList<string> Cells, IReadOnlyList<string> Notes);

public sealed record BulletLine(string Lead, string Text);

public sealed record StepLine(string Title, IReadOnlyList<string> Do, Block? Expected, string? IfNot);

/// <summary>Questions and replies as JSON, without looking at types while running.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(Question))]
[JsonSerializable(typeof(Reply))]
internal sealed partial class DeskJson : JsonSerializerContext;
