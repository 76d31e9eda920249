using System.Collections.Immutable;
using Arraywright.Limits;
using Arraywright.Parts.Connecting;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>How it is connected, step by step, with the reading expected at each.</summary>
internal static class ConnectingSection
{
    public static ReportSection Of(ReportSubject subject)
    {
        ConnectionOrder order = subject.Order;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        if (order.Verdict == Level.Stop)
        {
            blocks.Add(new ReportBlock.Paragraph(InputWords.Waiting(subject) is null
                ? "There is no order: this wiring must not be connected. The findings say why."
                : $"There is no order: {InputWords.Before(subject)} The findings say why."));
            return new ReportSection("connecting", "Connecting, step by step", blocks.ToImmutable());
        }

        if (order.Verdict == Level.Ask)
        {
            blocks.Add(new ReportBlock.Verdict(Level.Ask, "not one step of this before the questions in the findings are answered."));
        }

        blocks.Add(new ReportBlock.Paragraph(
            $"Measure at every step, and go on only when the reading is right. \"Now\" is {MeterTable.At(order.Now)}. Any daylight worth measuring in shows a figure between \"least\" (hot cells, weak sun) and \"most\" (the coldest morning)."));
        blocks.Add(new ReportBlock.Steps([.. order.Steps.Select(step => Step(step, order))]));
        blocks.Add(new ReportBlock.Heading("To take it apart again"));
        blocks.Add(new ReportBlock.Steps([.. order.Undoing.Select(line => new ReportStep(line, [], null, null))]));
        return new ReportSection("connecting", "Connecting, step by step", blocks.ToImmutable());
    }

    private static ReportStep Step(ConnectionStep step, ConnectionOrder order)
    {
        bool isNamed = step.Input is not null && order.Steps.Select(each => each.Input).OfType<string>().Distinct().Count() > 1 && !step.Title.Contains(step.Input, StringComparison.Ordinal);
        return new ReportStep(isNamed ? $"{step.Input}: {char.ToLowerInvariant(step.Title[0])}{step.Title[1..]}" : step.Title, step.Do, Expected(step), step.IfNot);
    }

    private static ReportBlock.Table? Expected(ConnectionStep step)
    {
        if (step.Expected.IsEmpty)
        {
            return null;
        }

        bool isBounded = step.Expected.Any(reading => reading.Least is not null || reading.Most is not null);
        ReportColumn[] columns = [new("expected reading", false, 4), new("1000 W/m², 25 °C", true, 3), new("now", true, 2)];
        return new ReportBlock.Table(
            $"Readings expected: {step.Title}",
            isBounded ? [.. columns, new("least", true, 2), new("most", true, 2)] : [.. columns],
            [.. step.Expected.Select(reading => Row(reading, isBounded))]);
    }

    private static ReportRow Row(ExpectedReading reading, bool isBounded)
    {
        string[] cells = [reading.Point, Figures.Of(reading.Standard, reading.Unit), Figures.Of(reading.Now, reading.Unit)];
        return ReportRow.Of(isBounded ? [.. cells, Text(reading.Least, reading.Unit), Text(reading.Most, reading.Unit)] : cells);
    }

    private static string Text(double? value, string unit) => value is { } known ? Figures.Of(known, unit) : "–";
}
