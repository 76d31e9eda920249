using System.Collections.Immutable;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>The candidates of a search, solved again over every step of the span where there is one.</summary>
internal sealed class Resolved
{
    /// <summary>Powers this close, as a share, are the same: well above what the solver leaves.</summary>
    private const double SameW = 1e-9;

    private readonly RankingWorth _ranking;

    /// <summary>How much more a wiring is worth over every step than on its moments, at most among those solved; null where there are no steps.</summary>
    private readonly double? _favour;
    private readonly double _disagreement;
    private readonly int _found;

    private Resolved(RankingWorth ranking, ImmutableArray<Candidate> ranked, int found, double? favour, double disagreement) =>
        (_ranking, Ranked, _found, _favour, _disagreement) = (ranking, ranked, found, favour, disagreement);

    /// <summary>The candidates to rank, best first, with their exact worth.</summary>
    public ImmutableArray<Candidate> Ranked { get; }

    /// <summary>Solves candidates again and ranks them.</summary>
    /// <param name="exact">The span; null where the moments are all there is.</param>
    /// <param name="ranking">What the moments make of a wiring.</param>
    /// <param name="found">What the search found, as it ranked them.</param>
    public static Resolved Of(ExactSpan? exact, RankingWorth ranking, ImmutableArray<Candidate> found)
    {
        if (exact is null || found.IsEmpty)
        {
            return new Resolved(ranking, found, found.Length, null, 0);
        }

        Candidate[] solved = Solve(exact, ranking, found);
        ImmutableArray<Candidate> ranked = Ranks(solved);

        // Exact worth over worth on the moments.
        double[] favour = [.. found.Select((one, index) => solved[index].ObjectiveW / one.ObjectiveW)];
        int best = Enumerable.Range(0, found.Length).First(index => found[index].Wirings == ranked[0].Wirings);
        return new Resolved(ranking, ranked, found.Length, favour.Max(), (favour.Max() / favour[best]) - 1);
    }

    /// <summary>A candidate with its exact worth; as it is where there are no steps.</summary>
    public static Candidate Solve(ExactSpan? exact, RankingWorth ranking, Candidate one) => exact is null ? one : Solve(exact, ranking, [one])[0];

    /// <summary>The same with wirings that turned out better ranked among them.</summary>
    /// <param name="exact">The span.</param>
    /// <param name="better">Of any worth: they are solved over every step here.</param>
    public Resolved With(ExactSpan exact, ImmutableArray<Candidate> better)
    {
        if (better.IsEmpty)
        {
            return this;
        }

        return new Resolved(_ranking, Ranks([.. Ranked, .. Solve(exact, _ranking, better)]), _found + better.Length, _favour, _disagreement);
    }

    /// <summary>The search's report in terms of the span: what is proved over every step, and what on the moments.</summary>
    /// <param name="onMoments">What the search proved on its moments.</param>
    /// <param name="proof">What is proved over every step; null where there are no steps, or nothing was found.</param>
    public SearchReport Report(SearchReport onMoments, ExactProof? proof)
    {
        if (_favour is not { } favour || proof is null)
        {
            return onMoments;
        }

        double firstW = Ranked[0].ObjectiveW;
        double boundW = _ranking.ObjectiveOf(proof.BoundKWh);
        double gap = boundW > firstW * (1 + SameW) ? (boundW / firstW) - 1 : 0;
        double likely = Math.Max((onMoments.BoundW * favour / firstW) - 1, Ranked.Max(one => one.ObjectiveW / firstW) - 1);
        return onMoments with
        {
            BoundW = firstW * (1 + gap),
            GapPercent = 100 * gap,
            Proved = gap <= SearchOptions.Default.NearTieFraction,
            Exact = new ExactComparison
            {
                Moments = _ranking.Ranking.Moments.Length,
                MomentsProved = onMoments.Proved,
                MomentsGapPercent = onMoments.GapPercent,
                Resolved = _found,
                DisagreementPercent = 100 * _disagreement,
                LikelyGapPercent = 100 * Math.Min(gap, likely > SameW ? likely : 0),
                LookedAt = proof.LookedAt,
            },
        };
    }

    private static Candidate[] Solve(ExactSpan exact, RankingWorth ranking, ImmutableArray<Candidate> all)
    {
        double[] kWh = exact.DeliveredKWh([.. all.Select(one => one.Wirings)]);
        return [.. all.Select((one, index) => one with { ObjectiveW = ranking.ObjectiveOf(kWh[index]) })];
    }

    private static ImmutableArray<Candidate> Ranks(IEnumerable<Candidate> solved) =>
        Search.Ranking.Of([.. solved.OrderByDescending(one => one.ObjectiveW)], SearchOptions.Default);
}
