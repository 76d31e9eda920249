using Arraywright.Gear;
using Arraywright.Growing;
using Arraywright.Limits;

namespace Arraywright.Presentation.Terminal;

/// <summary>The curve of one kind: a row for each panel more, a bar beside it, and the point where it stops being worth it.</summary>
internal sealed class GrowthTable(TextWriter writer, TerminalStyle style, GrowthResult result)
{
    private const int Indent = 2;
    private const int MoreWidth = 4;

    /// <summary>An amount of the plan's money, with cents where they count.</summary>
    public static string Money(double amount, Plan plan) => $"{Amount(amount)} {plan.Currency}";

    /// <summary>The same without its currency.</summary>
    public static string Amount(double amount) => Figures.Number(amount, amount < 99.995 && amount != Math.Round(amount) ? 2 : 0);

    /// <summary>Heading of what a kWh a year costs.</summary>
    public static string CostHeading(Plan plan) => $"{plan.Currency} a kWh a year";

    /// <summary>Writes a curve.</summary>
    public void Write(GrowthCurve curve)
    {
        string each = curve.Kind.Panel.Price is { } price ? $", {Money(price, result.Plan)} each" : "";
        EnergyParts.Heading(writer, $"More {curve.Kind.Panel.Name}{each}", style);
        WriteRows(curve);
        TextFlow.Write(writer, "  ", WorthSentence(curve, result), style.Width);
        foreach (string remark in Remarks(curve, result))
        {
            TextFlow.Write(writer, "  ", remark, style.Width);
        }
    }

    private void WriteRows(GrowthCurve curve)
    {
        bool priced = curve.Kind.Panel.Price is not null;
        string[][] cells =
        [
            [.. Columns(curve, result.Plan)],
            .. curve.Points.Select(point => Row(point, priced)),
        ];
        int[] widths = [.. Enumerable.Range(0, cells[0].Length).Select(column => cells.Max(row => row[column].Length))];
        int barWidth = style.Width - Indent - widths.Sum() - (2 * widths.Length);
        double most = curve.Points.Max(point => point.DeliveredKWh + (point.Design.Verdict == Level.Go ? point.Year.Total.ClippedKWh : 0));
        WriteRow(cells[0], widths, "");
        string before = "";
        for (int i = 0; i < curve.Points.Length; i++)
        {
            GrowthPoint point = curve.Points[i];
            double clippedKWh = point.Design.Verdict == Level.Go ? point.Year.Total.ClippedKWh : 0;
            WriteRow(cells[i + 1], widths, Ladder.Bar(point.DeliveredKWh, point.DeliveredKWh + clippedKWh, barWidth / Math.Max(1e-9, most)));
            string wirings = Wired(point.Design);
            if (wirings != before && i > 0)
            {
                TextFlow.Write(writer, new string(' ', Indent + MoreWidth + 2), wirings, style.Width, style.Faint);
            }

            before = wirings;
        }
    }

    /// <summary>The wirings of a design on one line.</summary>
    public static string Wired(Design design) => string.Join("; ", design.Assignments.Select(assignment => Wired(assignment, design)));

    private static string Wired(Assignment assignment, Design design) =>
        design.Assignments.Length == 1 ? DesignsTable.Text(assignment.Wiring) : $"{assignment.Input}: {DesignsTable.Text(assignment.Wiring)}";

    /// <summary>Headings of the columns of a curve.</summary>
    public static IEnumerable<string> Columns(GrowthCurve curve, Plan plan) =>
        ["more", "kWh a year", "it adds", "cut off", .. curve.Kind.Panel.Price is not null ? [CostHeading(plan)] : Array.Empty<string>(), ""];

