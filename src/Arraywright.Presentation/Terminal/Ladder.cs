namespace Arraywright.Presentation.Terminal;

/// <summary>One rung of a ladder: a level, or what a stage takes from the level above.</summary>
/// <param name="Stage">Plain name.</param>
/// <param name="Amount">The level, or the loss (negative for a gain).</param>
/// <param name="IsLevel">Whether it is a level.</param>
internal readonly record struct Rung(string Stage, double Amount, bool IsLevel);

/// <summary>Where an amount goes: from the top down, what is left as a full bar, what each stage takes as a pale one.</summary>
internal static class Ladder
{
    private const int Indent = 2;

    /// <summary>Writes a ladder.</summary>
    /// <param name="writer">Where the text goes.</param>
    /// <param name="rungs">From the top; the first is a level.</param>
    /// <param name="unit">Unit of the amounts.</param>
    /// <param name="style">Width and colour.</param>
    public static void Write(TextWriter writer, IReadOnlyList<Rung> rungs, string unit, TerminalStyle style)
    {
        int stageWidth = rungs.Max(rung => rung.Stage.Length);
        string[] amounts = [.. rungs.Select(rung => Amount(rung, unit))];
        int amountWidth = amounts.Max(text => text.Length);
        int barWidth = style.Width - Indent - stageWidth - amountWidth - 4;
        double scale = barWidth / Math.Max(1, Tallest(rungs));
        double level = 0;
        for (int index = 0; index < rungs.Count; index++)
        {
            Rung rung = rungs[index];
            double before = level;
            level = rung.IsLevel ? rung.Amount : level - rung.Amount;
            string bar = Bar(level, rung.IsLevel ? level : before, scale);
            writer.WriteLine($"{new string(' ', Indent)}{rung.Stage.PadRight(stageWidth)}  {amounts[index].PadLeft(amountWidth)}  {bar}".TrimEnd());
        }
    }

    /// <summary>A bar of so many cells, the second part pale.</summary>
    public static string Bar(double level, double before, double scale)
    {
        int low = Cells(Math.Min(level, before), scale);
        int high = Cells(Math.Max(level, before), scale);
        return new string('█', low) + new string('░', high - low);
    }

    /// <summary>A level as it is; what a stage takes or gives with its sign.</summary>
    public static string Amount(Rung rung, string unit)
    {
        string amount = Figures.Of(Math.Abs(rung.Amount), unit);
        if (amount == Figures.Of(0, unit) && !rung.IsLevel)
        {
            return rung.Amount == 0 ? "–" : $"under {Figures.Least(unit)}";
        }

        return rung.IsLevel ? amount : $"{(rung.Amount < 0 ? '+' : Figures.Minus)} {amount}";
    }

    private static int Cells(double amount, double scale) => Math.Max(0, (int)Math.Round(amount * scale, MidpointRounding.AwayFromZero));

    private static double Tallest(IReadOnlyList<Rung> rungs)
    {
        double level = 0;
        double tallest = 0;
        foreach (Rung rung in rungs)
        {
            level = rung.IsLevel ? rung.Amount : level - rung.Amount;
            tallest = Math.Max(tallest, level);
        }

        return tallest;
    }
}
