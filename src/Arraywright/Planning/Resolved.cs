using System.Collections.Immutable;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>The candidates of a search, solved again over every step of the span where there is one.</summary>
internal sealed class Resolved
{
    /// <summary>Powers this close, as a share, are the same: well above what the solver leaves.</summary>
    private const double SameW = 1e-9;

    private readonly ExactComparison? _comparison;
    private readonly double _favour;

    private Resolved(ImmutableArray<Candidate> ranked, ImmutableArray<Candidate> others, ExactComparison? comparison, double favour) =>
        (Ranked, Others, _comparison, _favour) = (ranked, others, comparison, favour);

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
            return new Resolved(found, others, null, 1);
        }

        double[] kWh = exact.DeliveredKWh([.. all.Select(one => one.Wirings)]);
        Candidate[] solved = [.. all.Select((one, index) => one with { ObjectiveW = ranking.ObjectiveOf(kWh[index]) })];
        ImmutableArray<Candidate> ranked = Search.Ranking.Of([.. solved.Take(found.Length).OrderByDescending(one => one.ObjectiveW)], SearchOptions.Default);
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

        ExactComparison comparison = new(ranking.Ranking.Moments.Length, found.Length, 100 * disagreement, 0);
        return new Resolved(ranked, [.. solved.Skip(found.Length)], comparison, most);
    }

    /// <summary>The search's report, its bound and gap in terms of the exact span.</summary>
    /// <remarks>
    /// What a wiring brings exactly differs a little from what the moments make of it, and not for all wirings alike. A wiring that the search left behind
    /// is given the benefit of the most favourable difference seen among those solved again.
    /// </remarks>
    public SearchReport Report(SearchReport onMoments)
    {
        if (_comparison is not { } comparison || Ranked.IsEmpty)
        {
            return onMoments;
        }

        double bestW = Ranked[0].ObjectiveW;
        double boundW = onMoments.BoundW * _favour;
        boundW = boundW > bestW * (1 + SameW) ? boundW : bestW;
        return onMoments with
        {
            BoundW = boundW,
            GapPercent = 100 * ((boundW / bestW) - 1),
            Exact = comparison with { MomentsGapPercent = onMoments.GapPercent },
        };
    }
}
