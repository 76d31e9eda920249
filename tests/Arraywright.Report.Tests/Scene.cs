using System.Globalization;
using System.Text;
using Arraywright.Files;
using Arraywright.Files.Tests;
using Arraywright.Planning;
using Arraywright.Presentation.Report;

namespace Arraywright.Report.Tests;

/// <summary>Plans of the hill farm, from one panel to sixteen, and their reports.</summary>
internal static class Scene
{
    /// <summary>A name with everything in it that might be taken for something else.</summary>
    public const string HardName = "<b>Sheep & goats</b> <script>alert(1)</script> \U0001F411 מרעה مرعى ]]> -- and a name that goes on over the hill to the far end of the north field where the old lambing shed of the neighbours stands";

    /// <summary>A word that no column holds.</summary>
    public const string LongWord = "reference-without-any-space-in-it-that-can-be-broken-nowhere-and-must-not-run-out-of-its-column-whatever-happens";

    /// <summary>Panels and an input named in writings that run from right to left, have no letters in the font of print, or both; one in Cyrillic, which it has.</summary>
    public const string OtherLetters = """
        plan: Other letters
        panels:
          - { name: לוח-120, count: 2, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }
          - { name: 日本語パネル, count: 1, power: 110 W, voc: 22.5 V, isc: 6.5 A, vmp: 18.6 V, imp: 5.92 A }
          - { name: Ошибка-Ж, count: 1, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }
        inputs:
          - { name: مدخل, max_voltage: 150 V, max_current: { value: 30 A, evidence: manual }, max_short_circuit_current: { value: 35 A, evidence: manual }, wiring: 2*לוח-120 + 日本語パネル + Ошибка-Ж }
        """;

    /// <summary>Two panels in a row, 2 × 22.9 V × 1.1131 × 1.03 = 52.5 V at −14 °C, under 60 V on the left; four, 105 V, over it on the right.</summary>
    public const string OneOfTwoStopped = """
        plan: One of two
        place: { latitude: 54.6, longitude: -3.1, elevation: 210 m, coldest: -14 C }
        panels:
          - { name: a-120, count: 6, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A, voc_temperature: -0.29 %/K, cells: 36, bypass_diodes: 2, max_series_fuse: 15 A, max_system_voltage: 600 V, tolerance: 3 % }
        inputs:
          - { name: left, max_voltage: 60 V, mpp_voltage: 12..55 V, max_current: { value: 30 A, evidence: manual }, max_short_circuit_current: { value: 35 A, evidence: manual }, max_power: { value: 3 kW, evidence: manual }, socket: 30 A, wiring: 2*a-120 }
          - { name: right, max_voltage: 60 V, mpp_voltage: 12..55 V, max_current: { value: 30 A, evidence: manual }, max_short_circuit_current: { value: 35 A, evidence: manual }, max_power: { value: 3 kW, evidence: manual }, socket: 30 A, wiring: 4*a-120 }
        """;

    /// <summary>Three kinds on labels that say little, on a cable measured in feet and gauges.</summary>
    public const string FeetAndKinds = """
        plan: Feet
        panels:
          - { name: one, count: 1, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }
          - { name: two, count: 1, power: 110 W, voc: 22.5 V, isc: 6.5 A, vmp: 18.6 V, imp: 5.92 A }
          - { name: three, count: 1, power: 100 W, voc: 22.1 V, isc: 6.2 A, vmp: 18.2 V, imp: 5.5 A, tolerance: 3 % }
        cable: { length: 30 ft, size: 10 AWG, string_length: 80 ft, string_size: 2.5 mm2 }
        inputs:
          - { name: i, max_voltage: 150 V, max_current: { value: 30 A, evidence: manual }, max_short_circuit_current: { value: 35 A, evidence: manual }, wiring: one + two + three }
        """;

    /// <summary>What the reports of the tests are about, by name.</summary>
    public static IReadOnlyDictionary<string, string> Plans { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["one panel, no place, nothing optional"] = "plan: One\npanels: [{ name: p, count: 1, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }]\ninputs: [{ name: i, max_voltage: 60 V }]\n",
        ["two panels, a stop"] = Shed(2, 40, "shed-120 + shed-120"),
        ["four panels"] = File.ReadAllText(Path.Combine(Repository.Root, "examples", "lambing-shed.yaml")),
        ["five panels, a block in a string"] = Shed(5, 150, "shed-120 + (shed-120 | shed-120) + 2*shed-120"),
        ["eight panels, a search"] = Shed(8, 60, null),
        ["two inputs"] = File.ReadAllText(Path.Combine(Repository.Root, "examples", "cheese-dairy-two-inputs.yaml")),
        ["sixteen panels, hard names"] = Hard,
        ["sixteen panels side by side"] = Shed(16, 60, string.Join(" | ", Enumerable.Repeat("shed-120", 16))),
        ["sixteen panels in a row"] = Shed(16, 500, "16*shed-120"),
    };

