using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What one panel, or a part of a string, adds to the string's open-circuit voltage in the cold, two ways.</summary>
/// <remarks>A string's cold voltage is the larger of the two sums over its positions; a block of panels side by side counts with its highest panel.</remarks>
/// <param name="CodeV">By the label's own coefficient, or by the code's table where the label gives none, V.</param>
/// <param name="ModelV">By the circuit model, V. It may raise the verdict's figure, never lower it.</param>
public readonly record struct ColdPanelVolts(double CodeV, double ModelV)
{
    /// <summary>The larger of the two, V: what decides.</summary>
    public double HigherV => Math.Max(CodeV, ModelV);

    /// <summary>Both in series.</summary>
    internal ColdPanelVolts InSeriesWith(ColdPanelVolts next) => new(CodeV + next.CodeV, ModelV + next.ModelV);
}

/// <summary>Open-circuit voltage in the cold, for the hard limit: the worst case, not the expected one.</summary>
/// <remarks>
/// A tolerance that the label states is added in full. Where it states none, the figure is the code's own, and the rule asks
/// if the tolerance assumed for it would pass the limit. A coldest above 25 °C lowers nothing.
/// </remarks>
public static class ColdVoltage
{
    /// <summary>What one panel of a kind adds to its string.</summary>
    /// <param name="panel">The kind.</param>
    /// <param name="coldestCellC">Coldest credible cell, °C.</param>
    /// <param name="physics">Gives the model's open-circuit voltage at 1000 W/m² and that cell.</param>
    public static ColdPanelVolts PerPanel(Panel panel, double coldestCellC, ArrayPhysics physics) =>
        new(CodeV(panel, coldestCellC) * StatedTolerance(panel), ModelV(panel, coldestCellC, physics) * StatedTolerance(panel));

    /// <summary>Cold open-circuit voltage of the highest string of the wiring alone on the input, V: the larger of both ways.</summary>
    public static double Of(RuleContext context) => Of(context.Wiring, context);

    /// <summary>Whether a cold voltage is over the input's limit; at the limit is not over.</summary>
    public static bool IsOver(double coldV, double maxVoltageV) => Figures.Over(coldV, maxVoltageV);

    internal static double Of(Wiring part, RuleContext context) => BothWays(part, context).HigherV;

    /// <summary>Cold open-circuit voltage of the highest string of a part, by the label or the code's table and by the model.</summary>
    internal static ColdPanelVolts BothWays(Wiring part, RuleContext context)
    {
        double coldestC = context.Temperatures.ColdestCellC.Value;
        ColdPanelVolts Volts(string name) => PerPanel(context.Panel(name), coldestC, context.Physics);
        return new ColdPanelVolts(part.HighestV(name => Volts(name).CodeV), part.HighestV(name => Volts(name).ModelV));
    }

    /// <summary>Only a coefficient that the label gives may govern: a typical one is for energy, not for safety.</summary>
    internal static bool HasOwnCoefficient(Panel panel) => panel.OpenCircuitPerK.Origin == Origin.Given;

    internal static double StatedTolerance(Panel panel) => panel.ToleranceFraction.Origin == Origin.Given ? 1 + panel.ToleranceFraction.Value : 1;

    internal static double CodeV(Panel panel, double coldestC) => HasOwnCoefficient(panel) ? OwnV(panel, coldestC) : TableV(panel, coldestC);

    internal static double TableV(Panel panel, double coldestC) => panel.OpenCircuitV * ColdFactors.For(panel.Technology.Value, coldestC);

    internal static double ModelV(Panel panel, double coldestC, ArrayPhysics physics) =>
        physics.OpenCircuitV(panel.Name, new Conditions(1000, Math.Min(coldestC, 25)));

    private static double OwnV(Panel panel, double coldestC) => ByCoefficient(panel.OpenCircuitV, panel.OpenCircuitPerK.Value, coldestC);

    /// <summary>Voc·(1 + β·(T − 25)), NEC 690.7(A)(1); V.</summary>
    internal static double ByCoefficient(double openCircuitV, double perK, double coldestC) =>
        openCircuitV * (1 + (perK * (Math.Min(coldestC, 25) - 25)));
}
