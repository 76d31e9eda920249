using System.Text;
using Arraywright.Gear;
using Arraywright.Limits.Asking;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>The letter to the maker: what only the maker can clear, with the figures of this plan, so that the answer cannot be ambiguous.</summary>
public static class MakerLetter
{
    /// <summary>What to say where no letter is needed.</summary>
    public const string NothingToAsk = "Nothing needs asking: no finding waits for an answer.";

    /// <summary>What there is to say where the verdict is stop.</summary>
    public const string NoAnswerHelps = "Nothing to ask: the verdict is stop, and no answer of the maker clears it.";

    /// <summary>The letter for one input, ready to send: plain text of at most 76 columns, lines ending in a line feed.</summary>
    /// <param name="context">The wiring and its input.</param>
    /// <param name="wiringText">The wiring in the plan's notation.</param>
    /// <param name="findings">What the rules say of it, with what they say of its unit.</param>
    /// <returns>Null when no finding asks. Questions about the panels, which the input's maker cannot answer, go into a second letter below the first.</returns>
    public static string? For(RuleContext context, string wiringText, IEnumerable<Finding> findings)
    {
        Finding[] asked = Asked(findings);
        IReadOnlyList<string> ofInput = InputQuestions.For(context, asked);
        IReadOnlyList<string> ofPanels = PanelQuestions.For(context, asked);
        string? toInput = ofInput.Count > 0 ? ToInputMaker(context, wiringText, ofInput) : null;
        string? toPanels = ofPanels.Count > 0 ? ToPanelMaker(context, wiringText, ofPanels) : null;
        return toInput is not null && toPanels is not null ? $"{toInput}\n{new string('-', 40)}\n\n{toPanels}" : toInput ?? toPanels;
    }

    /// <summary>Which lines of the plan file the answer fills in; null when no finding asks.</summary>
    /// <param name="context">The wiring and its input.</param>
    /// <param name="findings">As for <see cref="For"/>.</param>
    public static string? WhereTheAnswerGoes(RuleContext context, IEnumerable<Finding> findings)
    {
        Finding[] asked = Asked(findings);
        string fields = AnswerFields.OfInput(context, asked) + AnswerFields.Beside(context, asked);
        return fields.Length == 0
            ? null
            : LetterText.Paragraph("When the answer has come, fill it in here, with its date and its words, and leave out what they did not answer:") + "\n" + fields;
    }

    private static Finding[] Asked(IEnumerable<Finding> findings) => [.. findings.Where(finding => finding.Level == Level.Ask)];

    private static string ToInputMaker(RuleContext context, string wiringText, IReadOnlyList<string> questions) => new StringBuilder()
        .Append(LetterText.Paragraph($"Subject: solar input \"{context.Input.Name}\": may this array be connected?"))
        .Append('\n')
        .Append("Good day,\n\n")
        .Append(LetterText.Paragraph($"We would like to connect solar panels to the input we call \"{context.Input.Name}\"{OfUnit(context)}. Its stated limits, as we read them: {Stated(context.Input)}."))
        .Append('\n')
        .Append(LetterText.Paragraph("(Please add the model and serial number of your unit here: ________)"))
        .Append('\n')
        .Append(ArrayFigures(context, wiringText))
        .Append('\n')
        .Append(LetterText.Numbered([.. questions, "Does the warranty hold with exactly this array connected?"]))
        .Append('\n')
        .Append(LetterText.Paragraph("A short written answer by number, with the figures, is all we need. We will not connect it before we have it. Thank you for your time."))
        .ToString();

    private static string ToPanelMaker(RuleContext context, string wiringText, IReadOnlyList<string> questions) => new StringBuilder()
        .Append("Subject: solar panels: figures missing on the label\n\n")
        .Append("Good day,\n\n")
        .Append(LetterText.Paragraph($"We would like to join panels of yours as {wiringText} ( + in series, | side by side), {Figures.Result(LabelSums.ShortCircuitA(context.Wiring, context.Stock), "A")} short-circuit in all, and do not find on their labels:"))
        .Append('\n')
        .Append(LetterText.Numbered(questions))
        .Append('\n')
        .Append(LetterText.Paragraph("A short written answer by number is all we need. We will not connect them before we have it. Thank you for your time."))
        .ToString();

    private static string Count(int count, string noun) => count == 1 ? $"1 {noun}" : $"{count} {noun}s";

    private static string OfUnit(RuleContext context) => context.Unit is { } unit ? $" of the unit we call \"{unit.Name}\"" : "";

    private static string Stated(DcInput input)
    {
        List<string> limits = [$"{Figures.Label(input.MaxVoltageV, "V")} at most"];
        Add(input.RatedCurrent, "A", "without saying of what");
        Add(input.MaxCurrent, "A", "drawn at most");
        Add(input.MaxShortCircuitCurrent, "A", "short-circuit current of the array at most");
        Add(input.MaxPower, "W", "at most");
        return string.Join("; ", limits);

        void Add(Limit? limit, string unit, string meaning)
        {
            if (limit is not null)
            {
                limits.Add($"{OfferedCurrent.Written(limit, unit)} {meaning}");
            }
        }
    }

    private static string ArrayFigures(RuleContext context, string wiringText)
    {
        double restV = LabelSums.OpenCircuitV(context.Wiring, context.Stock);
        double coldV = ColdVoltage.Of(context);
        return new StringBuilder()
            .Append(LetterText.Paragraph($"The array: {wiringText} ( + in series, | side by side), {Count(context.Wiring.Panels.Count(), "panel")} in {Count(context.Wiring.Strings.Length, "string")}. From their labels, at 1000 W/m² and cells at 25 °C:"))
            .Append('\n')
            .Append($"   open-circuit voltage      {Figures.Result(restV, "V")}\n")
            .Append($"   the same, coldest morning {Figures.Result(coldV, context.Input.MaxVoltageV, "V")} (cells at {Figures.Celsius(context.Temperatures.ColdestCellC.Value)})\n")
            .Append($"   short-circuit current     {Figures.Result(LabelSums.ShortCircuitA(context.Wiring, context.Stock), "A")}\n")
            .Append($"   current at full power     {Figures.Result(LabelSums.MaximumPowerA(context.Wiring, context.Stock), "A")}\n")
            .Append($"   power                     {Figures.Result(LabelSums.PowerW(context.Wiring, context.Stock), "W")}\n")
            .ToString();
    }
}
