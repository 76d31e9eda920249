using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>How much any wiring of the family can bring over every step of the span: what the moments cannot prove.</summary>
/// <remarks>
/// No wiring brings more than its panels do each by itself, or its strings (<see cref="PanelsAlone"/>). Where the family is small, each of its wirings is
/// solved over one part of the days after another, until what it has brought and what its strings alone could still bring is no more than the best: then it is
/// ruled out. One that is not has been solved whole. See docs/models-search.md.
/// </remarks>
internal sealed class ExactProof
{
    /// <summary>Parts that the days are dealt into: a poor wiring is ruled out after the first or second.</summary>
    private const int Parts = 8;

    /// <summary>Wirings in the family that may be gone through.</summary>
    private const int MostFeasible = 20_000;

    /// <summary>Wirings looked at one by one.</summary>
    private const int MostListed = 3000;

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
    private double _bestKWh;

    private ExactProof(ExactSpan span, SearchProblem family, double bestKWh)
    {
        (_span, _family, _bestKWh) = (span, family, bestKWh);
        _days = DayParts.Of(span.Series, Parts);
        double[] coldV = [.. family.Stocks.Select(stock => stock.ColdModelV)];
        _alone = new PanelsAlone[_days.Length];
        Threads.ForAll(_days.Length, part => _alone[part] = new PanelsAlone(span.Physics, _days[part], coldV, EnergyOptions.Default));
    }

    /// <summary>No wiring of the family brings more, kWh.</summary>
    public double BoundKWh { get; private set; }

    /// <summary>All other wirings of the family that could matter, each solved over every step or ruled out on the way; 0 where they were too many for that.</summary>
    public int LookedAt { get; private set; }

    /// <summary>Whether nothing is left that could bring more than the best known.</summary>
    public bool IsComplete => BoundKWh <= _bestKWh * (1 + Same);

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
        double bestKWh = solved.Max(one => one.KWh);
        ExactProof proof = new(span, family, bestKWh);
        proof.BoundKWh = Math.Max(bestKWh, proof._alone.Sum(days => days.MostKWh()));
        if (!proof.IsComplete && report.Feasible <= MostFeasible && WiringList.All(family, MostListed, proof.Matters(), cancellation) is { } all)
        {
            var alike = new AlikeInputs(family);
            HashSet<string> known = [.. solved.Select(one => alike.Key(one.Candidate.Wirings))];
            proof.LookAtEach([.. all.Where(candidate => known.Add(alike.Key(candidate.Wirings)))], cancellation);
        }

