using System.Collections.Immutable;
using Arraywright.Gear;

namespace Arraywright.Limits.Rules;

/// <summary>Coldest open-circuit voltage against the hard limit, three ways, with the highest string alone on the input: a fuse elsewhere may be open.</summary>
internal sealed class ColdVoltageRule : IRule
{
    public RuleCard Card { get; } = new(
        "cold_voltage",
        "Open-circuit voltage of the highest string alone, at the coldest cell, against the input's highest voltage: by the label's coefficient, by the code's table, by the circuit model",
        "NFPA 70 (NEC) 690.7(A); IEC 62548",
        Level.Stop);

    public IEnumerable<Finding> Judge(RuleContext context)
    {
        bool own = context.Wiring.Panels.Any(name => ColdVoltage.HasOwnCoefficient(context.Panel(name)));
        if (own)
        {
            yield return Governing(context, Label);
        }

        yield return own ? Beside(context, Table) : Governing(context, Table);
        yield return Governing(context, Model(context.Physics));
    }

    /// <summary>One way to reckon a panel's volts in the cold, before tolerance.</summary>
    /// <param name="Rule">Name of its finding.</param>
    /// <param name="By">How, for the title.</param>
    /// <param name="Source">Who says so.</param>
    /// <param name="Volts">V of a panel at the coldest, °C.</param>
    /// <param name="Term">The same as a person writes it.</param>
    /// <param name="ByTable">Whether the code's table serves for a panel.</param>
    private sealed record Way(string Rule, string By, string Source, Func<Panel, double, double> Volts, Func<Panel, double, string> Term, Func<Panel, bool> ByTable);

    private static Way Table { get; } = new(
        "cold_voltage_table",
        "by the code's table",
        "NEC 690.7(A)(2), Table 690.7(A)",
        ColdVoltage.TableV,
        (panel, coldestC) => $"{Figures.Label(panel.OpenCircuitV, "V")} × {Figures.Plain(ColdFactors.For(panel.Technology.Value, coldestC))}",
        panel => true);

    private static Way Label { get; } = new(
        "cold_voltage_label",
        "by the label's own coefficient",
        "label coefficient, NEC 690.7(A)(1); where a label gives none, Table 690.7(A)",
        ColdVoltage.CodeV,
        (panel, coldestC) => ColdVoltage.HasOwnCoefficient(panel)
            ? $"{Figures.Label(panel.OpenCircuitV, "V")} × (1 + {Figures.Coefficient(panel.OpenCircuitPerK.Value)} × {Figures.Plain(25 - Math.Min(coldestC, 25))} K)"
            : Table.Term(panel, coldestC),
        panel => !ColdVoltage.HasOwnCoefficient(panel));

    private static Way Model(ArrayPhysics physics) => new(
        "cold_voltage_model",
        "by the circuit model",
        "single-diode model fitted to the label, 1000 W/m²; may raise the figure, never lower it",
        (panel, coldestC) => ColdVoltage.ModelV(panel, coldestC, physics),
        (panel, coldestC) => Figures.Result(ColdVoltage.ModelV(panel, coldestC, physics), "V"),
        panel => false);

    private static Finding Governing(RuleContext context, Way way)
    {
        Finding finding = Compare(context, way);
        double doubtV = InDoubtV(context, way);
        bool over = Figures.Over(finding.Value, context.Input.MaxVoltageV);
        bool doubtful = Figures.Over(doubtV, context.Input.MaxVoltageV);
        return finding with
        {
            Level = over ? Level.Stop : doubtful ? Level.Ask : Level.Go,
            Note = over ? $"Over the highest voltage the input bears: nothing clears this. {Remedy(context)}" :
                doubtful ? Doubt(context, doubtV) : Remark(context, way),
        };
    }

    private static string Remedy(RuleContext context) => context.Wiring.HighestPath(name => context.Panel(name).OpenCircuitV).Length > 1
        ? "Put fewer panels in series."
        : "One panel alone is too much: it takes a panel of fewer volts, or another input.";

