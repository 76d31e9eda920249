using System.Collections.Immutable;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Drawing;

/// <summary>A design to be drawn: each input's array as it is plugged together, with what meters show.</summary>
public sealed record DrawingSheet
{
    /// <summary>Width to be read on a telephone, pixels.</summary>
    public const double TelephonePx = 400;

    /// <summary>Width that fills a printed page of A4, pixels.</summary>
    public const double PagePx = 720;

    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The design.</summary>
    public required Design Design { get; init; }

    /// <summary>Connected inputs, in plan order: panels and joints are numbered through all of them.</summary>
    public required ImmutableArray<Hookup> Hookups { get; init; }

    /// <summary>What meters show, an entry for each of <see cref="Hookups"/>; null where it was not computed.</summary>
    public required ImmutableArray<ArrayReading?> Readings { get; init; }

    /// <summary>What stands against connecting it; null where nothing does.</summary>
    public required string? Warning { get; init; }

    /// <summary>Width to be laid out for; a drawing that cannot be so narrow is wider.</summary>
    public double WidthPx { get; init; } = TelephonePx;

    /// <summary>A sheet of a design.</summary>
    /// <param name="plan">Its plan.</param>
    /// <param name="design">The design, its wirings in canonical form.</param>
    /// <param name="readings">What meters show, one entry an input, as <see cref="ReadingStudy"/> gives them; empty to draw without.</param>
    /// <param name="parts">The pieces of each input, one entry an input; empty to draw the plan's own cables.</param>
    public static DrawingSheet Of(Plan plan, Design design, ImmutableArray<ArrayReading?> readings, ImmutableArray<InputParts> parts)
    {
        List<Hookup> hookups = [];
        List<ArrayReading?> shown = [];
        (int panel, int joint) = (1, 1);
        for (int i = 0; i < design.Assignments.Length; i++)
        {
            if (design.Assignments[i] is { Wiring: { } wiring } assignment)
            {
                HookupPieces pieces = new(plan.Inputs[i].Input, plan.Cable, parts.IsEmpty ? null : parts[i]);
                Hookup hookup = new HookupBuilder(pieces, panel, joint).Build(assignment, plan.Inputs[i].Input.Unit);
                hookups.Add(hookup);
                shown.Add(readings.IsEmpty ? null : readings[i]);
                panel += wiring.Panels.Count();
                joint += hookup.Joints.Length;
            }
        }

        return new DrawingSheet
        {
            Plan = plan,
            Design = design,
            Hookups = [.. hookups],
            Readings = [.. shown],
            Warning = VerdictSentence.Warning(plan, design),
        };
    }

    /// <summary>A sheet of a parts list.</summary>
    /// <param name="parts">The list.</param>
    /// <param name="readings">What meters show, one entry an input, as <see cref="ReadingStudy"/> gives them for its plan and design; empty to draw without.</param>
    public static DrawingSheet Of(PartsList parts, ImmutableArray<ArrayReading?> readings)
    {
        DrawingSheet sheet = Of(parts.Plan, parts.Design, readings, parts.Inputs);
        return parts.Verdict > parts.Plan.Doubted(parts.Design.Verdict) ? sheet with { Warning = PartsScreen.Sentence(parts) } : sheet;
    }

    /// <summary>The circuit as a diagram: symbols, sizes, what meters show.</summary>
    public Picture Diagram() => WiringDiagram.Of(this);

    /// <summary>The array as it lies there: panels with their leads, and which goes into which.</summary>
    public Picture Arrangement() => ArrangementDrawing.Of(this);
}
