using System.Diagnostics;
using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Search;

namespace Arraywright.Bench;

/// <summary>Times the search with proof and shows how its cost grows.</summary>
public static class SearchBench
{
    private static readonly SearchInput Small = new("60 V", new InputWindow(12, 55, 12, 20, 1000), 60, 0.05);
    private static readonly SearchInput Large = new("150 V", new InputWindow(30, 145, 40, 25, 2000), 150, 0.05);

    /// <summary>Runs all cases and prints a table: median of five runs; memory is the whole process's so far.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="only">When given, only cases whose name holds it.</param>
    public static void Run(TextWriter output, string only = "")
    {
        output.WriteLine("search with proof, 16 conditions        ms   target     nodes       considered     feasible  gap %  peak MB");
        foreach ((string name, double targetMs, SearchProblem problem) in Cases())
        {
            if (name.Contains(only, StringComparison.Ordinal))
            {
                Measure(output, name, targetMs, problem);
            }
        }
    }

    private static IEnumerable<(string Name, double TargetMs, SearchProblem Problem)> Cases()
    {
        yield return ("8 different, 60 V", 20, SearchPiles.Of(8, 1, 32, 60, Small));
        yield return ("8 different, 150 V", 20, SearchPiles.Of(8, 1, 32, 60, Large));
        yield return ("10 different, 60 V", double.NaN, SearchPiles.Of(10, 1, 32, 60, Small));
        yield return ("12 different, 60 V", 100, SearchPiles.Of(12, 1, 32, 60, Small));
        yield return ("12 different of 36 cells, 60 V", 100, SearchPiles.Of(12, 1, 30, 40, Small));
        yield return ("12 different, 60 V, open", 100, SearchPiles.Of(12, 1, 32, 60, Small with { Window = Small.Window with { MaxA = double.PositiveInfinity, MaxW = double.PositiveInfinity } }));
        yield return ("12 different, 150 V", 300, SearchPiles.Of(12, 1, 32, 60, Large));
        yield return ("12 different, 150 V, open", 300, SearchPiles.Of(12, 1, 32, 60, Large with { Window = Large.Window with { MaxA = double.PositiveInfinity, MaxW = double.PositiveInfinity } }));
        yield return ("14 different, 60 V", double.NaN, SearchPiles.Of(14, 1, 32, 60, Small));
        yield return ("14 different, 150 V", double.NaN, SearchPiles.Of(14, 1, 32, 60, Large));
        yield return ("16 different, 60 V", 2000, SearchPiles.Of(16, 1, 32, 60, Small));
        yield return ("16 different of 36 cells, 60 V", 2000, SearchPiles.Of(16, 1, 30, 40, Small));
        yield return ("16 different, 60 V, open", 2000, SearchPiles.Of(16, 1, 32, 60, Small with { Window = Small.Window with { MaxA = double.PositiveInfinity, MaxW = double.PositiveInfinity } }));
        yield return ("24 of 4 kinds, 60 V", 2000, SearchPiles.Of(4, 6, 32, 60, Small));
        yield return ("24 of 4 kinds, 150 V", 2000, SearchPiles.Of(4, 6, 32, 60, Large));
        yield return ("24 of 4 kinds, 150 V, open", 2000, SearchPiles.Of(4, 6, 32, 60, Large with { Window = Large.Window with { MaxA = double.PositiveInfinity, MaxW = double.PositiveInfinity } }));
        yield return ("12 different, 60 V and 150 V", 2000, SearchPiles.Of(12, 1, 32, 60, Small, Large));
        yield return ("12 different, 2 alike 60 V", 2000, SearchPiles.Of(12, 1, 32, 60, Small, Small));
        yield return ("24 different, 60 V", double.NaN, SearchPiles.Of(24, 1, 32, 60, Small));
        yield return ("24 different, 150 V", double.NaN, SearchPiles.Of(24, 1, 32, 60, Large));
        yield return ("12 different, 150 V, blocks", double.NaN, SearchPiles.Of(12, 1, 32, 60, Large) with { Family = WiringFamily.StringsOfBlocks });
        yield return ("8 different, 60 V, blocks", double.NaN, SearchPiles.Of(8, 1, 32, 60, Small) with { Family = WiringFamily.StringsOfBlocks });
        yield return ("8 different, 150 V, blocks", double.NaN, SearchPiles.Of(8, 1, 32, 60, Large) with { Family = WiringFamily.StringsOfBlocks });
    }

    private static void Measure(TextWriter output, string name, double targetMs, SearchProblem problem)
    {
        // The first runs are spent compiling: half a second of them is thrown away.
        long begun = Stopwatch.GetTimestamp();
        SearchOutcome outcome;
        do
        {
            outcome = WiringSearch.Run(problem, SearchOptions.Default);
        }
        while (Stopwatch.GetElapsedTime(begun).TotalSeconds < 0.5);

        double[] times = new double[5];
        for (int run = 0; run < times.Length; run++)
        {
            GC.Collect();
            long start = Stopwatch.GetTimestamp();
            outcome = WiringSearch.Run(problem, SearchOptions.Default);
            times[run] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        long peak = Process.GetCurrentProcess().PeakWorkingSet64 >> 20;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name,-32} {times[times.Length / 2],10:F1} {targetMs,8:F0} {outcome.Nodes,9} {outcome.Report.Considered,16:G7} {outcome.Report.Feasible,12:G7} {outcome.Report.GapPercent,6:F3} {peak,8}"));
    }
}
