using System.Collections.Immutable;
using Arraywright.Limits;

namespace Arraywright.Presentation.Report;

/// <summary>A report as a document: what it says and in which order, not how it looks. Every writer writes all of it.</summary>
public sealed record ReportDocument
{
    /// <summary>Its language, as BCP 47 has it.</summary>
    public const string Language = "en";

    /// <summary>Its title: the plan's name.</summary>
    public required string Title { get; init; }

    /// <summary>What it is, in one line.</summary>
    public required string Subject { get; init; }

    /// <summary>The program and its version.</summary>
    public required string Program { get; init; }

    /// <summary>Its date; null where none was stated. Never the clock's, so that a plan gives the same bytes on any day.</summary>
    public required DateOnly? Date { get; init; }

    /// <summary>The names that the plan gives, in its order: a writer that cannot show one must still tell it from the others.</summary>
    public required ImmutableArray<ReportName> Names { get; init; }

    /// <summary>What it says.</summary>
    public required ImmutableArray<ReportSection> Sections { get; init; }
}

/// <summary>A name that the plan gives.</summary>
/// <param name="Kind">What it is the name of: "panel", "input", "unit".</param>
/// <param name="Number">The how-manieth of its kind in the plan, from 1.</param>
/// <param name="Text">The name.</param>
public sealed record ReportName(string Kind, int Number, string Text);

/// <summary>A section with its own entry in the contents.</summary>
/// <param name="Id">Name to link to: lower-case letters and hyphens, its own in the document.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">What it says.</param>
public sealed record ReportSection(string Id, string Title, ImmutableArray<ReportBlock> Blocks);

/// <summary>A piece of a section. The kinds are fixed: a writer knows them all.</summary>
public abstract record ReportBlock
{
    private ReportBlock()
    {
    }

    /// <summary>The verdict: its word, never by colour alone, and its sentence.</summary>
    public sealed record Verdict(Level Level, string Sentence) : ReportBlock;

    /// <summary>A heading within a section.</summary>
    public sealed record Heading(string Text) : ReportBlock;

    /// <summary>A paragraph.</summary>
    public sealed record Paragraph(string Text) : ReportBlock;

    /// <summary>A list without an order.</summary>
    public sealed record Bullets(ImmutableArray<ReportItem> Items) : ReportBlock;

    /// <summary>Steps in their order.</summary>
    public sealed record Steps(ImmutableArray<ReportStep> Items) : ReportBlock;

    /// <summary>A table.</summary>
    /// <param name="Caption">What it shows.</param>
    /// <param name="Columns">Its columns; the first heads its rows.</param>
    /// <param name="Rows">Its rows.</param>
    public sealed record Table(string Caption, ImmutableArray<ReportColumn> Columns, ImmutableArray<ReportRow> Rows) : ReportBlock;

    /// <summary>A picture.</summary>
    public sealed record Picture(ReportPicture Shown) : ReportBlock;
}

/// <summary>An entry of a list.</summary>
/// <param name="Lead">Its first words, to stand out; may be empty.</param>
/// <param name="Text">The rest.</param>
public sealed record ReportItem(string Lead, string Text);

/// <summary>A step to do.</summary>
/// <param name="Title">What it is for.</param>
/// <param name="Do">What to do, in order.</param>
/// <param name="Expected">What is then to be seen; null where nothing is measured.</param>
/// <param name="IfNot">What to make of anything else; null where nothing is measured.</param>
public sealed record ReportStep(string Title, ImmutableArray<string> Do, ReportBlock.Table? Expected, string? IfNot);

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="IsNumber">Whether its entries are figures, to stand right.</param>
/// <param name="Weight">Its share of the width beside the other columns'.</param>
public sealed record ReportColumn(string Title, bool IsNumber, int Weight = 2);

/// <summary>A row of a table.</summary>
/// <param name="Cells">One text a column.</param>
/// <param name="Notes">Lines below it, over all columns but the first: how its figure came about.</param>
/// <param name="Level">The level its first cell names; null where it names none.</param>
public sealed record ReportRow(ImmutableArray<string> Cells, ImmutableArray<string> Notes, Level? Level = null)
{
    /// <summary>A row without notes.</summary>
    public static ReportRow Of(params ReadOnlySpan<string> cells) => new([.. cells], []);
}
