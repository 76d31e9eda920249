using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Drawing;

namespace Arraywright.Page.Compute;

/// <summary>Draws the first design of an answer.</summary>
internal sealed class PictureMaker(PlanResult result, PlannerOptions options)
{
    private readonly DrawingSheet? _sheet = result.Designs[0] is var best && best.Assignments.All(assignment => assignment.Wiring is null)
        ? null
        : DrawingSheet.Of(result.Plan, best, ReadingStudy.Of(result.Plan, best, options), []);

    /// <summary>The panels and their plugs, and the curve of each connected input.</summary>
    public PictureSheet Seen() => _sheet is null
        ? new PictureSheet(null, [])
        : new PictureSheet(
            _sheet.Arrangement().ToSvg(),
            [.. CurveStudy.Of(result, options).Select(curve => new NamedPicture(curve.Assignment.Input, CurvePlot.Of(curve).ToSvg(), new CurveLine(Rounded(curve.VoltageV), Rounded(curve.CurrentA))))]);

    /// <summary>The circuit; null where nothing is connected.</summary>
    public string? Diagram() => _sheet?.Diagram().ToSvg();

    /// <summary>To a thousandth: finer than anybody reads off, and half as long to hand over.</summary>
    private static double[] Rounded(IEnumerable<double> values) => [.. values.Select(value => Math.Round(value, 3))];
}
