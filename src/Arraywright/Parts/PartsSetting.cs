using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits.Conductors;
using Arraywright.Planning;

namespace Arraywright.Parts;

/// <summary>What every piece of one plan is sized by.</summary>
internal sealed class PartsSetting
{
    public PartsSetting(Plan plan, StatedConditions stated)
    {
        Plan = plan;
        Physics = new PlanPhysics(plan, asked: stated);
        Seen = Physics.Seen(stated);
        Judge = new DesignJudge(Physics, Seen);
        Place = ConductorPlace.Of(plan, Physics.Temperatures);
        Prices = new PriceList(plan);
        Span = ExactSpan.For(new PlanPhysics(plan with { Goal = Goal.Year, Dates = null }));
    }

    /// <summary>The plan, its cable sized.</summary>
    public Plan Plan { get; }

    public PlanPhysics Physics { get; }

    /// <summary>Conditions of the drops, one a kind of panel: strong sun on a mild day unless stated.</summary>
    public ImmutableArray<Conditions> Seen { get; }

    public DesignJudge Judge { get; }

    /// <summary>How the plan's cable lies.</summary>
    public ConductorPlace Place { get; }

    public PriceList Prices { get; }

    /// <summary>The year; null where the place is not known.</summary>
    public ExactSpan? Span { get; }

    /// <summary>Drop aimed at, share of the volts.</summary>
    public double MaxDropFraction => CableSizing.MaxDrop(Plan);

    /// <summary>Currents through every node where an input takes its power under given conditions, A; empty where it takes none.</summary>
    public Dictionary<string, double> Currents(Wiring wiring, DcInput input, ImmutableArray<Conditions> seen)
    {
        CircuitTree tree = Physics.Tree(wiring, seen);
        OperatingPoint taken = new Circuit(tree).TakenBy(PlanPhysics.Window(input));
        return taken.LimitedBy == LimitedBy.Off ? [] : TreeCurrents.Of(wiring, tree, taken.VoltageV, taken.CurrentA);
    }
}
