using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>Hands a plan to the search.</summary>
internal sealed class SearchSetup(PlanPhysics physics, RankingWorth ranking, DesignJudge judge)
{
    /// <summary>Above so many panels the family with side-by-side blocks grows past what is proved quickly.</summary>
    private const int MostPanelsInBlocks = 8;

    private Plan Plan => physics.Plan;

    /// <summary>The search for the best wiring that no rule is worse than <paramref name="worst"/> about.</summary>
    /// <param name="worst">Go: within everything stated. Ask: within the volts and what stated parts bear, as if every maker had agreed.</param>
    public SearchProblem Problem(Level worst)
    {
        RuleContext context = judge.Context(new Wiring.Single(Plan.Panels[0].Panel.Name), Plan.Inputs[0].Input);
        ArrayPhysics rules = Remembering(context.Physics);
        context = context with { Physics = rules };
        double coldestC = physics.Temperatures.ColdestCellC;
        if (worst == Level.Go && physics.Temperatures.ClimateSuggestsColderC is { } colderC)
        {
            coldestC = Math.Min(coldestC, colderC);
        }

        return new SearchProblem
        {
            Stocks = [.. Plan.Panels.Select((stock, index) => Stock(stock, index, coldestC, worst, rules))],
            Inputs = [.. Plan.Inputs.Select(planned => Input(planned.Input, worst))],
            Weights = [.. ranking.Ranking.Moments.Select(moment => moment.WeightH)],
            UnitMaxW = [.. Plan.Units.Select(unit => unit.MaxPower?.Figure ?? double.PositiveInfinity)],
            UnitMaxLabelPowerW = worst > Level.Go ? [] : [.. Plan.Units.Select(InputAllowance.LabelPowerW)],
            MaxBesideA = new StringAllowance(context, worst).BesideA,
            StringOhm = physics.Wires.StringOhm,
            ContactOhm = physics.Wires.ContactOhm,
            Family = Plan.Panels.Length > 1 && Plan.Panels.Sum(stock => stock.Count) <= MostPanelsInBlocks ? WiringFamily.StringsOfBlocks : WiringFamily.Strings,
            Accept = wirings => judge.Passes(wirings, worst),
        };
    }

    /// <summary>Whether going by everything stated could leave out a wiring that the volts alone allow.</summary>
    public static bool LimitsBind(SearchProblem within, SearchProblem beyond) =>
        !within.Inputs.SequenceEqual(beyond.Inputs) || !within.Stocks.Select(stock => stock.ColdLabelV).SequenceEqual(beyond.Stocks.Select(stock => stock.ColdLabelV));

    /// <summary>Hundreds of positions ask for the cold volts of the same few panels.</summary>
    private static ArrayPhysics Remembering(ArrayPhysics physics)
    {
        var known = new Dictionary<(string, Conditions), double>();
        return physics with
        {
            OpenCircuitV = (panel, conditions) => known.TryGetValue((panel, conditions), out double voltageV)
                ? voltageV
                : known[(panel, conditions)] = physics.OpenCircuitV(panel, conditions),
        };
    }

    private SearchStock Stock(PanelStock stock, int index, double coldestC, Level worst, ArrayPhysics rules)
    {
        Panel panel = stock.Panel;
        ColdPanelVolts cold = ColdVoltage.PerPanel(panel, coldestC, rules);
        double doubt = Doubt(panel, worst);
        return new SearchStock(
            panel.Name,
            stock.Count,
            [.. ranking.Ranking.Moments.Select(moment => physics.Shaded(panel.Name, moment.ByStock[index]))],
            cold.CodeV * doubt,
            cold.ModelV * doubt,
            StringAllowance.SystemV(panel, worst) * Plan.Panels.Max(each => Caution(each.Panel, coldestC, worst, rules)),
            panel.ShortCircuitA,
            panel.PowerW.Value)
        {
            LabelImpA = panel.MaximumPowerA.Value,
            MaxBesideA = StringAllowance.BesideA(panel, worst),
        };
    }

    /// <summary>A tolerance that is only assumed does not stop, but it asks: to go, it must fit too.</summary>
    private static double Doubt(Panel panel, Level worst) => worst == Level.Go && panel.ToleranceFraction.Origin != Origin.Given ? 1 + panel.ToleranceFraction.Value : 1;

    /// <summary>How many times the plain cold volts the search reckons with, against which the panels' own system voltage is not held.</summary>
    private double Caution(Panel panel, double coldestC, Level worst, ArrayPhysics rules)
    {
        ColdPanelVolts plain = ColdVoltage.PerPanel(panel, physics.Temperatures.ColdestCellC, rules);
        ColdPanelVolts cold = ColdVoltage.PerPanel(panel, coldestC, rules);
        return Doubt(panel, worst) * Math.Max(cold.CodeV / plain.CodeV, cold.ModelV / plain.ModelV);
    }

    private SearchInput Input(DcInput input, Level worst)
    {
        SearchInput bare = new(input.Name, PlanPhysics.Window(input), input.MaxVoltageV, physics.Wires.RunOhm)
        {
            MaxIscSumA = InputAllowance.PartsA(input),
            Unit = Plan.Units.Select(unit => unit.Name).ToList().IndexOf(input.Unit ?? ""),
        };
        return worst > Level.Go
            ? bare
            : bare with
            {
                MaxIscSumA = Math.Min(bare.MaxIscSumA, InputAllowance.ShortCircuitA(input)),
                MaxImpSumA = InputAllowance.MaximumPowerA(input),
                MaxLabelPowerW = InputAllowance.LabelPowerW(input),
            };
    }
}
