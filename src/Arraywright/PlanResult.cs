using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Limits;

namespace Arraywright;

/// <summary>What the search looked at and what it proved.</summary>
/// <param name="Family">Name of the family of wirings: "strings" or "strings of panels and side-by-side blocks".</param>
/// <param name="Considered">Wirings in the family that connect something, equal panels not told apart; as a double, since it may pass 2^63.</param>
/// <param name="Feasible">Of these, how many break no limit that was searched within.</param>
/// <param name="BoundW">No wiring of the family does better than this, in the unit of <see cref="Design.ObjectiveW"/>: proved over every step of the span, where there is one.</param>
/// <param name="GapPercent">How far the bound lies above the design put first, %.</param>
/// <param name="Proved">True when no wiring of the family is better than the one put first by more than what counts as a tie, 0.05 %.</param>
public sealed record SearchReport(string Family, double Considered, double Feasible, double BoundW, double GapPercent, bool Proved)
{
    /// <summary>What rests on the moments searched by and what on every step of the span; null when the moments themselves are the goal.</summary>
    public ExactComparison? Exact { get; init; }

    /// <summary>True when the search was called off: the best so far, with the gap as it then stood.</summary>
    public bool StoppedEarly { get; init; }
}

/// <summary>How well the moments that a search went by stand for the whole span that the goal is about.</summary>
public readonly record struct ExactComparison
{
    /// <summary>Weighted moments searched by.</summary>
    public required int Moments { get; init; }

    /// <summary>Whether the search proved its best to be the best there is on the moments.</summary>
    public required bool MomentsProved { get; init; }

    /// <summary>The gap of the search on the moments alone, %.</summary>
    public required double MomentsGapPercent { get; init; }

    /// <summary>Designs solved again over every step, and ranked by that.</summary>
    public required int Resolved { get; init; }

    /// <summary>How much more another of these designs gained on its moments, solved exactly, than the one put first did, %; 0 when none did.</summary>
    public required double DisagreementPercent { get; init; }

    /// <summary>The gap if the moments flatter no wiring less than the one of these designs that they flatter least, %: likely, not proved.</summary>
    public required double LikelyGapPercent { get; init; }

    /// <summary>All other wirings of the family, each solved over every step or ruled out on the way; 0 where they were too many for that.</summary>
    public required int LookedAt { get; init; }
}

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
