using System.Globalization;
using Arraywright.Files;
using Arraywright.Planning;
using Arraywright.Presentation.Drawing;

namespace Arraywright.Bench;

/// <summary>Times both drawings of a checked plan, from the design to the text of the SVG.</summary>
internal static class DrawingBench
{
    private const int Rounds = 31;

    /// <summary>Drawings a round, since the clock of processor time is coarse.</summary>
    private const int Repeats = 20;

    /// <summary>Runs and prints a table of medians.</summary>
    public static void Run(TextWriter output)
    {
        output.WriteLine("| drawing, to the text of its SVG | median ms of processor time | bytes |");
        output.WriteLine("| --- | --- | --- |");
        foreach (string wiring in new[] { "2*a | 2*a", "4*a | 4*a", "4*a | 4*a | 4*a | 4*a", "a + (a | a) + (a + a | a) + 2*(a | a | a | a + a)" })
        {
            DrawingSheet sheet = Sheet(wiring);
            Measure(output, $"diagram of {wiring}", sheet.Diagram);
            Measure(output, $"arrangement of {wiring}", sheet.Arrangement);
        }
    }

    private static DrawingSheet Sheet(string wiring)
    {
        Plan plan = PlanFile.Read($$"""
            plan: Bench
            panels:
              - { name: a, count: 20, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A }
            inputs:
              - { name: store, max_voltage: 150 V, max_current: 20 A, wiring: {{wiring}} }
            cable: { length: 8 m, size: 4 mm2, string_length: 2 m }
            """, "bench.yaml").Plan!;
        Design design = Planner.Check(plan, PlannerOptions.Default).Designs[0];
        return DrawingSheet.Of(plan, design, ReadingStudy.Of(plan, design, PlannerOptions.Default), []);
    }

    private static void Measure(TextWriter output, string what, Func<Picture> draw)
    {
        double[] ms = new double[Rounds];
        string svg = "";
        for (int round = 0; round < Rounds; round++)
        {
            TimeSpan start = Environment.CpuUsage.TotalTime;
            for (int again = 0; again < Repeats; again++)
            {
                svg = draw().ToSvg();
            }

            ms[round] = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds / Repeats;
        }

        string cell = what.Replace("|", "\\|", StringComparison.Ordinal);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {cell} | {ms.Order().ElementAt(Rounds / 2):0.0} | {svg.Length} |"));
    }
}
