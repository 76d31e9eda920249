using Arraywright.Electrical;
using Arraywright.Limits;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What a meter shows at one input, as a table.</summary>
internal static class MeterRows
{
    public static ReportBlock Of(Assignment assignment, Level verdict) => new ReportBlock.Table(
        $"What the meter will show at {assignment.Input}",
        [new("", false, 3), new("", true, 1), new("", false, 4)],
        [.. Rows(assignment, verdict)]);

    private static IEnumerable<ReportRow> Rows(Assignment assignment, Level verdict)
    {
        yield return ReportRow.Of("Open leads", Figures.Of(assignment.VocStcV, "V"), "in full sun, cells at 25 °C");
        yield return ReportRow.Of("Open leads, at the coldest", $"{Figures.Number(assignment.VocColdV, 2)} V", "what the voltage limit is held against");
        if (assignment.VocWeather is { } weather)
        {
            yield return ReportRow.Of(weather.IsOfFile ? "Open leads, highest in the weather file" : "Open leads, highest in a usual year", $"{Figures.Number(weather.VoltageV, 2)} V", $"{weather.Ends:MM-dd HH:mm}, {MeterTable.At(weather.Conditions)}");
        }

        yield return ReportRow.Of("Leads shorted", Figures.Of(assignment.IscStcA, "A"), $"never to be measured across the leads; {Figures.Of(assignment.IscDesignA, "A")} in the strongest sun");
        OperatingPoint point = assignment.Operating;
        if (verdict == Level.Stop)
        {
            yield return ReportRow.Of("Connected", "–", "do not connect it");
        }
        else if (point.LimitedBy is LimitedBy.Off or LimitedBy.AboveWindow)
        {
            yield return ReportRow.Of("Connected", Figures.Of(0, "A"), MeterTable.HeldBy(point.LimitedBy));
        }
        else
        {
            yield return ReportRow.Of("Connected, volts", Figures.Of(point.VoltageV, "V"), MeterTable.At(assignment.Conditions));
            yield return ReportRow.Of("Connected, amps", Figures.Of(point.CurrentA, "A"), MeterTable.HeldBy(assignment));
            yield return ReportRow.Of("Connected, watts", Figures.Of(point.PowerW, "W"), $"{(assignment.HeldByUnit is null ? "" : "by itself, ")}of {Figures.Of(point.UnlimitedPowerW, "W")} that the panels could give");
        }
    }
}