    /// <summary>The names of <see cref="Plans"/>, for theories.</summary>
    public static TheoryData<string> Names => [.. Plans.Keys];

    /// <summary>The report of a plan.</summary>
    public static ReportDocument Report(string name) => Of(Plans[name]);

    /// <summary>The report of a plan's text.</summary>
    public static ReportDocument Of(string text)
    {
        PlanReading reading = PlanFile.Read(text, "plan.yaml");
        Assert.Empty(reading.Faults);
        return ReportBuilder.Of(ReportSubject.Run(reading.Plan!, PlannerOptions.Default, date: null, null, CancellationToken.None));
    }

    /// <summary>Every text of a report, in order, once for each place it stands.</summary>
    public static IEnumerable<string> Texts(ReportDocument report) =>
        report.Sections.SelectMany(section => section.Blocks.SelectMany(Texts).Prepend(section.Title)).Prepend(report.Subject).Prepend(report.Title).Where(text => text.Length > 0);

    private static IEnumerable<string> Texts(ReportBlock block) => block switch
    {
        ReportBlock.Verdict verdict => [verdict.Sentence],
        ReportBlock.Heading heading => [heading.Text],
        ReportBlock.Paragraph paragraph => [paragraph.Text],
        ReportBlock.Bullets bullets => bullets.Items.SelectMany(item => new[] { item.Lead, item.Text }),
        ReportBlock.Steps steps => steps.Items.SelectMany(step => (IEnumerable<string>)[step.Title, .. step.Do, .. step.Expected is { } table ? Texts(table) : [], step.IfNot ?? ""]),
        ReportBlock.Table table => [table.Caption, .. table.Columns.Select(column => column.Title), .. table.Rows.SelectMany(row => row.Cells.Concat(row.Notes))],
        ReportBlock.Picture picture => [picture.Shown.Caption],
        _ => throw new InvalidOperationException("A block of an unknown kind."),
    };

    private static string Shed(int count, double maxV, string? wiring) => string.Create(
        CultureInfo.InvariantCulture,
        $$"""
        plan: Lambing shed
        place: { latitude: 54.6, longitude: -3.1, elevation: 210 m, coldest: -14 C }
        panels:
          - { name: shed-120, count: {{count}}, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A, voc_temperature: -0.29 %/K, tolerance: 3 %, max_series_fuse: 15 A }
        inputs:
          - name: store-a
            max_voltage: {{maxV}} V
            max_current: { value: 13 A, evidence: manual }
            max_short_circuit_current: { value: 140 A, evidence: maker }
            max_power: { value: 500 W, evidence: maker, exceed: 200 % }
        {{(wiring is null ? "" : $"    wiring: {wiring}\n")}}
        """);

    private static string Hard
    {
        get
        {
            StringBuilder text = new();
            text.Append(CultureInfo.InvariantCulture, $"plan: \"{HardName}\"\n");
            text.Append("place: { latitude: -54.6, longitude: 171.25, coldest: -14 C }\n");
            text.Append("panels:\n  - { name: shed-120, count: 12, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A, max_series_fuse: 15 A }\n");
            text.Append("  - { name: a-panel-with-a-name-so-long-that-no-colu, count: 4, voc: 22.4 V, isc: 3.55 A, vmp: 18.4 V, imp: 3.26 A }\n");
            text.Append("inputs:\n  - name: store-with-quite-a-long-name-as-well-xyz\n    max_voltage: 150 V\n");
            text.Append(CultureInfo.InvariantCulture, $"    max_current: {{ value: 60 A, evidence: manual, note: \"page 9, <i>maximum</i> & more; {LongWord}, {string.Join(' ', Enumerable.Repeat("and so on at great length", 13))}\" }}\n");
            text.Append("    max_power: { value: 1400 W, evidence: label }\n    wiring: 4*shed-120 | 4*shed-120 | 4*shed-120 | 4*a-panel-with-a-name-so-long-that-no-colu\n");
            return text.ToString();
        }
    }
}
