using System.Text;
using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits.Asking;

/// <summary>The lines of the plan file that an answer fills in.</summary>
internal static class AnswerFields
{
    /// <summary>The lines for the input of this context.</summary>
    public static string OfInput(RuleContext context, IReadOnlyList<Finding> asked)
    {
        StringBuilder lines = new();
        if (asked.Any(InputQuestions.IsOfVoltage))
        {
            lines.Append($"    max_voltage: ... V              # only if the absolute highest they name is above {Figures.Label(context.Input.MaxVoltageV, "V")}\n");
        }

        if (asked.Any(InputQuestions.IsOfCurrent))
        {
            lines.Append(OfCurrent(context.Input));
        }

        if (asked.Any(finding => finding.Rule == "power_limit"))
        {
            lines.Append(Limit("    ", "max_power", Figure(context.Input.MaxPower, "W"), "what the input takes at most"));
        }

        if (asked.Any(finding => finding.Rule == "tracking_window"))
        {
            lines.Append($"    mpp_voltage: {Figures.Plain(context.Input.TrackingMinV ?? 0)}.. ... V         # up to where it works, if they name more\n");
        }

        return lines.Length == 0 ? "" : $"inputs:\n  - name: {context.Input.Name}\n{lines}";
    }

    /// <summary>The lines for its unit, its panels and its place.</summary>
    public static string Beside(RuleContext context, IReadOnlyList<Finding> asked)
    {
        StringBuilder lines = new();
        if (context.Unit is { } unit && asked.Any(finding => finding.Rule == "unit_power"))
        {
            lines.Append($"units:\n  - name: {unit.Name}\n").Append(Limit("    ", "max_power", Figure(unit.MaxPower, "W"), "what the whole unit takes at most"));
        }

        string[] fuse = [.. PanelQuestions.SilentAbout(context, asked, "back_feed")];
        string[] system = [.. PanelQuestions.SilentAbout(context, asked, "system_voltage")];
        string[] tolerance = [.. PanelQuestions.SilentAbout(context, asked, "cold_voltage")];
        string[] silent = [.. fuse.Concat(system).Concat(tolerance).Distinct()];
        lines.Append(silent.Length > 0 ? "panels:\n" : "");
        foreach (string name in silent)
        {
            lines.Append($"  - name: {name}\n");
            lines.Append(fuse.Contains(name) ? "    max_series_fuse: ... A          # from its label or datasheet\n" : "");
            lines.Append(system.Contains(name) ? "    max_system_voltage: ... V       # from its label or datasheet\n" : "");
            lines.Append(tolerance.Contains(name) ? "    tolerance: ... %                # from its label or datasheet\n" : "");
        }

        return lines.Append(IsColder(context, asked) ? "place:\n  coldest: ... C                    # from the nearest weather station's records\n" : "").ToString();
    }

    private static bool IsColder(RuleContext context, IReadOnlyList<Finding> asked) =>
        asked.Any(InputQuestions.IsOfVoltage) && context.Temperatures.ClimateColdestC < context.Temperatures.ColdestCellC.Value;

    private static string OfCurrent(DcInput input)
    {
        string printed = Figure(input.RatedCurrent, "A");
        string replaced = input.RatedCurrent is null ? "" : $"    # these two in place of rated_current: {printed}\n";
        return replaced
            + Limit("    ", "max_current", Figure(input.MaxCurrent, "A"), "what the input draws at most by itself")
            + Limit("    ", "max_short_circuit_current", "... A", "what the array may offer at most");
    }

    private static string Figure(Limit? limit, string unit) => limit is null ? $"... {unit}" : Figures.Label(limit.Figure, unit);

    private static string Limit(string indent, string field, string figure, string meaning) =>
        $"{indent}{field}:  # {meaning}\n"
        + $"{indent}  value: {figure}\n"
        + $"{indent}  evidence: maker\n"
        + $"{indent}  note: letter of <date>, \"<their words>\"\n"
        + (figure.StartsWith("...", StringComparison.Ordinal) ? "" : $"{indent}  exceed: ... %  # leave out unless they allow a percentage above it\n");
}
