using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright;

/// <summary>The current-voltage curve of one wiring at its input, judged.</summary>
public sealed record CurveResult
{
    /// <summary>The plan it belongs to.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The input whose curve this is.</summary>
    public required DcInput Input { get; init; }

    /// <summary>The wiring, its conditions, its operating point and what the rules say; its wiring is never null.</summary>
    public required Assignment Assignment { get; init; }

    /// <summary>The circuit whose curve this is, cable and all: what a netlist prints.</summary>
    public required CircuitTree Circuit { get; init; }

    /// <summary>Volts from 0 to open circuit, ascending, as seen at the input's terminals.</summary>
    public required ImmutableArray<double> VoltageV { get; init; }

    /// <summary>Amps, one for each of <see cref="VoltageV"/>.</summary>
    public required ImmutableArray<double> CurrentA { get; init; }

    /// <summary>Watts, one for each of <see cref="VoltageV"/>.</summary>
    public required ImmutableArray<double> PowerW { get; init; }

    /// <summary>The point of most power, exact, not one of the samples.</summary>
    public required CurvePoint MaximumPower { get; init; }

    /// <summary>Every hill of power, by ascending voltage, <see cref="MaximumPower"/> among them.</summary>
    public required ImmutableArray<CurvePoint> LocalMaxima { get; init; }

    /// <summary>Everything filled in.</summary>
    public required ImmutableArray<Assumption> Assumed { get; init; }

    /// <summary>The usual cautions.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The verdict on the wiring, or worse where a label is in doubt.</summary>
    public Level Verdict => Plan.Doubted(Assignment.Verdict);
}
