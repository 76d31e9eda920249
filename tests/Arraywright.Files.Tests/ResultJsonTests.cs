using System.Text.Json;
using Arraywright.Presentation.Tests;
using Arraywright.Testing;

namespace Arraywright.Files.Tests;

/// <summary>Names are those of the written contract, copied here by hand: a script may rely on each of them.</summary>
public sealed class ResultJsonTests
{
    private static readonly string[] Top = ["format", "plan", "verdict", "assumed", "cautions"];

    public static TheoryData<string> Names => ["go", "ask", "stop", "two-inputs"];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_document_is_the_one_last_read_in_review(string name) =>
        Golden.Matches($"result-{name}.json", ResultJson.Write(Result(name), name == "stop" ? null : 0.25));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_name_of_the_contract_is_there(string name)
    {
        using JsonDocument document = JsonDocument.Parse(ResultJson.Write(Result(name), 0.25));
        JsonElement root = document.RootElement;
        Has(root, [.. Top, "designs"]);
        Assert.Equal(1, root.GetProperty("format").GetInt32());
        foreach (JsonElement design in root.GetProperty("designs").EnumerateArray())
        {
            Has(design, ["rank", "verdict", "energy_kwh", "peak_power_w", "unused_panels", "assignments", "losses"]);
            foreach (JsonElement assignment in design.GetProperty("assignments").EnumerateArray())
            {
                Has(assignment, ["input", "wiring", "panels", "voc_stc_v", "voc_cold_v", "isc_stc_a", "isc_design_a", "operating", "findings"]);
                Has(assignment.GetProperty("operating"), ["irradiance_w_m2", "cell_c", "voltage_v", "current_a", "power_w", "limited_by", "unlimited_power_w"]);
                foreach (JsonElement finding in assignment.GetProperty("findings").EnumerateArray())
                {
                    Has(finding, ["rule", "level", "value", "limit", "unit", "margin_percent", "working", "source"]);
                }
            }
        }
    }

    [Fact]
    public void The_search_is_reported_for_a_plan_and_not_for_a_check()
    {
        using JsonDocument plan = JsonDocument.Parse(ResultJson.Write(SampleResults.Go, 0.25));
        Has(plan.RootElement.GetProperty("search"), ["family", "considered", "feasible", "bound", "gap_percent", "proved", "seconds"]);
        using JsonDocument check = JsonDocument.Parse(ResultJson.Write(SampleResults.Stop));
        Assert.False(check.RootElement.TryGetProperty("search", out _));
    }

    [Fact]
    public void What_is_proved_over_every_step_and_on_the_moments_have_keys_of_their_own()
    {
        ExactComparison exact = new() { Moments = 24, MomentsProved = true, MomentsGapPercent = 0, Resolved = 6, DisagreementPercent = 0.1, LikelyGapPercent = 0.2, LookedAt = 7 };
        PlanResult result = SampleResults.Go with { Search = SampleResults.Go.Search! with { GapPercent = 2.7, Proved = false, Exact = exact } };
        using JsonDocument document = JsonDocument.Parse(ResultJson.Write(result, 0.25));
        JsonElement search = document.RootElement.GetProperty("search");
        Assert.False(search.GetProperty("proved").GetBoolean());
        Assert.True(search.GetProperty("moments_proved").GetBoolean());
        Assert.Equal(2.7, search.GetProperty("gap_percent").GetDouble());
        Assert.Equal(0.2, search.GetProperty("likely_gap_percent").GetDouble());
        Assert.Equal(7, search.GetProperty("looked_at").GetInt32());
    }

