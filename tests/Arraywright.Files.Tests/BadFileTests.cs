using System.Diagnostics;
using System.Text;

namespace Arraywright.Files.Tests;

/// <summary>Files that are no plan at all, or not as text should be.</summary>
public sealed class BadFileTests
{
    private static readonly string Big = new('x', 1 << 20);

    public static TheoryData<string, string> Texts => new()
    {
        { "", "an empty file" },
        { "\n\n", "an empty file" },
        { "# only a comment\n", "an empty file" },
        { "---\n", "an empty file" },
        { "~", "an empty file" },
        { "\uFEFF", "an empty file" },
        { "hello", "the keys of a plan" },
        { "- a\n- b\n", "found a list" },
        { "{}", "a plan without \"panels\"" },
        { "[]", "found a list" },
        { "plan: x\n", "a plan without \"inputs\"" },
        { "42", "the keys of a plan" },
        { "a, b\n1, 2\n", "the keys of a plan" },
        { "<html></html>", "the keys of a plan" },
        { "*", "" },
        { "&", "" },
        { "%", "" },
        { "%YAML 9.9\n---\na: 1\n", "" },
        { "--- !x\na: 1\n", "a YAML tag" },
        { "\u2028", "U+2028" },
        { "plan: \uD800\n", "U+D800" },
        { "plan: \"\\uD800\"\npanels: 1\n", "a backslash means something special" },
        { ": :\n", "" },
        { "? ? ?", "" },
        { "}", "" },
        { "!!NaNvoc+@? {- infcount'*V.`0", "not YAML from here on" },
        { "\t", "found a tab" },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void A_text_that_is_no_plan_is_a_fault(string text, string says)
    {
        PlanReading reading = PlanFile.Read(text, "no.yaml");
        Assert.Null(reading.Plan);
        Assert.Contains(reading.Faults, fault => fault.ToString().Contains(says, StringComparison.Ordinal));
        Assert.All(reading.Faults, fault => Assert.True(fault is { Line: > 0, Column: > 0 }));
    }

    [Fact]
    public void An_empty_file_is_told_how_to_begin() =>
        Assert.Equal("no.yaml:1:1: found an empty file; expected a plan; `arraywright new` writes a plan to begin with", Assert.Single(PlanFile.Read("", "no.yaml").Faults).ToString());

    [Fact]
    public void Text_in_utf_16_is_called_that()
    {
        Assert.Equal("text in UTF-16", Only([0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Plans.Small)]).Found);
        Assert.Equal("text in UTF-16", Only([0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Plans.Small)]).Found);
        Assert.Equal("text in UTF-16", Only(Encoding.Unicode.GetBytes(Plans.Small)).Found);
        Assert.Equal("text in UTF-16", Only(Encoding.BigEndianUnicode.GetBytes(Plans.Small)).Found);
    }

    [Fact]
    public void A_byte_that_is_not_utf_8_is_found_where_it_stands()
    {
        Fault fault = Only(Encoding.Latin1.GetBytes("plan: x\ncable: { size: 4 mm² }\n"));
        Assert.Equal((2, 20, "the byte 0xB2, which is not UTF-8"), (fault.Line, fault.Column, fault.Found));
    }

    [Fact]
    public void A_binary_file_is_called_that()
    {
        Assert.Equal((1, 5, "a zero byte"), Place(Only([0x7F, 0x45, 0x4C, 0x46, 0x00, 0x02, 0x01])));
        Assert.Equal("the byte 0x89, which is not UTF-8", Only([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0x00, 0x00]).Found);
        Assert.Contains("U+0001", Only([0x50, 0x4B, 0x01, 0x02]).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Fifty_megabytes_are_refused_at_once()
    {
        Stopwatch watch = Stopwatch.StartNew();
        Assert.Equal("more than 1 MiB", Only(new byte[50_000_000]).Found);
        Assert.Equal("more than 1 MiB", Assert.Single(PlanFile.Read(new string('a', 50_000_000), "big.yaml").Faults).Found);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void A_large_file_is_not_read_to_its_end()
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-{Guid.NewGuid():N}.yaml");
        try
        {
            using (FileStream file = File.Create(path))
            {
                file.SetLength(2_000_000_000); // Sparse: takes no room.
            }

            long before = GC.GetTotalAllocatedBytes(precise: true);
            Assert.Equal("more than 1 MiB", Assert.Single(PlanFile.Load(path).Faults).Found);
            Assert.True(GC.GetTotalAllocatedBytes(precise: true) - before < 20_000_000);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_directory_and_a_missing_file_are_faults()
    {
        Assert.Equal("a directory", Assert.Single(PlanFile.Load(Repository.Root).Faults).Found);
        Assert.Equal("no such file", Assert.Single(PlanFile.Load(Path.Combine(Repository.Root, "none.yaml")).Faults).Found);
        Assert.Equal("no such file", Assert.Single(PlanFile.Load(Path.Combine(Repository.Root, "none", "none.yaml")).Faults).Found);
        Assert.Single(PlanFile.Load("").Faults);
        Assert.Single(PlanFile.Load("a\0b").Faults);
    }

    public static TheoryData<string> Exhausting =>
    [
        "open brackets", "open braces", "brackets with keys", "nested hyphens", "nested question marks", "nested indents", "long scalar", "long quoted scalar", "long key", "many keys", "many unknown keys in a panel",
        "many items", "many aliases", "exploding aliases", "many anchors", "many tabs", "many carriage returns", "many documents", "many comments", "long wiring", "deep wiring", "long number", "many shade hours", "block scalar", "many tags",
        "many escapes", "many directives",
    ];

    [Theory]
    [MemberData(nameof(Exhausting))]
    public void Text_made_to_exhaust_is_refused_in_under_a_second(string kind)
    {
        string text = ExhaustingText(kind);
        Assert.True(text.Length <= 1 << 20);
        long before = GC.GetTotalAllocatedBytes(precise: true);
        Stopwatch watch = Stopwatch.StartNew();
        PlanReading reading = PlanFile.Read(text, "big.yaml");
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(1), $"{watch.Elapsed}");
        Assert.True(GC.GetTotalAllocatedBytes(precise: true) - before < 200_000_000);
        Assert.Null(reading.Plan);
        Assert.InRange(reading.Faults.Count, 1, 201);
        Assert.All(reading.Faults, fault => Assert.InRange(fault.ToString().Length, 10, 1000));
    }

    private static string ExhaustingText(string kind) => kind switch
    {
        "open brackets" => Repeat("["),
        "open braces" => Repeat("{"),
        "brackets with keys" => Repeat("{a: "),
        "nested hyphens" => Repeat("- "),
        "nested question marks" => Repeat("? "),
        "nested indents" => string.Concat(Enumerable.Range(0, 1000).Select(level => new string(' ', level) + "a:\n")),
        "long scalar" => "plan: " + Big[..1_000_000],
        "long quoted scalar" => "plan: \"" + Big[..1_000_000] + "\"",
        "long key" => Big[..1_000_000] + ": 1",
        "many keys" => string.Concat(Enumerable.Range(0, 80_000).Select(key => $"k{key}: 1\n")),
        "many unknown keys in a panel" => "panels:\n  - name: a\n" + string.Concat(Enumerable.Range(0, 9_000).Select(key => $"    power_temperature_power_temperature_{key}: 1\n")),
        "many items" => "panels: [" + Repeat("1,"),
        "many aliases" => "panels: [" + Repeat("*a,"),
        "exploding aliases" => "a: &a [x, x, x, x, x, x, x, x, x]\n" + string.Concat(Enumerable.Range('b', 25).Select(name => $"{(char)name}: &{(char)name} [{string.Join(", ", Enumerable.Repeat($"*{(char)(name - 1)}", 9))}]\n")),
        "many anchors" => "panels: [" + Repeat("&a 1,"),
        "many tabs" => Repeat("\ta\n"),
        "many carriage returns" => Repeat("\r"),
        "many documents" => Repeat("---\n"),
        "many comments" => Repeat("# c\n"),
        "long wiring" => Plans.Changed("a + a | a + a", string.Join(" + ", Enumerable.Repeat("a", 200_000))),
        "deep wiring" => Plans.Changed("a + a | a + a", new string('(', 500_000) + "a"),
        "long number" => Plans.Changed("22.9 V", new string('9', 900_000) + " V"),
        "many shade hours" => Plans.Changed("count: 4", "count: 4\n    shade: [" + string.Join(",", Enumerable.Repeat("{from: 1, to: 2, fraction: 1}", 4_000)) + "]"),
        "block scalar" => "plan: |\n" + Repeat("  x\n"),
        "many tags" => "panels: [" + Repeat("!!a 1,"),
        "many escapes" => "plan: \"" + Repeat("\\u0041") + "\"",
        "many directives" => Repeat("%A B\n"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    private static string Repeat(string piece) => string.Concat(Enumerable.Repeat(piece, 1_000_000 / piece.Length));

    [Fact]
    public void All_faults_of_a_file_come_at_once_and_in_order()
    {
        string text = Plans.Small
            .Replace("count: 4", "count: none", StringComparison.Ordinal)
            .Replace("22.9 V", "22,9 V", StringComparison.Ordinal)
            .Replace("vmp:", "vmmp:", StringComparison.Ordinal)
            .Replace("60 V", "60", StringComparison.Ordinal)
            .Replace("a + a |", "a + b |", StringComparison.Ordinal);
        string[] faults = [.. PlanFile.Read(text, "shed.yaml").Faults.Select(fault => fault.ToString())];
        Assert.Equal(
            [
                "shed.yaml:3:12: found \"none\"; expected a whole number from 1 to 200",
                "shed.yaml:5:10: found \"22,9 V\"; expected a voltage such as \"22.9 V\"; write a decimal point, not a comma",
                "shed.yaml:7:5: found the unknown key \"vmmp\"; expected a key of a panel; did you mean \"vmp\"?",
                "shed.yaml:11:18: found \"60\"; expected a voltage such as \"50 V\"; a bare number could mean anything; add the unit, V",
                "shed.yaml:13:17: found an unknown panel \"b\" in the wiring; expected the name of a panel listed in \"panels\"",
            ],
            faults);
    }

    [Fact]
    public void Faults_before_a_place_that_is_not_yaml_are_found_too()
    {
        string text = Plans.Small.Replace("22.9 V", "22,9 V", StringComparison.Ordinal).Replace("    wiring:", "   wiring:", StringComparison.Ordinal);
        int[] lines = [.. PlanFile.Read(text, "shed.yaml").Faults.Select(fault => fault.Line)];
        Assert.Equal([5, 13], lines);
    }

    [Theory]
    [InlineData("name: a", "name: a b")]
    [InlineData("panels:", "pannels:")]
    [InlineData("count: 4", "count: [4")]
    [InlineData("inputs:", "---\ninputs:")]
    [InlineData("voc:", "vco:")]
    public void One_mistake_gives_one_fault(string from, string to) => Assert.Single(PlanFile.Read(Plans.Changed(from, to), "one.yaml").Faults);

    [Fact]
    public void A_fault_shows_nothing_that_a_terminal_would_obey()
    {
        string shown = PlanFile.Read("plan: \"\\e[31mred\"\n", "red.yaml").Faults[0].ToString();
        Assert.DoesNotContain('\u001B', shown);
    }

    [Fact]
    public void More_than_200_panels_of_all_kinds_are_refused_at_the_count_that_passes()
    {
        string second = Plans.Small.Split("inputs:")[0].Replace("panels:\n", "", StringComparison.Ordinal).Replace("name: a", "name: b", StringComparison.Ordinal).Replace("count: 4", "count: 197", StringComparison.Ordinal);
        Fault fault = Assert.Single(PlanFile.Read(Plans.Changed("inputs:", second + "inputs:"), "many.yaml").Faults);
        Assert.Equal((10, 12, "201 panels altogether"), Place(fault));
    }

    [Fact]
    public void Panels_of_all_wirings_together_are_counted()
    {
        string text = Plans.Small + "  - name: other\n    max_voltage: 60 V\n    wiring: a\n";
        Fault fault = Assert.Single(PlanFile.Read(text, "wired.yaml").Faults);
        Assert.Equal((16, 13, "5 of \"a\" in all wirings so far"), Place(fault));
    }

    [Fact]
    public void More_than_16_inputs_are_refused()
    {
        string inputs = string.Concat(Enumerable.Range(0, 17).Select(number => $"  - name: in-{number}\n    max_voltage: 60 V\n"));
        Fault fault = Assert.Single(PlanFile.Read(Plans.Small.Split("inputs:")[0] + "inputs:\n" + inputs, "inputs.yaml").Faults);
        Assert.Equal("at most 16", fault.Expected);
    }

    [Fact]
    public void An_input_of_a_unit_has_no_battery_of_its_own()
    {
        string text = Plans.Changed("rated_current: 10 A", "unit: u\n    battery: { capacity: 900 Wh }") + "units: [{ name: u }]\n";
        Assert.Contains("the inputs of a unit share its battery", Assert.Single(PlanFile.Read(text, "unit.yaml").Faults).ToString(), StringComparison.Ordinal);
    }

    private static Fault Only(byte[] bytes) => Assert.Single(PlanFile.ReadBytes(bytes, "bytes.yaml").Faults);

    private static (int Line, int Column, string Found) Place(Fault fault) => (fault.Line, fault.Column, fault.Found);
}
