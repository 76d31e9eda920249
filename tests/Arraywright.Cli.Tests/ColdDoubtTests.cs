namespace Arraywright.Cli.Tests;

/// <summary>No go where a doubt about the cold remains.</summary>
public sealed class ColdDoubtTests
{
    /// <summary>
    /// Two panels in series in the mountains, by hand with the label's own coefficient and tolerance: 45.8 V × (1 + 0.0029 × 43 K) × 1.03 = 53.06 V at
    /// the -18 °C of sea level, and 54.29 V at the -27 °C of 2000 m (the built-in climate evaluated by an independent script: -17.06 and -26.22 °C,
    /// rounded down). Between them lies the limit of 53.5 V.
    /// </summary>
    [Theory]
    [InlineData("", "ASK FIRST", "if the place lies 2000 m high")]
    [InlineData(", elevation: 0 m", "GO", "")]
    [InlineData(", elevation: 2000 m", "STOP", "")]
    [InlineData(", coldest: -18 C", "GO", "")]
    public void A_height_left_out_asks_where_it_could_pass_the_limit(string place, string verdict, string told)
    {
        string output = AtTheHut(place, "check");
        Assert.Contains($"\n{verdict}:", output, StringComparison.Ordinal);
        Assert.Contains(told, string.Join(' ', output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    /// <summary>The same 54.29 V where a person asks about cells at -27 °C: a verdict may not be kinder than what the same page shows. Warmer than the coldest it stays 53.06 V.</summary>
    [Theory]
    [InlineData("check", "-27", "STOP", "cells at −27.0 °C, as asked")]
    [InlineData("curve", "-27", "STOP", "")]
    [InlineData("check", "-10", "GO", "")]
    public void Cells_asked_about_that_are_colder_than_the_coldest_are_judged(string verb, string cellC, string verdict, string told)
    {
        string output = AtTheHut(", coldest: -18 C", verb, "--cell", cellC);
        Assert.Contains($"\n{verdict}:", output, StringComparison.Ordinal);
        Assert.Contains(told, string.Join(' ', output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    private static string AtTheHut(string place, string verb, params string[] options)
    {
        string path = Path.Combine(Path.GetTempPath(), $"arraywright-{Guid.NewGuid():N}.yaml");
        try
        {
            File.WriteAllText(path, $$"""
                plan: High hut
                place: { latitude: 46.5, longitude: 8.0{{place}} }
                panels:
                  - { name: hut-120, count: 2, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A, voc_temperature: -0.29 %/K, tolerance: 3 %, cells: 36, max_series_fuse: 15 A, max_system_voltage: 600 V }
                inputs:
                  - name: store
                    max_voltage: 53.5 V
                    max_current: { value: 13 A, evidence: manual }
                    max_short_circuit_current: { value: 17 A, evidence: maker }
                    max_power: { value: 500 W, evidence: manual }
                    wiring: hut-120 + hut-120
                """);
            return Session.Run([verb, path, .. options]).Output;
        }
        finally
        {
            File.Delete(path);
        }
    }
}
