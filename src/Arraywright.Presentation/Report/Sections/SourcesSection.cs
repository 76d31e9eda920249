using System.Collections.Immutable;
using System.Globalization;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>Which program made it, and what its figures rest on.</summary>
internal static class SourcesSection
{
    public static ReportSection Of(ReportSubject subject)
    {
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        string date = subject.Date is { } day ? $", on {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : "";
        blocks.Add(new ReportBlock.Paragraph($"Made by {subject.Program}{date} from the plan \"{subject.Result.Plan.Name}\". The same plan gives the same report, byte for byte."));
        blocks.Add(new ReportBlock.Bullets([.. Sources(subject).Select(source => new ReportItem("", source))]));
        return new ReportSection("sources", "Versions and sources", blocks.ToImmutable());
    }

    private static IEnumerable<string> Sources(ReportSubject subject)
    {
        yield return "Panels: single-diode model after De Soto and others (2006), fitted to the label; standard test conditions after IEC 60904-3.";
        if (subject.Year is { } year)
        {
            yield return $"Weather: {year.WeatherSource}.";
        }

        IEnumerable<string> findings = subject.Design.Assignments.SelectMany(assignment => assignment.Findings).Select(finding => finding.Source);
        foreach (string source in findings.Concat(subject.Parts.Pieces.Select(piece => piece.Source)).Distinct(StringComparer.Ordinal))
        {
            yield return $"{char.ToUpperInvariant(source[0])}{source[1..]}.";
        }

        yield return "Order of connection and what must never be done: common practice of the trade and of manuals.";
    }
}
