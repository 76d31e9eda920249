using System.Collections.Immutable;
using Arraywright.Energy;
using Arraywright.Limits;
using Arraywright.Planning;
using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What it will earn: months, where the rest goes, what the battery sees; or in one strong sun where there is no year.</summary>
internal static class EarningsSection
{
    public static ReportSection Of(ReportSubject subject)
    {
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        if (subject.Year is { } year)
        {
            AddYear(blocks, year, subject.Verdict);
        }
        else
        {
            blocks.Add(new ReportBlock.Paragraph(subject.Result.Plan.Place is null
                ? "The plan names no place: what a year brings is not reckoned."
                : "There is no weather for the plan's place: what a year brings is not reckoned."));
        }

        Design design = subject.Design;
        if (!design.Losses.IsEmpty && subject.Verdict != Level.Stop)
        {
            blocks.Add(new ReportBlock.Table(
                $"Where the watts go, {MeterTable.At(design.Assignments[0].Conditions)}",
                [new("stage", false, 4), new("watts", true, 2)],
                [.. design.Losses.Select((step, index) => ReportRow.Of(step.Stage, Change(step.Watts, index == 0 || index == design.Losses.Length - 1, "W")))]));
        }

        return new ReportSection("earnings", "What it will earn", blocks.ToImmutable());
    }

    private static void AddYear(ImmutableArray<ReportBlock>.Builder blocks, YearResult year, Level verdict)
    {
        EnergyResult energy = year.Energy;
        blocks.Add(new ReportBlock.Paragraph(
            $"{EnergyParts.Brings("In a year", energy)}{(verdict == Level.Stop ? " That is reckoned only: it must not be connected." : "")}"));
        blocks.Add(new ReportBlock.Picture(ReportPicture.Of("The year, month by month", YearPlot.Of(year))));
        blocks.Add(new ReportBlock.Table(
            "Month by month",
            [new("month", false, 3), new("sun in the plane, kWh/m²", true, 3), new("into the inputs, kWh", true, 3), new("cut off by limits, kWh", true, 3)],
            [.. energy.Spans.Append(energy.Total with { Name = "the year" }).Select(Month)]));
        blocks.Add(new ReportBlock.Table(
            "Where the year's energy goes",
            [new("stage", false, 4), new("kWh", true, 2)],
            [.. energy.Losses.Select(step => ReportRow.Of(step.Stage, Change(step.KWh, EnergyParts.IsLevel(step), "kWh")))]));
        blocks.Add(new ReportBlock.Paragraph($"What held the inputs: {EnergyParts.Held(energy, "nothing, in any hour of the year.")}"));
        if (energy.Battery is { } battery)
        {
            blocks.Add(new ReportBlock.Paragraph($"The battery: {EnergyParts.Battery(battery)}"));
        }

        blocks.Add(new ReportBlock.Paragraph($"The weather: {year.WeatherSource}."));
    }

    private static ReportRow Month(EnergySpan span) =>
        ReportRow.Of(span.Name, Figures.Number(span.PlaneKWhPerM2, 0), Figures.Number(span.DeliveredKWh, 1), Figures.Number(span.ClippedKWh, 1));

    /// <summary>A level as it is; what a stage takes with its sign.</summary>
    private static string Change(double amount, bool isLevel, string unit) =>
        isLevel ? Figures.Of(amount, unit) : Ladder.Amount(new Rung("", amount, IsLevel: false), unit);
}
