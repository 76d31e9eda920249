using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;

namespace Arraywright.Planning;

/// <summary>Where the watts go under given conditions, from the labels to the inputs. The steps add up exactly.</summary>
internal sealed class LossLadder(PlanPhysics physics, ImmutableArray<Conditions> seen)
{
    private Plan Plan => physics.Plan;

    /// <summary>Power into the inputs, W.</summary>
    public double TakenW(ImmutableArray<Assignment> assignments) =>
        RankingWorth.SharedW(Plan, [.. assignments.Select(assignment => assignment.Operating.PowerW)]);

    /// <summary>The ladder of a design: first "label", last "into the unit", between them what is lost at each stage.</summary>
    public ImmutableArray<LossStep> Of(ImmutableArray<Assignment> assignments)
    {
        double ownedW = Plan.Panels.Sum(stock => stock.Count * stock.Panel.PowerW.Value);
        List<LossStep> steps = [new("label", ownedW)];
        double levelW = ownedW;
        void Falls(string stage, double toW)
        {
            if (Math.Abs(levelW - toW) > 1e-9 * ownedW)
            {
                steps.Add(new LossStep(stage, levelW - toW));
            }

            levelW = toW;
        }

        Falls("panels left out", SumOverPanels(assignments, name => physics.Stock[name].Panel.PowerW.Value));
        Falls("rounding on the label", SumOverPanels(assignments, name => AloneW(physics.Unshaded(name, Conditions.Standard))));
        Falls("weaker or stronger sun", SumOverPanels(assignments, name => AloneW(physics.Unshaded(name, At25(name)))));
        Falls("heat", SumOverPanels(assignments, name => AloneW(physics.Unshaded(name, physics.Of(name, seen)))));
        Falls("shade", SumOverPanels(assignments, name => AloneW(physics.Shaded(name, physics.Of(name, seen)))));
        Falls("mismatch", SumOverInputs(assignments, Wireless, InputWindow.Open));
        Falls("cable and contacts", SumOverInputs(assignments, wiring => physics.Tree(wiring, seen), InputWindow.Open));
        Falls("voltage window", SumOverInputs(assignments, wiring => physics.Tree(wiring, seen), window => window with { MaxA = double.PositiveInfinity, MaxW = double.PositiveInfinity }));
        Falls("current limit", SumOverInputs(assignments, wiring => physics.Tree(wiring, seen), window => window with { MaxW = double.PositiveInfinity }));
        Falls("power limit", assignments.Sum(assignment => assignment.Operating.PowerW));
        Falls("power limit shared by a unit", TakenW(assignments));
        steps.Add(new LossStep("into the unit", levelW));
        return [.. steps];
    }

    private Conditions At25(string panel) => physics.Of(panel, seen) with { CellC = 25 };

    private CircuitTree Wireless(Wiring wiring) =>
        CircuitTree.Of(wiring, name => physics.Shaded(name, physics.Of(name, seen)), WireResistances.None);

    private static double AloneW(PanelAtWork panel) =>
        new Circuit(CircuitTree.Of(new Wiring.Single("alone"), _ => panel, WireResistances.None)).MaximumPower().PowerW;

    private static double SumOverPanels(ImmutableArray<Assignment> assignments, Func<string, double> wattsOf) =>
        assignments
            .Where(assignment => assignment.Wiring is not null)
            .SelectMany(assignment => assignment.Wiring!.Panels)
            .CountBy(name => name)
            .Sum(kind => kind.Value * wattsOf(kind.Key));

    private double SumOverInputs(ImmutableArray<Assignment> assignments, Func<Wiring, CircuitTree> tree, InputWindow window) =>
        SumOverInputs(assignments, tree, _ => window);

    private double SumOverInputs(ImmutableArray<Assignment> assignments, Func<Wiring, CircuitTree> tree, Func<InputWindow, InputWindow> window)
    {
        double sumW = 0;
        for (int i = 0; i < assignments.Length; i++)
        {
            if (assignments[i].Wiring is { } wiring)
            {
                sumW += new Circuit(tree(wiring)).PowerTakenW(window(PlanPhysics.Window(Plan.Inputs[i].Input)));
            }
        }

        return sumW;
    }
}
