using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Planning;

namespace Arraywright.Page.Compute;

/// <summary>Puts an answer into replies as it comes about: words ahead of pictures where somebody would wait for them, what is folded away last, and no picture twice.</summary>
/// <param name="shown">The wirings on the screen, one an input; empty for none.</param>
/// <param name="options">What the question asked for.</param>
internal sealed class Telling(IReadOnlyList<string?> shown, PlannerOptions options)
{
    private (PlanResult Result, PictureMaker Maker)? _drawn;

    /// <summary>The replies for a result, each made when it is asked for.</summary>
    public IEnumerable<Reply> Tell(PlanResult result, AnswerStage stage)
    {
        AnswerSheet words = AnswerMaker.Of(result, stage);
        bool isSure = stage > AnswerStage.Before;
        if (_drawn is { } drawn && IsDrawn(drawn.Result, result))
        {
            yield return new Reply { Answer = words, IsSettled = isSure };
        }
        else
        {
            PictureMaker maker = new(result, options);
            _drawn = (result, maker);
            if (shown.Count > 0 && isSure)
            {
                // Words of one wiring beside the drawing of another would be plugged together wrongly; and one change of the screen is calmer, and done sooner, than two.
                string? diagram = Printed(result).SequenceEqual(shown) ? null : "";
                yield return new Reply { Answer = words, Pictures = maker.Seen(), Diagram = diagram, IsSettled = true };
            }
            else
            {
                yield return new Reply { Answer = words };
                yield return new Reply { Pictures = maker.Seen(), IsSettled = isSure };
            }
        }

        if (stage == AnswerStage.Whole)
        {
            yield return new Reply { Diagram = _drawn.Value.Maker.Diagram() };
        }
    }

    /// <summary>Whether the pictures of one answer are those of the other: the same wirings with the same copper and the same verdict.</summary>
    private static bool IsDrawn(PlanResult first, PlanResult result) =>
        first.Verdict == result.Verdict && Sizes(first.Plan.Cable) == Sizes(result.Plan.Cable) && Printed(first).SequenceEqual(Printed(result));

    private static (double, double) Sizes(Cable cable) => (cable.AreaMm2.Value, cable.StringAreaMm2.Value);

    private static IEnumerable<string?> Printed(PlanResult result) =>
        result.Designs[0].Assignments.Select(assignment => assignment.Wiring is { } wiring ? WiringText.Print(wiring) : null);
}
