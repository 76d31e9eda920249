using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Limits;

namespace Arraywright;

/// <summary>What the search looked at and what it proved.</summary>
/// <param name="Family">Name of the family of wirings: "strings" or "strings of panels and side-by-side blocks".</param>
/// <param name="Considered">Wirings in the family, equal panels not told apart; as a double, since it may pass 2^63.</param>
/// <param name="Feasible">Of these, how many break no hard limit.</param>
/// <param name="BoundW">No wiring of the family does better than this, in the unit of <see cref="Design.ObjectiveW"/>.</param>
/// <param name="GapPercent">How far the bound lies above the best found, %; 0 when proved.</param>
/// <param name="Proved">True when the best found is the best there is, at the objective's resolution.</param>
public sealed record SearchReport(string Family, double Considered, double Feasible, double BoundW, double GapPercent, bool Proved)
{
    /// <summary>How the moments searched by compare with every step of the span; null when the moments themselves are the goal.</summary>
    public ExactComparison? Exact { get; init; }

    /// <summary>True when the search was called off: the best so far, with the gap as it then stood.</summary>
    public bool StoppedEarly { get; init; }
}

/// <summary>How well the moments that a search went by stand for the whole span that the goal is about.</summary>
/// <param name="Moments">Weighted moments searched by.</param>
/// <param name="Resolved">Designs solved again over every step.</param>
/// <param name="DisagreementPercent">How much more another of these designs gained on its moments, solved exactly, than the one put first did, %; 0 when none did.</param>
/// <param name="MomentsGapPercent">The gap of the search on the moments alone, %.</param>
public readonly record struct ExactComparison(int Moments, int Resolved, double DisagreementPercent, double MomentsGapPercent);

/// <summary>The answer to a plan or a check: what every screen, the report and the JSON show.</summary>
public sealed record PlanResult
{
    /// <summary>The plan answered.</summary>
    public required Plan Plan { get; init; }

    /// <summary>Best first, at least one.</summary>
    public required ImmutableArray<Design> Designs { get; init; }

    /// <summary>The days that energies are of; null for a year.</summary>
    public DaySpan? Dates { get; init; }

    /// <summary>What the search did; null for a check.</summary>
    public required SearchReport? Search { get; init; }

    /// <summary>Everything filled in, reading and computing, in a stable order.</summary>
    public required ImmutableArray<Assumption> Assumed { get; init; }

    /// <summary>The temperatures the designs were judged by, with what else is known of the cold.</summary>
    public DesignTemperatures? Temperatures { get; init; }

    /// <summary>The usual cautions.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The verdict of the first design, or worse where a label is in doubt.</summary>
    public Level Verdict => Plan.Doubted(Designs[0].Verdict);
}
