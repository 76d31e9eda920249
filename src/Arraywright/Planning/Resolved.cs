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

    private Resolved(RankingWorth ranking, ImmutableArray<Candidate> ranked, ImmutableArray<Candidate> others, int found, double? favour, double disagreement) =>
        (_ranking, Ranked, Others, _found, _favour, _disagreement) = (ranking, ranked, others, found, favour, disagreement);

    /// <summary>The candidates to rank, best first, with their exact worth.</summary>
    public ImmutableArray<Candidate> Ranked { get; }

    /// <summary>The others in the order given, with their exact worth.</summary>
    public ImmutableArray<Candidate> Others { get; }

    /// <summary>Solves candidates again and ranks the first of them.</summary>
    /// <param name="exact">The span; null where the moments are all there is.</param>
    /// <param name="ranking">What the moments make of a wiring.</param>
    /// <param name="found">What the search found, as it ranked them.</param>
    /// <param name="others">Others that are shown beside them.</param>
    public static Resolved Of(ExactSpan? exact, RankingWorth ranking, ImmutableArray<Candidate> found, ImmutableArray<Candidate> others)
    {
        ImmutableArray<Candidate> all = [.. found, .. others];
        if (exact is null || all.IsEmpty)
        {
            return new Resolved(ranking, found, others, found.Length, null, 0);
        }

        double[] kWh = exact.DeliveredKWh([.. all.Select(one => one.Wirings)]);
        Candidate[] solved = [.. all.Select((one, index) => one with { ObjectiveW = ranking.ObjectiveOf(kWh[index]) })];
        ImmutableArray<Candidate> ranked = Ranks(solved.Take(found.Length));
        double most = 1;
        double disagreement = 0;
        if (!found.IsEmpty)
        {
            // Exact worth over worth on the moments.
            double[] favour = [.. found.Select((one, index) => solved[index].ObjectiveW / one.ObjectiveW)];
            int best = Enumerable.Range(0, found.Length).First(index => found[index].Wirings == ranked[0].Wirings);
            most = favour.Max();
            disagreement = (most / favour[best]) - 1;
        }

        return new Resolved(ranking, ranked, [.. solved.Skip(found.Length)], found.Length, most, disagreement);
    }

    /// <summary>The same with wirings that turned out better ranked among them.</summary>
    /// <param name="exact">The span.</param>
    /// <param name="better">Of any worth: they are solved over every step here.</param>
    public Resolved With(ExactSpan exact, ImmutableArray<Candidate> better)
    {
        if (better.IsEmpty)
        {
            return this;
        }

        double[] kWh = exact.DeliveredKWh([.. better.Select(one => one.Wirings)]);
        IEnumerable<Candidate> solved = better.Select((one, index) => one with { ObjectiveW = _ranking.ObjectiveOf(kWh[index]) });
        return new Resolved(_ranking, Ranks([.. Ranked, .. solved]), Others, _found + better.Length, _favour, _disagreement);
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

    private static ImmutableArray<Candidate> Ranks(IEnumerable<Candidate> solved) =>
        Search.Ranking.Of([.. solved.OrderByDescending(one => one.ObjectiveW)], SearchOptions.Default);
}
