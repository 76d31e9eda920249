using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;

namespace Arraywright.Planning;

/// <summary>What copper and connectors take of the volts, from the panels of the string that loses most to the input: the one drop that cable is sized for and judged by.</summary>
internal static class LineDrop
{
    /// <summary>The drop, V, where an input takes its power; 0 where nothing flows.</summary>
    public static double V(CircuitTree tree, OperatingPoint taken) => taken.LimitedBy == LimitedBy.Off ? 0 : Of(tree, taken.CurrentA);

    /// <summary>The same as a share of the volts at the input.</summary>
    public static double Fraction(CircuitTree tree, DcInput input)
    {
        OperatingPoint taken = new Circuit(tree).TakenBy(PlanPhysics.Window(input));
        return taken.VoltageV > 0 ? V(tree, taken) / taken.VoltageV : 0;
    }

    private static double Of(CircuitTree tree, double currentA)
    {
        double hereV = currentA * tree.WireOhm;
        return hereV + tree switch
        {
            CircuitTree.Series series => series.Parts.Sum(part => Of(part, currentA)),
            CircuitTree.Parallel parallel => MostOf(parallel, new Circuit(parallel).VoltageAt(currentA) + hereV),
            _ => 0,
        };
    }

    private static double MostOf(CircuitTree.Parallel branches, double joinedV) =>
        branches.Parts.Max(branch => Of(branch, new Circuit(branch).CurrentAt(joinedV)));
}
