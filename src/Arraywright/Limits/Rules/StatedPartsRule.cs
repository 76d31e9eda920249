using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>The whole array's current in strong sun against the weakest of the connectors and the socket whose rating is stated.</summary>
/// <remarks>No connector carries more than the whole array offers, so one figure stands for all; which piece it is, and those without a rating, are said piece by piece with the parts.</remarks>
internal sealed class StatedPartsRule : IRule
{
    public RuleCard Card { get; } = new(
        "stated_parts",
        "1.25 × the array's short-circuit current against the lower of the ratings stated for connectors and for the unit's socket; nothing where none is stated",
        "rating printed on the part; 1.25 as NFPA 70 (NEC) 690.8(A)(1)",
        Level.Stop);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        if (BearsA(context.Input) is not { } bearsA)
        {
            yield break;
        }

        double standardA = LabelSums.ShortCircuitA(context.Wiring, context.Stock);
        double strongA = StrongSunCurrentRule.Factor * standardA;
        bool over = Figures.Over(strongA, bearsA);
        string which = Which(context.Input, bearsA);
        yield return new Finding(
            Card.Name,
            $"Current in strong sun against the rating stated for the {which}",
            over ? Level.Stop : Level.Go,
            strongA,
            bearsA,
            "A",
            $"1.25 × {Figures.Result(standardA, "A")} = {Figures.Result(strongA, bearsA, "A")}; rated {Figures.Label(bearsA, "A")}",
            Card.Source,
            over ? $"The {which} would overheat. Take what bears the current and state its rating, or connect fewer strings side by side." : null);
    }

    /// <summary>Most label short-circuit amps that the stated parts bear, A; infinite where none is stated.</summary>
    public static double MostA(DcInput input) => BearsA(input) / StrongSunCurrentRule.Factor ?? double.PositiveInfinity;

    private static double? BearsA(DcInput input) => (input.ConnectorA, input.SocketA) switch
    {
        ({ } connectorA, { } socketA) => Math.Min(connectorA, socketA),
        var (connectorA, socketA) => connectorA ?? socketA,
    };

    private static string Which(DcInput input, double bearsA) => (input.ConnectorA == bearsA, input.SocketA == bearsA) switch
    {
        (true, true) => "connectors and the unit's socket",
        (true, false) => "connectors",
        _ => "unit's socket and its adapter",
    };
}
