using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Limits.Rules;

/// <summary>Sums over a wiring, as a person adds up labels: volts in series, amps in parallel.</summary>
internal static class WiringSums
{
    /// <summary>Folds a tree bottom up.</summary>
    public static double Fold(this Wiring wiring, Func<string, double> panel, Func<IEnumerable<double>, double> series, Func<IEnumerable<double>, double> parallel) => wiring switch
    {
        Wiring.Single single => panel(single.Panel),
        Wiring.Series parts => series(parts.Parts.Select(part => part.Fold(panel, series, parallel))),
        Wiring.Parallel parts => parallel(parts.Parts.Select(part => part.Fold(panel, series, parallel))),
        _ => throw new ArgumentException("A wiring is a panel, a series or a parallel.", nameof(wiring)),
    };

    /// <summary>Volts of the highest string alone; a block of panels side by side counts with its highest.</summary>
    public static double HighestV(this Wiring wiring, Func<string, double> volts) => wiring.Fold(volts, Enumerable.Sum, Enumerable.Max);

    /// <summary>Volts of the lowest string; a block counts with its lowest panel.</summary>
    public static double LowestV(this Wiring wiring, Func<string, double> volts) => wiring.Fold(volts, Enumerable.Sum, Enumerable.Min);

    /// <summary>The panels, one a position, whose volts add up to <see cref="HighestV"/>.</summary>
    public static ImmutableArray<string> HighestPath(this Wiring wiring, Func<string, double> volts) => wiring switch
    {
        Wiring.Single single => [single.Panel],
        Wiring.Series series => [.. series.Parts.SelectMany(part => part.HighestPath(volts))],
        Wiring.Parallel parallel => parallel.Parts.MaxBy(part => part.HighestV(volts))!.HighestPath(volts),
        _ => throw new ArgumentException("A wiring is a panel, a series or a parallel.", nameof(wiring)),
    };

    /// <summary>A sum and what it comes to, "2 × 6.72 A = 13.44 A"; a single term needs no equation.</summary>
    public static string Worked(string sum, string result) => sum == result ? result : $"{sum} = {result}";

    /// <summary>Equal terms of a sum drawn together, in order of first appearance: "2 × 22.9 V + 30 V".</summary>
    public static string Sum(IEnumerable<string> terms) =>
        string.Join(" + ", terms.CountBy(term => term).Select(pair => pair.Value == 1 ? pair.Key : $"{pair.Value} × {pair.Key}"));
}
