namespace Arraywright.Presentation.Terminal;

/// <summary>Where the watts go: from the labels down to the input, what is left as a full bar, what each stage takes as a pale one.</summary>
public static class LossLadder
{
    private const int Indent = 2;

    /// <summary>Writes the ladder of a design.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<LossStep> steps, TerminalStyle style)
    {
        int stageWidth = steps.Max(step => step.Stage.Length);
        string[] watts = [.. steps.Select((step, index) => Watts(step, IsLevel(index, steps)))];
        int wattsWidth = watts.Max(text => text.Length);
        int barWidth = style.Width - Indent - stageWidth - wattsWidth - 4;
        double scale = barWidth / Math.Max(1, Tallest(steps));
        double level = 0;
        for (int index = 0; index < steps.Count; index++)
        {
            double before = level;
            level = IsLevel(index, steps) ? steps[index].Watts : level - steps[index].Watts;
            string bar = Bar(level, IsLevel(index, steps) ? level : before, scale);
            writer.WriteLine($"{new string(' ', Indent)}{steps[index].Stage.PadRight(stageWidth)}  {watts[index].PadLeft(wattsWidth)}  {bar}".TrimEnd());
        }
    }

    private static bool IsLevel(int index, IReadOnlyList<LossStep> steps) => index == 0 || index == steps.Count - 1;

    private static string Watts(LossStep step, bool isLevel)
    {
        string amount = Figures.Of(Math.Abs(step.Watts), "W");
        if (amount == "0 W" && !isLevel)
        {
            return "under 1 W";
        }

        return isLevel ? amount : $"{(step.Watts < 0 ? '+' : Figures.Minus)} {amount}";
    }

    /// <summary>What is left in full, then what this stage takes (or adds) in pale.</summary>
    private static string Bar(double level, double before, double scale)
    {
        int low = Cells(Math.Min(level, before), scale);
        int high = Cells(Math.Max(level, before), scale);
        return new string('█', low) + new string('░', high - low);
    }

    private static int Cells(double watts, double scale) => Math.Max(0, (int)Math.Round(watts * scale, MidpointRounding.AwayFromZero));

    private static double Tallest(IReadOnlyList<LossStep> steps)
    {
        double level = steps[0].Watts;
        double tallest = level;
        for (int index = 1; index < steps.Count - 1; index++)
        {
            level -= steps[index].Watts;
            tallest = Math.Max(tallest, level);
        }

        return Math.Max(tallest, steps[^1].Watts);
    }
}
