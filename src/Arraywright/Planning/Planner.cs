using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>The main job: from a plan to its judged, ranked and proved answer.</summary>
public static class Planner
{
    /// <summary>Designs shown at most.</summary>
    private const int Shown = 6;

    /// <summary>The maker's word is worth mentioning from this gain on, fraction.</summary>
    private const double WorthAsking = 0.005;

    /// <summary>A wiring is clearly roomier when its coldest voltage is this share of the best one's, or less.</summary>
    private const double RoomierShare = 0.9;

    /// <summary>Enough to find a good roomier wiring; it is shown beside the best, not proved.</summary>
    private const long RoomierNodes = 20_000;

    /// <summary>Finds, proves and ranks the wirings of a plan.</summary>
    /// <remarks>
    /// Ranks first what may be connected without asking anybody; then, named as such, what would earn more if every maker agreed.
    /// Where nothing may be connected at all, one design stands for all, with the reasons to stop.
    /// </remarks>
    /// <exception cref="OperationCanceledException">It was called off before anything was found.</exception>
    public static PlanResult Answer(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation) =>
        Steps(plan, options, progress, cancellation).Last().Result;

    /// <summary>The same as it comes about, each step worked out when it is asked for.</summary>
    /// <returns>
    /// The best that may be connected without asking anybody, alone, as soon as it is certain; not where nothing may be. Then the whole answer, which begins
    /// with that design.
    /// </returns>
    /// <exception cref="OperationCanceledException">It was called off before anything was found.</exception>
    public static IEnumerable<(PlanResult Result, bool IsWhole)> Steps(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        options = options with { Memory = options.Memory ?? new SunMemory(1) };
        bool isOpen = CableSizing.IsOpen(plan);
        PlanResult? before = null;

        // The best wiring decides an open cable and the cable, a little, the best wiring: sizes only grow from round to round, so this ends.
        for (Plan sized = isOpen ? CableSizing.Thinnest(plan) : plan, next; ; sized = next)
        {
            next = sized;
            bool isAny = false;
            foreach ((PlanResult found, bool isWhole) in SizedSteps(sized, options, progress, cancellation))
            {
                isAny = true;
                next = isOpen ? CableSizing.For(sized, Wirings(found.Designs[0])) : sized;
                PlanResult result = isOpen ? found with { Plan = next with { Cable = sized.Cable }, Assumed = Said(found.Assumed, next) } : found;
                if (!SameSizes(next.Cable, sized.Cable) && !cancellation.IsCancellationRequested)
                {
                    before = result;
                    break;
                }

                yield return (result, isWhole);
            }

            if (!isAny)
            {
                // What the round before found stands, with the cable it was found with.
                yield return before is { Search: { } search }
                    ? (before with { Search = search with { StoppedEarly = true } }, true)
                    : throw new OperationCanceledException(cancellation);
            }

            if (!isAny || SameSizes(next.Cable, sized.Cable) || cancellation.IsCancellationRequested)
            {
                yield break;
            }
        }
    }

    private static bool SameSizes(Cable one, Cable other) => one.AreaMm2.Value == other.AreaMm2.Value && one.StringAreaMm2.Value == other.StringAreaMm2.Value;

    /// <summary>The wirings of a design, one entry an input.</summary>
    internal static ImmutableArray<Wiring?> Wirings(Design design) => [.. design.Assignments.Select(assignment => assignment.Wiring)];

    /// <summary>The list with what a sized plan says of its cable.</summary>
    private static ImmutableArray<Assumption> Said(ImmutableArray<Assumption> assumed, Plan sized) =>
        [.. assumed.Select(assumption => assumption.What == Cable.SizeName ? sized.Assumed.First(said => said.What == Cable.SizeName) : assumption)];