    /// <summary>The cells of a point of a curve.</summary>
    /// <param name="point">The point.</param>
    /// <param name="priced">Whether the kind has a price.</param>
    public static string[] Row(GrowthPoint point, bool priced)
    {
        bool counts = point.Design.Verdict == Level.Go;
        string gain = point.More == 0 ? "" : point.GainKWh < 0.05 ? "–" : Figures.Number(point.GainKWh, 1);
        string cost = point.GainKWh >= 0.05 && point.CostPerYearlyKWh is { } money ? Amount(money) : "";
        return
        [
            point.More == 0 ? "0" : $"+{point.More}",
            counts ? Figures.Number(point.DeliveredKWh, 1) : "–",
            gain,
            counts ? Figures.Percent(100 * point.ClippedShare) : "",
            .. priced ? [cost] : Array.Empty<string>(),
            point.Verdict == Level.Go ? "" : FindingsTable.Word(point.Verdict),
        ];
    }

    private void WriteRow(string[] cells, int[] widths, string bar) =>
        writer.WriteLine($"{new string(' ', Indent)}{string.Join("  ", cells.Select((cell, column) => cell.PadLeft(widths[column])))}  {bar}".TrimEnd());

    /// <summary>How many more are worth it.</summary>
    public static string WorthSentence(GrowthCurve curve, GrowthResult result)
    {
        DiminishingReturn worth = curve.Worth;
        string share = Figures.Percent(100 * result.Options.WorthShare);
        if (worth.More == 0)
        {
            return worth.FirstKWh > 0
                ? $"Not one more is worth it: {Each(worth.FirstKWh)}, next to nothing for such a panel."
                : "Not one more is worth it: none adds anything, as far as it may be connected without asking.";
        }

        double eachKWh = (curve.Points[worth.More].DeliveredKWh - curve.Points[0].DeliveredKWh) / worth.More;
        string enough = worth.More == 1
            ? $"1 more is worth it: it adds {Figures.Energy(eachKWh)} a year."
            : $"{worth.More} more are worth it: they add {Figures.Energy(eachKWh)} a year each, taken together.";
        return worth switch
        {
            _ when worth.More == curve.Points.Length - 1 => $"{enough} No end of it was reached: look further with --most.",
            { NextMore: null } => $"{enough} After that none adds anything, as far as it may be connected without asking.",
            _ => $"{enough} After that each adds {Figures.Energy(worth.NextKWh)}, {(worth.NextKWh < result.Options.WorthShare * worth.FirstKWh ? $"less than {share} of the {Figures.Energy(worth.FirstKWh)} of the first" : "next to nothing for such a panel")}.",
        };
    }

    private static string Each(double kWh) => $"each adds {Figures.Energy(kWh)} a year";

    /// <summary>What else is to be known before buying.</summary>
    public static IEnumerable<string> Remarks(GrowthCurve curve, GrowthResult result)
    {
        if (curve.IsInDoubt)
        {
            LabelDoubt doubt = result.Plan.CandidateDoubts.FirstOrDefault(doubt => doubt.Panel == curve.Kind.Panel.Name) ?? result.Plan.Doubts[0];
            yield return $"The label of {doubt.Panel} looks odd and must be read again before anything is bought or connected. {doubt.Message}";
        }

        GrowthPoint worth = curve.Points[curve.Worth.More];
        double addedKWh = worth.DeliveredKWh - curve.Points[0].DeliveredKWh;
        double foundRoomKWh = worth.StoredKWh - curve.Points[0].StoredKWh;
        if (worth.Year.Battery is not null && foundRoomKWh < 0.7 * addedKWh)
        {
            yield return $"But the battery is in the way: of the {Figures.Energy(addedKWh)} more only {Figures.Energy(foundRoomKWh)} find room in it or are used at once.";
        }

        if (curve.Points.Where(point => point.IfAsked is not null).MaxBy(point => point.IfAsked!.DeliveredKWh) is { IfAsked: { } wish } asked)
        {
            (_, Finding? finding) = VerdictSentence.Worst(wish.Design, Level.Ask);
            string with = asked.More == 0 ? "the same panels" : $"{asked.More} more";
            string why = finding is null ? "" : $" ({finding.Title}: {VerdictSentence.Compared(finding)})";
            yield return $"{VerdictSentence.Word(Level.Ask)}: if the maker agreed{why}, {with} would bring {Figures.Energy(wish.DeliveredKWh)}.";
        }
    }
}
