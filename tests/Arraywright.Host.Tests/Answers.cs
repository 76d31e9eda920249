using System.Globalization;
using System.Text;
using System.Text.Json;
using Arraywright.Files.Tests;

namespace Arraywright.Host.Tests;

/// <summary>Plans to ask about, and reading of what comes back.</summary>
internal static class Answers
{
    /// <summary>Names of the examples.</summary>
    public static IEnumerable<string> Examples => Repository.Examples.Select(path => Path.GetFileNameWithoutExtension(path));

    /// <summary>Where an example is.</summary>
    public static string PathOf(string example) => Path.Combine(Repository.Root, "examples", example + ".yaml");

    /// <summary>The text of an example.</summary>
    public static string Plan(string example) => File.ReadAllText(PathOf(example));

    /// <summary>The body as text.</summary>
    public static Task<string> TextAsync(HttpResponseMessage response) => response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

    /// <summary>The body as JSON.</summary>
    public static async Task<JsonElement> JsonAsync(HttpResponseMessage response) => JsonDocument.Parse(await TextAsync(response)).RootElement;

    /// <summary>The body as problem details, which it must be.</summary>
    public static async Task<JsonElement> ProblemAsync(HttpResponseMessage response)
    {
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        JsonElement problem = await JsonAsync(response);
        Assert.Equal((int)response.StatusCode, problem.GetProperty("status").GetInt32());
        Assert.NotEqual("", problem.GetProperty("title").GetString());
        Assert.NotEqual("", problem.GetProperty("detail").GetString());
        return problem;
    }

    /// <summary>A plan of so many panels for the hill farm, no two alike: the more, the longer the search.</summary>
    public static string DifferentPanels(int count)
    {
        StringBuilder plan = new("plan: Every panel of the farm\npanels:\n");
        for (int i = 0; i < count; i++)
        {
            double openV = 20 + (i * 0.618 % 1 * 25);
            double shortA = 4 + (i * 0.755 % 1 * 7);
            plan.Append(CultureInfo.InvariantCulture, $"  - {{ name: p{i}, count: 1, power: {openV * shortA * 0.77:F1} W, voc: {openV:F2} V, isc: {shortA:F2} A, vmp: {openV * 0.82:F2} V, imp: {shortA * 0.94:F2} A }}\n");
        }

        return plan.Append("inputs:\n  - { name: store-a, max_voltage: 150 V, max_current: 100 A, max_power: 9000 W, mpp_voltage: 30..140 V }\n").ToString();
    }

    /// <summary>A small plan of no place, which is judged in well under a millisecond.</summary>
    public static string Small(string name) =>
        $$"""
        plan: {{name}}
        panels:
          - { name: shed-120, count: 2, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }
        inputs:
          - { name: store-a, max_voltage: 60 V, max_current: 10 A, max_short_circuit_current: 14 A, max_power: 400 W, wiring: shed-120 + shed-120 }
        """;
}