    /// <summary>The same with the cable that the plan has; nothing where it was called off before anything was found.</summary>
    private static IEnumerable<(PlanResult Result, bool IsWhole)> SizedSteps(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        Setting setting = new(plan, options);
        SearchSetup setup = new(setting.Physics, setting.Ranking, setting.Judge);
        SearchProblem within = setup.Problem(Level.Go);
        SearchProblem beyond = setup.Problem(Level.Ask);
        using var asking = new AskingSearch(within, beyond, cancellation);
        SearchOutcome go = WiringSearch.Run(within, SearchOptions.Default, progress, cancellation);
        Settled settled = Settle(setting, within, go, cancellation);
        Design? first = null;
        if (settled.Resolved.Ranked is [{ } sure, ..])
        {
            first = setting.Design(sure, 1, sure.ChosenFor);
            yield return (setting.Result([first], settled.Resolved.Report(go.Report, settled.Proof)), false);
        }

        Candidate? roomier = go.Best.IsEmpty || go.Best.Length >= Shown ? null : MoreRoom(within, go.Best[0], cancellation);
        SearchOutcome? ask = asking.Outcome(isAll: go.Best.IsEmpty, progress);
        bool isAsking = go.Best.IsEmpty && ask is not null;
        settled = isAsking ? Settle(setting, beyond, ask!, cancellation) : settled;
        Resolved resolved = settled.Resolved;
        ImmutableArray<Candidate> askBest = isAsking ? resolved.Ranked
            : ask is { Best: [{ } most, ..] } ? [Resolved.Solve(setting.Exact, setting.Ranking, most)]
            : [];
        List<(Candidate Candidate, ImmutableArray<string> ChosenFor)> chosen = isAsking ? [] : [.. resolved.Ranked.Take(Shown).Select(candidate => (candidate, candidate.ChosenFor))];
        double bestGoW = chosen.Count == 0 ? 0 : chosen[0].Candidate.ObjectiveW;
        if (askBest is [{ } asked, ..] && asked.ObjectiveW > bestGoW * (1 + WorthAsking))
        {
            chosen.Insert(Math.Min(1, chosen.Count), (asked, ["earns most if the maker agrees"]));
            chosen.AddRange(chosen.Count > 1 ? [] : askBest.Skip(1).Select(candidate => (candidate, candidate.ChosenFor)));
        }

        if (chosen.Count == 0)
        {
            // Nothing found is no verdict when the search was called off.
            if (!cancellation.IsCancellationRequested)
            {
                ImmutableArray<Wiring?> least = LeastVolts(setting);
                yield return (setting.Result([setting.Judge.Judge(least, setting.Worth(least), 1, [])], ask is not null ? ask.Report : go.Report), true);
            }

            yield break;
        }

        if (chosen.Count < Shown && roomier is not null
            && new AlikeInputs(within) is var alike && !chosen.Exists(pick => alike.Key(pick.Candidate.Wirings) == alike.Key(roomier.Wirings)))
        {
            chosen.Add((Resolved.Solve(setting.Exact, setting.Ranking, roomier), ["more room to the voltage limit"]));
        }

        ImmutableArray<Design> designs =
        [
            .. chosen.Take(Shown).Select((pick, index) => index == 0 && first is not null ? first : setting.Design(pick.Candidate, index + 1, pick.ChosenFor)),
        ];
        yield return (setting.Result(designs, resolved.Report(isAsking ? ask!.Report : go.Report, settled.Proof)), true);
    }

    /// <summary>Solves what a search found over every step of the span, and proves it there.</summary>
    private static Settled Settle(Setting setting, SearchProblem family, SearchOutcome outcome, CancellationToken cancellation)
    {
        Resolved resolved = Resolved.Of(setting.Exact, setting.Ranking, [.. outcome.Best.Take(Shown)]);
        if (setting.Exact is not { } exact || resolved.Ranked.IsEmpty)
        {
            return new Settled(resolved, null);
        }

        var proof = ExactProof.Of(exact, family, outcome.Report, [.. resolved.Ranked.Select(one => (one, setting.Ranking.Worth(one.ObjectiveW).KWh!.Value))], cancellation);
        return new Settled(resolved.With(exact, proof.Better), proof);
    }

    /// <summary>Judges the wiring that the plan states.</summary>
    /// <exception cref="ArgumentException">No input of the plan states a wiring.</exception>
    public static PlanResult Check(Plan plan, PlannerOptions options)
    {
        ImmutableArray<Wiring?> stated = Stated(plan);
        Setting setting = new(CableSizing.IsOpen(plan) ? CableSizing.For(plan, stated) : plan, options);
        return setting.Result([setting.Judge.Judge(stated, setting.Worth(stated), 1, [])], search: null);
    }

    /// <summary>Writes the letters for the stated wiring, or for the best one where none is stated or the stated one must be stopped: no maker can clear that.</summary>
    public static AskResult Ask(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        bool isStated = plan.Inputs.Any(planned => planned.StatedWiring is not null);
        PlanResult result = isStated && Check(plan, options) is { Verdict: not Level.Stop } stated ? stated : Answer(plan, options, progress, cancellation);
        PlanPhysics physics = new(result.Plan, asked: options.Conditions);
        DesignJudge judge = new(physics, physics.Seen(options.Conditions));
        Design design = result.Designs.FirstOrDefault(design => design.Verdict == Level.Ask) ?? result.Designs[0];
        var letters = ImmutableArray.CreateBuilder<InputLetter>();
        for (int i = 0; i < plan.Inputs.Length; i++)
        {
            Assignment assignment = design.Assignments[i];
            if (assignment.Wiring is { } wiring && judge.Context(wiring, plan.Inputs[i].Input) is var context
                && MakerLetter.For(context, WiringText.Print(wiring), assignment.Findings) is { } letter)
            {
                letters.Add(new InputLetter(assignment.Input, letter, MakerLetter.WhereTheAnswerGoes(context, assignment.Findings) ?? ""));
            }
        }

        return new AskResult(result, letters.ToImmutable());
    }

    /// <summary>The wirings that the plan states, one entry an input.</summary>
    internal static ImmutableArray<Wiring?> Stated(Plan plan)
    {
        ImmutableArray<Wiring?> wirings = [.. plan.Inputs.Select(planned => planned.StatedWiring)];
        return wirings.Any(wiring => wiring is not null) ? wirings : throw new ArgumentException("No input of the plan states a wiring.", nameof(plan));
    }

