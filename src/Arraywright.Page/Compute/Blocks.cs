using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Compute;

/// <summary>Blocks that several sheets have.</summary>
internal static class Blocks
{
    /// <summary>A table without notes.</summary>
    public static Block Table(string caption, IReadOnlyList<TableColumn> columns, IEnumerable<IReadOnlyList<string>> rows) =>
        Block.Of(BlockKind.Table, caption) with { Columns = columns, Rows = [.. rows.Select(cells => new TableRow(cells, []))] };

    /// <summary>Which wiring a sheet is about.</summary>
    public static Block Wiring(Design design) => new(BlockKind.Bullets)
    {
        Items = [.. design.Assignments.Select(assignment => new BulletLine(assignment.Input, DesignsTable.Text(assignment.Wiring)))],
    };

    /// <summary>What was filled in.</summary>
    public static IEnumerable<Block> Assumed(IEnumerable<Assumption> assumed) =>
    [
        Block.Of(BlockKind.Heading, "What was assumed"),
        new Block(BlockKind.Bullets) { Items = [.. assumed.Select(line => new BulletLine($"{line.What}: {line.Value}", line.Why))] },
    ];

    /// <summary>What a person should have in mind before touching anything.</summary>
    public static IEnumerable<Block> Cautions(IEnumerable<string> cautions) =>
    [
        Block.Of(BlockKind.Heading, "Before you touch a lead"),
        new Block(BlockKind.Bullets) { Items = [.. cautions.Select(caution => new BulletLine("", caution))] },
    ];

    /// <summary>A sentence that begins with a capital and ends in a stop.</summary>
    public static Block Sentence(string words) => Block.Of(BlockKind.Paragraph, words.Length == 0 ? "" : $"{char.ToUpperInvariant(words[0])}{words[1..].TrimEnd('.')}.");
}
