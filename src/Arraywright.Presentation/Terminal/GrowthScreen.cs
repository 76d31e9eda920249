using Arraywright.Growing;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>Growing as text: which kind to buy, the curve of each, and the label that would fill an input.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class GrowthScreen(TextWriter writer, TerminalStyle style)
{
    /// <summary>From this share of the best on a wiring is as good.</summary>
    private const double AsGood = 0.995;

    /// <summary>Writes everything.</summary>
    public void Write(GrowthResult result)
    {
        TextFlow.Write(writer, "", result.Plan.Name, style.Width, style.Faint);
        writer.WriteLine();
        WriteShort(result);
        EnergyParts.Heading(writer, "What you have, wired as well as may be", style);
        EnergyParts.WriteWirings(writer, result.Now.Design, style);
        TextFlow.Write(writer, "  ", NowSentence(result.Now), style.Width);
        if (WireAnew(result) is { } anew)
        {
            TextFlow.Write(writer, "  ", anew, style.Width);
        }

        if (result.Curves.Length > 1)
        {
            WriteChoice(result);
        }

        GrowthTable table = new(writer, style, result);
        foreach (GrowthCurve curve in result.Curves)
        {
            table.Write(curve);
        }

        foreach (IdealPanel ideal in result.Ideals)
        {
            IdealPart.Write(writer, ideal, style);
        }

        EnergyParts.WriteGrounds(writer, result.WeatherSource, result.Assumed, result.Cautions, style);
    }

    /// <summary>Writes the answer in one or two sentences.</summary>
    public void WriteShort(GrowthResult result) =>
        TextFlow.Write(writer, "", Answer(result), style.Width, style.Strong);

    /// <summary>The answer in one or two sentences.</summary>
    internal static string Answer(GrowthResult result)
    {
        if (result.Best is not { } best)
        {
            return result.Now.Verdict == Level.Stop
                ? $"{VerdictSentence.Word(Level.Stop)}: nothing may be connected as it is; `arraywright plan` tells why."
                : $"{VerdictSentence.Word(result.Verdict)}: buy nothing; no further panel that may be connected adds enough to be worth it.";
        }

        int more = best.Worth.More;
        double addedKWh = best.Points[more].DeliveredKWh - result.Now.DeliveredKWh;
        string cost = best.Kind.Panel.Price is { } price
            ? $" for {GrowthTable.Money(more * price, result.Plan)}, {GrowthTable.Money(best.CostPerYearlyKWh!.Value, result.Plan)} for each kWh a year"
            : "";
        string adds = more == 1 ? "it adds" : "together they add";
        return $"{VerdictSentence.Word(result.Verdict)}: {more} more {best.Kind.Panel.Name} {(more == 1 ? "is" : "are")} worth it; {adds} {Figures.Energy(addedKWh)} a year to {Figures.Energy(result.Now.DeliveredKWh)}{cost}.";
    }

    /// <summary>What the panels at hand bring, wired as well as may be.</summary>
    internal static string NowSentence(GrowthPoint now)
    {
        string leftOver = DesignsTable.LeftOver(now.Design) is { Length: > 0 } left ? $" Left over: {left}." : "";
        return now.Design.Verdict == Level.Go
            ? $"{Figures.Energy(now.DeliveredKWh)} a year into the inputs; {EnergyParts.CutOff(now.Year.Total)}.{leftOver}"
            : $"{VerdictSentence.Word(now.Verdict)}: nothing of it may be connected as it is; `arraywright plan` tells why.";
    }

    /// <summary>That the stated wiring is not the best; null where it is as good, or none is stated.</summary>
    internal static string? WireAnew(GrowthResult result) => result.StatedKWh is { } statedKWh && statedKWh < result.Now.DeliveredKWh * AsGood
        ? $"As the plan states the wiring, it is {Figures.Energy(statedKWh)}: wiring anew costs nothing and comes first."
        : null;

    private void WriteChoice(GrowthResult result)
    {
        bool priced = result.Curves.Any(curve => curve.Kind.Panel.Price is not null);
        EnergyParts.Heading(writer, result.IsByCost && priced ? "Which kind, the cheapest kWh first" : "Which kind, the one that adds most first", style);
        TextTable table = new(false, true, true, true, true, false);
        table.Add(["", "price", "worth it", "adds a year", priced ? GrowthTable.CostHeading(result.Plan) : "", ""]);
        foreach (GrowthCurve curve in result.Curves)
        {
            int more = curve.Worth.More;
            table.Add(
                [
                    curve.Kind.Panel.Name,
                    curve.Kind.Panel.Price is { } price ? GrowthTable.Money(price, result.Plan) : "–",
                    more > 0 ? $"{more} more" : "none",
                    more > 0 ? Figures.Of(curve.Points[more].DeliveredKWh - curve.Points[0].DeliveredKWh, "kWh") : "–",
                    curve.CostPerYearlyKWh is { } cost ? GrowthTable.Amount(cost) : priced ? "–" : "",
                    curve.IsInDoubt ? "read its label again first" : "",
                ],
                style.Strong);
        }

        table.Write(writer, 2, style.Width, wrapped: 5);
    }
}