    /// <summary>The best wiring that stays clearly below the voltage of the best: what caution would cost.</summary>
    private static Candidate? MoreRoom(SearchProblem within, Candidate best, CancellationToken cancellation)
    {
        double roomierV = RoomierShare * best.HighestColdV;
        SearchProblem lower = within with { Inputs = [.. within.Inputs.Select(input => input with { MaxVoltageV = Math.Min(input.MaxVoltageV, roomierV) })] };
        SearchOutcome outcome = WiringSearch.Run(lower, SearchOptions.Default with { NodeBudget = RoomierNodes }, progress: null, cancellation);
        return outcome.Best.IsEmpty ? null : outcome.Best[0];
    }

    /// <summary>One panel of the lowest cold voltage on the first input: if even that stops, nothing may be connected.</summary>
    private static ImmutableArray<Wiring?> LeastVolts(Setting setting)
    {
        Plan plan = setting.Physics.Plan;
        double ColdV(PanelStock stock) => ColdVoltage.Of(setting.Judge.Context(new Wiring.Single(stock.Panel.Name), plan.Inputs[0].Input));
        int best = Enumerable.Range(0, plan.Inputs.Length).MaxBy(i => plan.Inputs[i].Input.MaxVoltageV);
        return [.. plan.Inputs.Select((_, i) => i == best ? new Wiring.Single(plan.Panels.MinBy(ColdV)!.Panel.Name) : (Wiring?)null)];
    }

    /// <summary>The candidates over every step, and what is proved there; null where there are no steps, or no candidates.</summary>
    private sealed record Settled(Resolved Resolved, ExactProof? Proof);

    /// <summary>What every answer to one plan shares.</summary>
    internal sealed class Setting
    {
        private readonly PlannerOptions _options;

        public Setting(Plan plan, PlannerOptions options)
        {
            _options = options;
            Physics = new PlanPhysics(plan, options.Memory, options.Conditions);
            Seen = Physics.Seen(options.Conditions);
            Exact = ExactSpan.For(Physics);
            Ranking = new RankingWorth(Physics, Exact?.Ranking ?? RankingMoments.For(plan, Seen));
            Judge = new DesignJudge(Physics, Seen);
        }

        public PlanPhysics Physics { get; }

        public ImmutableArray<Conditions> Seen { get; }

        /// <summary>The span that designs are solved over again; null where the moments are all there is.</summary>
        public ExactSpan? Exact { get; }

        public RankingWorth Ranking { get; }

        public DesignJudge Judge { get; }

        /// <summary>A candidate as a design.</summary>
        public Design Design(Candidate candidate, int rank, ImmutableArray<string> chosenFor) => Judge.Judge(candidate.Wirings, Ranking.Worth(candidate.ObjectiveW), rank, chosenFor);

        /// <summary>What wirings are worth.</summary>
        public DesignEnergy Worth(ImmutableArray<Wiring?> wirings) =>
            Ranking.Worth(Exact is null ? Ranking.ObjectiveW(wirings) : Ranking.ObjectiveOf(Exact.DeliveredKWh([wirings])[0]));

        /// <summary>Everything filled in, reading and computing.</summary>
        public ImmutableArray<Assumption> Assumed =>
        [
            .. Physics.Plan.Assumed,
            .. Physics.Temperatures.Assumptions,
            .. Ranking.Ranking.Assumptions,
            .. Exact is null ? Physics.Plan.WeatherYear?.Assumptions ?? [] : [],
            .. ShownConditions(),
            .. Physics.Fits.Where(fit => !fit.Fit.Physical).Select(fit => new Assumption($"circuit model of {fit.Panel.Name}", "nearest to the label", fit.Fit.Note)),
        ];

        public PlanResult Result(ImmutableArray<Design> designs, SearchReport? search) => new()
        {
            Plan = Physics.Plan,
            Designs = designs,
            Dates = Exact?.Dates,
            Search = search,
            Temperatures = Physics.Temperatures with
            {
                ColdestDaylightAirC = Physics.Sun.Year?.ColdestDaylightAirC,
                ColdestDaylightCellC = Physics.Weather?.ColdestCellC,
                DaylightSource = Physics.Sun.Year?.Source,
            },
            Assumed = Assumed,
            Cautions = Cautions.For(designs.Select(design => design.HighestVocColdV).DefaultIfEmpty(0).Max()),
        };

        private IEnumerable<Assumption> ShownConditions()
        {
            StatedConditions stated = _options.Conditions;
            if (stated.IrradianceWPerM2 is null)
            {
                yield return new Assumption("sun for the meter and the loss ladder", $"{StatedConditions.StrongSunWPerM2:0} W/m²", "Strong sun, as labels have it; amps and watts follow it nearly in proportion. State another with --irradiance.");
            }

            if (stated.CellC is null && stated.AirC is null)
            {
                yield return new Assumption("air for the meter and the loss ladder", $"{StatedConditions.MildAirC:0} °C", "A mild day; each 10 °C more takes about 3 to 4 % of volts and watts. State another with --air or --cell.");
            }
        }
    }
}
