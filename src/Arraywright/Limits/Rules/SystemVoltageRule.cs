using Arraywright.Electrical;

namespace Arraywright.Limits.Rules;

/// <summary>Each string's cold voltage against the lowest system voltage that its panels' labels allow.</summary>
internal sealed class SystemVoltageRule : IRule
{
    /// <summary>Direct voltage up to which bare parts are held harmless to touch in dry places (extra-low voltage, IEC 61140); any panel's insulation bears it.</summary>
    private const double ExtraLowV = 120;

    public RuleCard Card { get; } = new(
        "system_voltage",
        "Cold open-circuit voltage of each string against the lowest system voltage on its panels' labels; silent labels above 120 V are asked about",
        "panel label (IEC 61730); 120 V: extra-low voltage, IEC 61140",
        Level.Stop);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        yield return context.Wiring.Strings
            .Select(part => JudgeString(part, context))
            .OrderByDescending(finding => finding.Level)
            .ThenBy(finding => finding.MarginPercent ?? double.PositiveInfinity)
            .ThenByDescending(finding => finding.Value)
            .First();
    }

    /// <summary>Whether a string passes what any insulation bears while a label says nothing.</summary>
    public static bool Asks(Wiring part, RuleContext context) => Silent(part, context) is not null && Figures.Over(ColdVoltage.Of(part, context), ExtraLowV);

    private static string? Silent(Wiring part, RuleContext context) => part.Panels.FirstOrDefault(name => context.Panel(name).MaxSystemVoltageV is null);

    private Finding JudgeString(Wiring part, RuleContext context)
    {
        double coldV = ColdVoltage.Of(part, context);
        double? limitV = part.Panels.Min(name => context.Panel(name).MaxSystemVoltageV);
        string? silent = Silent(part, context);
        bool over = limitV is not null && Figures.Over(coldV, limitV.Value);
        bool ask = silent is not null && Figures.Over(coldV, ExtraLowV);
        string found = limitV is null ? Figures.Result(coldV, ExtraLowV, "V") : Figures.Result(coldV, limitV.Value, "V");
        return new Finding(
            Card.Name,
            "Cold open-circuit voltage against the panels' highest system voltage",
            over ? Level.Stop : ask ? Level.Ask : Level.Go,
            coldV,
            limitV,
            "V",
            limitV is null ? $"{found}, no label figure" : $"{found}, label allows {Figures.Label(limitV.Value, "V")}",
            Card.Source,
            over ? "Over what a panel's insulation is made for. Put fewer panels in series."
            : silent is null ? null
            : ask ? $"The label of {silent} gives no system voltage, and this is above 120 V: find its datasheet first."
            : $"The label of {silent} gives no system voltage; up to 120 V no panel minds.");
    }
}
