using Arraywright.Electrical;

namespace Arraywright.Presentation.Terminal;

/// <summary>A curve in one line: plan, input, wiring and conditions.</summary>
public static class CurveTitle
{
    /// <summary>The title of a curve.</summary>
    public static string Of(CurveResult curve) =>
        $"{curve.Plan.Name}: {curve.Assignment.Input}: {WiringText.Print(curve.Assignment.Wiring!)}, {MeterTable.At(curve.Assignment.Conditions)}";
}
