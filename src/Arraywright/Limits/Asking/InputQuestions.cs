using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits.Asking;

/// <summary>What to ask the maker of an input, each question about one quantity with its figures, so that a yes means one thing only.</summary>
internal static class InputQuestions
{
    /// <summary>The questions that the findings call for, in a stable order; empty when none concerns the maker of the input.</summary>
    public static IReadOnlyList<string> For(RuleContext context, IReadOnlyList<Finding> asked)
    {
        List<string> questions = [];
        questions.AddRange(OfVoltage(context, asked));
        if (asked.Any(IsOfCurrent))
        {
            questions.AddRange(OfCurrent(context));
        }

        if (asked.Any(finding => finding.Rule == "tracking_window"))
        {
            questions.Add(OfWindow(context));
        }

        questions.AddRange(asked.Where(finding => finding.Rule == "power_limit").Select(finding => OfPower(context, finding)));
        questions.AddRange(asked.Where(finding => finding.Rule == "unit_power").Select(finding => OfUnitPower(context, finding)));
        return questions;
    }

    public static bool IsOfCurrent(Finding finding) => finding.Rule is "short_circuit_current" or "draw_limit";

    public static bool IsOfVoltage(Finding finding) => finding.Rule.StartsWith("cold_voltage", StringComparison.Ordinal);

    private static IEnumerable<string> OfVoltage(RuleContext context, IReadOnlyList<Finding> asked)
    {
        if (asked.Any(IsOfVoltage))
        {
            string limit = Figures.Label(context.Input.MaxVoltageV, "V");
            yield return $"Is {limit} the highest open-circuit voltage the input bears at any time, connected or switched off, or the top of its working range? What is the absolute highest, in volts?";
        }
    }

    private static IEnumerable<string> OfCurrent(RuleContext context)
    {
        string offered = Figures.Result(LabelSums.ShortCircuitA(context.Wiring, context.Stock), "A");
        string strong = Figures.Result(StrongSunCurrentRule.Factor * LabelSums.ShortCircuitA(context.Wiring, context.Stock), "A");
        string working = Figures.Result(LabelSums.MaximumPowerA(context.Wiring, context.Stock), "A");

        yield return Meaning(context.Input);
        yield return $"May an array with a short-circuit current of {offered} (sum of the labels at 1000 W/m², cells at 25 °C) be connected to this input? If not, what is the most, in amps?";
        yield return $"Is your figure meant at those standard conditions, or in any sun? In strong sun (1250 W/m²) the same array can offer {strong} in a short circuit.";
        yield return $"At full power the array offers {working}. Does the input by itself hold down the current it draws, hour after hour and without harm, when the array offers more? To how many amps?";
    }

    private static string Meaning(DcInput input) => OfferedCurrent.To(input) switch
    {
        { Field: "rated_current" } rated => $"The input is marked {Figures.Label(rated.Limit.Figure, "A")}. Which current is meant: (a) the most the input draws by itself, or (b) the highest short-circuit current that the connected array may have? And what is the figure for the other one?",
        { Field: "max_current" } drawn => $"We understand that the input draws {Figures.Label(drawn.Limit.Figure, "A")} at most by itself. Is that right? And what is the highest short-circuit current that the connected array may have?",
        { } offered => $"We understand that the connected array may have a short-circuit current of {Figures.Label(offered.Limit.Allowed, "A")} at most. Is that right? And what current does the input draw at most by itself?",
        null => "We find no current stated for this input. What current does it draw at most by itself, and what is the highest short-circuit current that the connected array may have?",
    };

    private static string OfWindow(RuleContext context)
    {
        string top = Figures.Label(context.Input.TrackingMaxV ?? context.Input.MaxVoltageV, "V");
        return $"In strong sun, to hold down its current or power, the input would let the voltage of this array rise above {top}, the top of its working range as we read it. Does it work on up there, with how many watts, or does it wait until the voltage falls?";
    }

    private static string OfPower(RuleContext context, Finding finding)
    {
        string limit = context.Input.MaxPower is { } power
            ? $"The input is stated at {Figures.Label(power.Figure, "W")}; the labels of our panels add up to {Figures.Result(finding.Value, power.Figure, "W")}."
            : $"We find no power stated for this input; the labels of our panels add up to {Figures.Result(finding.Value, "W")}.";
        return $"{limit} Does the input by itself hold down the power it takes, hour after hour and without harm? Please say which power your answer speaks of: the watts on the panels' labels, or the watts the input draws; and up to how many.";
    }

    private static string OfUnitPower(RuleContext context, Finding finding) =>
        $"The whole unit{(context.Unit is { } unit ? $" (\"{unit.Name}\")" : "")} is stated at {Figures.Label(finding.Limit ?? 0, "W")} for all its solar inputs together; the labels of the panels on all of them add up to {Figures.Result(finding.Value, "W")}. Does the unit by itself hold down the total it takes, hour after hour and without harm? Up to how many label watts?";
}