    /// <summary>The table beside a coefficient of the label's own: shown, but NEC 690.7(A)(1) lets the coefficient decide.</summary>
    private static Finding Beside(RuleContext context, Way way)
    {
        Finding finding = Compare(context, way);
        return finding with
        {
            Note = Figures.Over(finding.Value, context.Input.MaxVoltageV)
                ? $"For comparison: the code's table would give {Figures.Result(finding.Value, context.Input.MaxVoltageV, "V")}, over the limit. The label's own coefficient decides."
                : Remark(context, way) ?? "For comparison: the label's own coefficient decides.",
        };
    }

    private static Finding Compare(RuleContext context, Way way)
    {
        double coldestC = context.Temperatures.ColdestCellC.Value;
        double limitV = context.Input.MaxVoltageV;
        double Volts(string name) => way.Volts(context.Panel(name), coldestC) * ColdVoltage.StatedTolerance(context.Panel(name));

        ImmutableArray<string> path = context.Wiring.HighestPath(Volts);
        double valueV = path.Sum(Volts);
        string sum = WiringSums.Sum(path.Select(name => way.Term(context.Panel(name), coldestC) + Tolerance(context.Panel(name))));
        bool tolerance = path.Any(name => ColdVoltage.StatedTolerance(context.Panel(name)) > 1);
        return new Finding(
            way.Rule,
            $"Open-circuit voltage at {Figures.Celsius(coldestC)}, {way.By}",
            Level.Go,
            valueV,
            limitV,
            "V",
            $"{sum} = {Figures.Result(valueV, limitV, "V")}{(tolerance ? " (label tolerance added)" : "")}",
            way.Source);
    }

    private static string Tolerance(Panel panel) => ColdVoltage.StatedTolerance(panel) > 1 ? $" × {Figures.Plain(ColdVoltage.StatedTolerance(panel))}" : "";

    /// <summary>The same way at the coldest that climate or plan knows, with the tolerance assumed where the label states none.</summary>
    private static double InDoubtV(RuleContext context, Way way)
    {
        double coldestC = Math.Min(context.Temperatures.ColdestCellC.Value, context.Temperatures.ClimateColdestC ?? double.PositiveInfinity);
        return context.Wiring.HighestV(name => way.Volts(context.Panel(name), coldestC) * (1 + context.Panel(name).ToleranceFraction.Value));
    }

    private static string Doubt(RuleContext context, double doubtV)
    {
        CellExtremes temperatures = context.Temperatures;
        bool colder = temperatures.ClimateColdestC < temperatures.ColdestCellC.Value;
        bool silent = context.Wiring.Panels.Any(name => context.Panel(name).ToleranceFraction is { Origin: not Origin.Given, Value: > 0 });
        string why = (colder, silent) switch
        {
            (true, true) => $"The climate here suggests {Figures.Celsius(temperatures.ClimateColdestC!.Value)}{temperatures.ClimateCondition}, and a label states no tolerance",
            (true, false) => $"The climate here suggests {Figures.Celsius(temperatures.ClimateColdestC!.Value)}{temperatures.ClimateCondition}",
            _ => "A label states no tolerance",
        };
        return $"{why}: it could be {Figures.Result(doubtV, context.Input.MaxVoltageV, "V")}, over the limit. Settle that first.";
    }

    /// <summary>What the reader should know of a figure that passes.</summary>
    private static string? Remark(RuleContext context, Way way)
    {
        Sourced<double> coldest = context.Temperatures.ColdestCellC;
        Panel[] byTable = [.. context.Wiring.Panels.Select(context.Panel).Where(way.ByTable)];
        if (byTable.Any(panel => !ColdFactors.InTable(panel.Technology.Value)))
        {
            return "The code has no table for thin film: its largest factor is used.";
        }

        return byTable.Length > 0 && coldest.Value < -40 ? "Colder than the code's table goes: its rise of 0.4 % a kelvin is carried on."
            : coldest.Origin == Origin.Assumed ? $"The coldest is assumed: {coldest.Why}."
            : null;
    }
}