        return proof;
    }

    /// <summary>Whether so many panels of each kind could bring more than the best, each by itself.</summary>
    private Func<int[], bool> Matters()
    {
        double[] panelKWh = [.. _family.Stocks.Select((_, stock) => _alone.Sum(days => days.PanelKWh(stock)))];
        double toBeatKWh = _bestKWh;
        return taken => taken.Zip(panelKWh, (count, kWh) => count * kWh).Sum() > toBeatKWh;
    }

    private void LookAtEach(Candidate[] all, CancellationToken cancellation)
    {
        Contender[] open = Contenders(all, cancellation);
        List<Candidate> better = [];
        double boundKWh = _bestKWh;
        long work = 0;
        int at = 0;
        while (at < open.Length && work < MostWork && !cancellation.IsCancellationRequested)
        {
            Contender[] batch = open[at..Math.Min(at + Batch, open.Length)];
            (double MostKWh, long Work)[] looked = new (double, long)[batch.Length];
            double toBeatKWh = _bestKWh;
            Threads.ForAll(batch.Length, i => looked[i] = Look(batch[i], toBeatKWh));
            for (int i = 0; i < batch.Length; i++)
            {
                work += looked[i].Work;
                if (looked[i].MostKWh > _bestKWh * (1 + Same))
                {
                    // Not ruled out, so solved whole.
                    _bestKWh = looked[i].MostKWh;
                    better.Add(batch[i].Candidate);
                }
            }

            boundKWh = Math.Max(boundKWh, _bestKWh);
            at += batch.Length;
        }

        BoundKWh = Math.Min(BoundKWh, open.Skip(at).Select(left => left.AloneKWh.Sum()).Append(boundKWh).Max());
        LookedAt = at == open.Length || open[at].AloneKWh.Sum() <= _bestKWh ? all.Length : 0;
        Better = [.. better];
    }

    /// <summary>What may bring more than the best, with what its strings alone bring over each part of the days; most first.</summary>
    private Contender[] Contenders(Candidate[] all, CancellationToken cancellation)
    {
        ImmutableArray<PanelStock> stocks = _span.Physics.Plan.Panels;
        Contender[] byPanels = new Contender[all.Length];
        Threads.ForAll(all.Length, i => byPanels[i] = Alone(all[i], (wiring, part) =>
            [.. stocks.Select((stock, index) => ((double)wiring.Panels.Count(name => name == stock.Panel.Name), _alone[part].Panel(index)))]));
        byPanels = [.. byPanels.Where(one => one.AloneKWh.Sum() > _bestKWh)];

        Wiring[] strings = [.. byPanels.SelectMany(one => one.Candidate.Wirings).SelectMany(wiring => wiring?.Strings ?? []).DistinctBy(WiringText.Print)];
        long stringWork = strings.Sum(part => (long)DifferentPanels(part)) * _days.Sum(days => days.Count);
        if (stringWork > MostWork / 2 || byPanels.Length <= strings.Length || cancellation.IsCancellationRequested)
        {
            return ByEnergy(byPanels);
        }

        PowerAlone[][] powers = new PowerAlone[strings.Length][];
        Threads.ForAll(strings.Length, i => powers[i] = [.. _alone.Select(days => days.String(strings[i]))]);
        var place = strings.Select((part, index) => (Text: WiringText.Print(part), index)).ToDictionary(one => one.Text, one => one.index, StringComparer.Ordinal);
        Contender[] byStrings = new Contender[byPanels.Length];
        Threads.ForAll(byPanels.Length, i => byStrings[i] = Alone(byPanels[i].Candidate, (wiring, part) => [.. wiring.Strings.Select(own => (1.0, powers[place[WiringText.Print(own)]][part]))]));
        return ByEnergy([.. byStrings.Where(one => one.AloneKWh.Sum() > _bestKWh)]);
    }

    private Contender Alone(Candidate candidate, Func<Wiring, int, (double Count, PowerAlone Power)[]> sources) => new(
        candidate,
        [.. _alone.Select((days, part) => days.MostKWh([.. candidate.Wirings.Select(wiring => wiring is null ? [] : sources(wiring, part))]))]);

    /// <summary>Most energy first; the order of the list decides between equals.</summary>
    private static Contender[] ByEnergy(Contender[] all) => [.. all.OrderByDescending(one => one.AloneKWh.Sum())];

    /// <summary>The most that a wiring may bring: what it does bring where it is solved to the end, else no more than what it had to beat.</summary>
    private (double MostKWh, long Work) Look(Contender one, double toBeatKWh)
    {
        double mostKWh = one.AloneKWh.Sum();
        long work = 0;
        int panels = one.Candidate.Wirings.Sum(wiring => wiring is null ? 0 : wiring.Strings.DistinctBy(WiringText.Print).Sum(DifferentPanels));
        for (int part = 0; part < _days.Length && mostKWh > toBeatKWh; part++)
        {
            mostKWh += _span.DeliveredKWh(one.Candidate.Wirings, _days[part]) - one.AloneKWh[part];
            work += (long)panels * _days[part].Count;
        }

        return (mostKWh, work);
    }

    /// <summary>Panels of a string that the circuit solves apart: equal ones are one.</summary>
    private static int DifferentPanels(Wiring part) => part.Panels.Distinct().Count();

    /// <summary>A wiring with what its panels or strings bring each by itself over each part of the days, kWh.</summary>
    private sealed record Contender(Candidate Candidate, double[] AloneKWh);
}
