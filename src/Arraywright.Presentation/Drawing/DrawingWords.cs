using System.Text;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Drawing;

/// <summary>What the drawings say in words.</summary>
internal static class DrawingWords
{
    /// <summary>Whether this input must not be connected at all.</summary>
    public static bool IsStopped(Hookup hookup) => hookup.Verdict == Level.Stop;

    /// <summary>The input, with its unit where it has one.</summary>
    public static string Input(Hookup hookup) => hookup.Unit is { } unit ? $"{unit}, input {hookup.Assignment.Input}" : hookup.Assignment.Input;

    /// <summary>What the input draws, or why it draws nothing.</summary>
    public static IEnumerable<string> AtUnit(Hookup hookup)
    {
        Assignment assignment = hookup.Assignment;
        OperatingPoint taken = assignment.Operating;
        if (IsStopped(hookup))
        {
            yield return "STOP: do not connect it";
        }
        else if (taken.LimitedBy == LimitedBy.Off)
        {
            yield return "the input does not start";
        }
        else
        {
            yield return $"{ArrayDiagram.AtWork(taken.VoltageV, taken.CurrentA)}, {Figures.Of(taken.PowerW, "W")}";
        }

        yield return $"{ArrayDiagram.Open(assignment.VocColdV)} at the coldest";
    }

    /// <summary>The limit that must not be passed.</summary>
    public static string Limit(DcInput input) => $"bears at most {Figures.Stated(input.MaxVoltageV, "V")}";

    /// <summary>Every panel and joint, for a reader who cannot see the drawing.</summary>
    public static string InSentences(DrawingSheet sheet)
    {
        StringBuilder text = new();
        if (sheet.Warning is { } warning)
        {
            text.Append(warning).Append(' ');
        }

        for (int i = 0; i < sheet.Hookups.Length; i++)
        {
            Hookup hookup = sheet.Hookups[i];
            text.Append($"{Input(hookup)}: {WiringText.Print(hookup.Assignment.Wiring!)}. {WiringWords.Describe(hookup.Assignment.Wiring!)} ");
            text.Append($"At the unit: {string.Join("; ", AtUnit(hookup))}. From the array to the unit: {string.Join("; ", hookup.Trunk.Select(step => step.Element.InFull))}. ");
            text.Append("Joints in the order of connecting: ");
            text.AppendJoin("; ", hookup.Joints.Select(joint => $"{joint.Number}, {joint.From} into {joint.Into}")).Append(". ");
        }

        return text.ToString().TrimEnd();
    }

    /// <summary>An id of letters, digits and hyphens.</summary>
    public static string Id(string kind, DrawingSheet sheet) => $"{kind}-{string.Join('-', sheet.Hookups.Select(hookup => hookup.Assignment.Input))}";
}
