using Arraywright.Electrical;
using Arraywright.Gear;

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

    /// <summary>Cold volts above which a panel is never let go, V; infinite where no worse than <see cref="Level.Ask"/> is said of it.</summary>
    public static double MostV(Panel panel, Level worst) => panel.MaxSystemVoltageV ?? (worst == Level.Go ? ExtraLowV : double.PositiveInfinity);

    private static Level LevelAt(double coldV, double? limitV, string? silent) =>
        limitV is not null && Figures.Over(coldV, limitV.Value) ? Level.Stop
        : silent is not null && Figures.Over(coldV, ExtraLowV) ? Level.Ask
        : Level.Go;

    private static double? LimitV(Wiring part, RuleContext context) => part.Panels.Min(name => context.Panel(name).MaxSystemVoltageV);

    private static string? Silent(Wiring part, RuleContext context) => part.Panels.FirstOrDefault(name => context.Panel(name).MaxSystemVoltageV is null);

    private Finding JudgeString(Wiring part, RuleContext context)
    {
        double coldV = ColdVoltage.Of(part, context);
        double? limitV = LimitV(part, context);
        string? silent = Silent(part, context);
        Level level = LevelAt(coldV, limitV, silent);
        string found = limitV is null ? Figures.Result(coldV, ExtraLowV, "V") : Figures.Result(coldV, limitV.Value, "V");
        return new Finding(
            Card.Name,
            "Cold open-circuit voltage against the panels' highest system voltage",
            level,
            coldV,
            limitV,
            "V",
            limitV is null ? $"{found}, no label figure" : $"{found}, label allows {Figures.Label(limitV.Value, "V")}",
            Card.Source,
            level == Level.Stop ? "Over what a panel's insulation is made for. Put fewer panels in series."
            : silent is null ? null
            : level == Level.Ask ? $"The label of {silent} gives no system voltage, and this is above 120 V: find its datasheet first."
            : $"The label of {silent} gives no system voltage; up to 120 V no panel minds.");
    }
}
