using System.Collections.Immutable;
using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Planning;

/// <summary>What a plan's wiring delivers over some span of weather.</summary>
public abstract record RunResult
{
    private protected RunResult()
    {
    }

    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The wiring, judged: the stated one, or the best.</summary>
    public required Design Design { get; init; }

    /// <summary>The energy of the span.</summary>
    public required EnergyResult Energy { get; init; }

    /// <summary>Where the weather comes from and how good it is, in one sentence.</summary>
    public required string WeatherSource { get; init; }

    /// <summary>Everything filled in.</summary>
    public required ImmutableArray<Assumption> Assumed { get; init; }

    /// <summary>The usual cautions.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The verdict on the wiring, or worse where a label is in doubt.</summary>
    public Level Verdict => Plan.Doubted(Design.Verdict);
}
