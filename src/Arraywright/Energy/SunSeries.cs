using System.Collections.Immutable;

namespace Arraywright.Energy;

/// <summary>The sun on every kind of panel, step by step, and where each step belongs in time.</summary>
/// <param name="StepH">Length of a step, h.</param>
/// <param name="SpanNames">Names of the spans that steps are summed into, such as months.</param>
/// <param name="Span">Span of each step.</param>
/// <param name="Day">Day of each step, from 0.</param>
/// <param name="EndHour">Hour at the end of each step by the weather's standard time, over 0 to 24.</param>
/// <param name="Stocks">What each kind of panel sees, in plan order.</param>
public sealed record SunSeries(
    double StepH,
    ImmutableArray<string> SpanNames,
    int[] Span,
    int[] Day,
    double[] EndHour,
    ImmutableArray<StockSun> Stocks)
{
    /// <summary>How long the weather's sun was averaged over, h; a step where nothing else is said.</summary>
    public double AveragedOverH { get; init; } = StepH;

    /// <summary>The same by the clock on the wall, which loads are told by; standard time where the plan names no time zone.</summary>
    public double[] ClockEndHour { get; init; } = EndHour;

    /// <summary>Steps.</summary>
    public int Count => Span.Length;
}
