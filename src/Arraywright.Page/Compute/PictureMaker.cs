using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Drawing;

namespace Arraywright.Page.Compute;

/// <summary>Draws the first design of an answer.</summary>
internal static class PictureMaker
{
    /// <summary>The panels and their plugs, the circuit, the curve of each connected input.</summary>
    public static PictureSheet Of(PlanResult result, PlannerOptions options)
    {
        Design best = result.Designs[0];
        if (best.Assignments.All(assignment => assignment.Wiring is null))
        {
            return new PictureSheet(null, null, []);
        }

        DrawingSheet sheet = DrawingSheet.Of(result.Plan, best, ReadingStudy.Of(result.Plan, best, options), []);
        return new PictureSheet(
            sheet.Arrangement().ToSvg(),
            sheet.Diagram().ToSvg(),
            [.. CurveStudy.Of(result, options).Select(curve => new NamedPicture(curve.Assignment.Input, CurvePlot.Of(curve).ToSvg(), new CurveLine(curve.VoltageV, curve.CurrentA)))]);
    }
}
