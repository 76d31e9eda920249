using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>How much any wiring of the family can bring over every step of the span: what the moments cannot prove.</summary>
/// <remarks>
/// No wiring brings more than its panels do each by itself (<see cref="PanelsAlone"/>). Where the family is small, each of its wirings is solved over one part
/// of the days after another, until what it has brought and what its panels alone could still bring is no more than the best: then it is ruled out. One that
/// is not has been solved whole.
/// </remarks>
internal sealed class ExactProof
{
    /// <summary>Parts that the days are dealt into: a poor wiring is ruled out after the first or second.</summary>
    private const int Parts = 8;

    /// <summary>Wirings looked at one by one, at most.</summary>
    private const int MostListed = 2000;

    /// <summary>Wirings solved side by side against the same best, so that nothing depends on the number of threads.</summary>
    private const int Batch = 16;

    /// <summary>Work before it stops, in steps times different panels of the wiring: some tenths of a second.</summary>
    private const long MostWork = 600_000;

    /// <summary>Energies this close, as a share, are the same: well above what the solver leaves.</summary>
    private const double Same = 1e-9;

    private readonly ExactSpan _span;
    private readonly SearchProblem _family;
    private readonly ImmutableArray<SunSeries> _days;
    private readonly PanelsAlone[] _alone;

    private ExactProof(ExactSpan span, SearchProblem family)
    {
        (_span, _family) = (span, family);
        _days = DayParts.Of(span.Series, Parts);
        double[] coldV = [.. family.Stocks.Select(stock => stock.ColdModelV)];
        _alone = new PanelsAlone[_days.Length];
        ForAll(_days.Length, part => _alone[part] = new PanelsAlone(span.Physics, _days[part], coldV, EnergyOptions.Default));
    }

    /// <summary>No wiring of the family brings more, kWh.</summary>
    public double BoundKWh { get; private set; }

    /// <summary>All other wirings of the family, each solved over every step or ruled out on the way; 0 where they were too many for that.</summary>
    public int LookedAt { get; private set; }

    /// <summary>Wirings found on the way that bring more than the best known before.</summary>
    public ImmutableArray<Candidate> Better { get; private set; } = [];

    /// <summary>Bounds what a family can bring.</summary>
    /// <param name="span">The span.</param>
    /// <param name="family">The search's problem, its stocks in plan order.</param>
    /// <param name="report">What the search did.</param>
    /// <param name="solved">Wirings solved over every step, with their energy, kWh; at least one.</param>
    /// <param name="cancellation">Ends it early, with an honest bound.</param>
    public static ExactProof Of(ExactSpan span, SearchProblem family, SearchReport report, IReadOnlyList<(Candidate Candidate, double KWh)> solved, CancellationToken cancellation)
    {
        ExactProof proof = new(span, family);
        double bestKWh = solved.Max(one => one.KWh);
        double aloneKWh = proof._alone.Sum(days => days.MostKWh());
        proof.BoundKWh = Math.Max(bestKWh, aloneKWh);
        if (aloneKWh > bestKWh * (1 + Same) && report.Feasible <= MostListed && WiringList.All(family, MostListed, cancellation) is { } all)
        {
            proof.LookAtEach(all, solved, bestKWh, cancellation);
        }

        return proof;
    }

    private void LookAtEach(ImmutableArray<Candidate> all, IReadOnlyList<(Candidate Candidate, double KWh)> solved, double bestKWh, CancellationToken cancellation)
    {
        var alike = new AlikeInputs(_family);
        HashSet<string> known = [.. solved.Select(one => alike.Key(one.Candidate.Wirings))];
        Candidate[] open = [.. all.Where(candidate => known.Add(alike.Key(candidate.Wirings)))];
        List<Candidate> better = [];
        double boundKWh = bestKWh;
        long work = 0;
        bool isCut = false;
        for (int from = 0; from < open.Length; from += Batch)
        {
            Candidate[] batch = open[from..Math.Min(from + Batch, open.Length)];
            (double MostKWh, long Work)[] looked = new (double, long)[batch.Length];
            bool isOver = work >= MostWork || cancellation.IsCancellationRequested;
            double toBeatKWh = bestKWh;
            ForAll(batch.Length, i => looked[i] = Look(batch[i].Wirings, toBeatKWh, isOver ? 0 : _days.Length));
            for (int i = 0; i < batch.Length; i++)
            {
                work += looked[i].Work;
                boundKWh = Math.Max(boundKWh, looked[i].MostKWh);
                if (!isOver && looked[i].MostKWh > bestKWh * (1 + Same))
                {
                    // Not ruled out, so solved whole.
                    bestKWh = looked[i].MostKWh;
                    better.Add(batch[i]);
                }
            }

            isCut |= isOver;
        }

        BoundKWh = Math.Min(BoundKWh, boundKWh);
        LookedAt = isCut ? 0 : open.Length;
        Better = [.. better];
    }

    /// <summary>The most that a wiring may bring: what it does bring where it is solved to the end, else no more than what it had to beat.</summary>
    /// <param name="wirings">One entry an input.</param>
    /// <param name="toBeatKWh">A wiring that brings no more is of no interest.</param>
    /// <param name="parts">Parts of the days to solve at most.</param>
    private (double MostKWh, long Work) Look(ImmutableArray<Wiring?> wirings, double toBeatKWh, int parts)
    {
        int[][] counts = [.. wirings.Select(wiring => (int[])[.. _span.Physics.Plan.Panels.Select(stock => wiring?.Panels.Count(name => name == stock.Panel.Name) ?? 0)])];
        double[] aloneKWh = [.. _alone.Select(days => days.MostKWh(counts))];
        double mostKWh = aloneKWh.Sum();
        long work = 0;
        int panels = wirings.Sum(wiring => wiring is null ? 0 : DifferentPanels(wiring));
        for (int part = 0; part < parts && mostKWh > toBeatKWh; part++)
        {
            mostKWh += _span.DeliveredKWh(wirings, _days[part]) - aloneKWh[part];
            work += (long)panels * _days[part].Count;
        }

        return (mostKWh, work);
    }

    /// <summary>Panels that the circuit solves apart: equal ones of a string, and equal strings, are one.</summary>
    private static int DifferentPanels(Wiring wiring) => wiring is Wiring.Parallel parallel
        ? parallel.Parts.DistinctBy(WiringText.Print).Sum(part => part.Panels.Distinct().Count())
        : wiring.Panels.Distinct().Count();

    private static void ForAll(int count, Action<int> body)
    {
        if (OperatingSystem.IsBrowser())
        {
            for (int i = 0; i < count; i++)
            {
                body(i);
            }
        }
        else
        {
            Parallel.For(0, count, body);
        }
    }
}