    [Fact]
    public void Words_and_figures_are_those_of_the_result()
    {
        using JsonDocument document = JsonDocument.Parse(ResultJson.Write(SampleResults.TwoInputs, 0.25));
        JsonElement root = document.RootElement;
        Assert.Equal("Lambing shed, north field", root.GetProperty("plan").GetString());
        Assert.Equal("ask", root.GetProperty("verdict").GetString());
        JsonElement first = root.GetProperty("designs")[0];
        Assert.Equal(2, first.GetProperty("unused_panels").GetInt32());
        Assert.Equal(214.6, first.GetProperty("energy_kwh").GetDouble());
        JsonElement store = first.GetProperty("assignments")[0];
        Assert.Equal("shed-120 + (dairy-60 | dairy-60)", store.GetProperty("wiring").GetString());
        Assert.Equal(3, store.GetProperty("panels").GetInt32());
        Assert.Equal("none", store.GetProperty("operating").GetProperty("limited_by").GetString());
        JsonElement idle = root.GetProperty("designs")[1].GetProperty("assignments")[0];
        Assert.Equal(JsonValueKind.Null, idle.GetProperty("wiring").ValueKind);
        Assert.Equal(0, idle.GetProperty("panels").GetInt32());
        Assert.Equal("off", idle.GetProperty("operating").GetProperty("limited_by").GetString());
    }

    [Fact]
    public void The_curve_has_its_three_lists_of_one_length_and_its_points()
    {
        using JsonDocument document = JsonDocument.Parse(ResultJson.Write(SampleCurve.TwoHills));
        JsonElement root = document.RootElement;
        Has(root, [.. Top, "voltage_v", "current_a", "power_w", "maximum_power", "operating", "local_maxima"]);
        int length = SampleCurve.TwoHills.VoltageV.Length;
        Assert.All(["voltage_v", "current_a", "power_w"], name => Assert.Equal(length, root.GetProperty(name).GetArrayLength()));
        Assert.Equal(SampleCurve.TwoHills.VoltageV[7], root.GetProperty("voltage_v")[7].GetDouble());
        Assert.Equal(2, root.GetProperty("local_maxima").GetArrayLength());
        Has(root.GetProperty("maximum_power"), ["voltage_v", "current_a", "power_w"]);
        Has(root.GetProperty("operating"), ["irradiance_w_m2", "cell_c", "voltage_v", "current_a", "power_w", "limited_by", "unlimited_power_w"]);
    }

    [Fact]
    public void Letters_stand_with_the_verdict_they_belong_to()
    {
        AskResult ask = new(SampleResults.Ask, [new InputLetter("store-a", "Good day,\n", "inputs:\n")]);
        using JsonDocument document = JsonDocument.Parse(ResultJson.Write(ask));
        Has(document.RootElement, Top);
        JsonElement letter = document.RootElement.GetProperty("letters")[0];
        Assert.Equal("store-a", letter.GetProperty("input").GetString());
        Assert.Equal("Good day,\n", letter.GetProperty("text").GetString());
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_figure_that_is_not_finite_stops_at_the_door_and_is_named(double figure)
    {
        Design best = SampleResults.Go.Designs[0] with { PeakPowerW = figure };
        InvalidOperationException stopped = Assert.Throws<InvalidOperationException>(() => ResultJson.Write(SampleResults.Go with { Designs = [best] }));
        Assert.Contains("peak_power_w", stopped.Message, StringComparison.Ordinal);
        CurveResult curve = SampleCurve.TwoHills with { VoltageV = [0, figure] };
        stopped = Assert.Throws<InvalidOperationException>(() => ResultJson.Write(curve));
        Assert.Contains("voltage_v", stopped.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_result_gives_the_same_bytes() =>
        Assert.Equal(ResultJson.Write(SampleResults.TwoInputs, 1), ResultJson.Write(SampleResults.TwoInputs, 1));

    private static void Has(JsonElement element, string[] names) =>
        Assert.All(names, name => Assert.True(element.TryGetProperty(name, out _), $"{name} is missing"));

    private static PlanResult Result(string name) => name switch
    {
        "go" => SampleResults.Go,
        "ask" => SampleResults.Ask,
        "stop" => SampleResults.Stop,
        _ => SampleResults.TwoInputs,
    };
}
