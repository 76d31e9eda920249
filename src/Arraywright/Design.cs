using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Limits;

namespace Arraywright;

/// <summary>One step of the ladder from label watts to watts into the unit.</summary>
/// <param name="Stage">Plain name of what takes the watts: "heat", "mismatch", "current limit"; first "label", last "into the unit".</param>
/// <param name="Watts">For "label" and "into the unit" the level, else the watts lost at this stage (negative for a gain).</param>
public sealed record LossStep(string Stage, double Watts);

/// <summary>The highest open-circuit voltage in a span of weather, by the circuit model.</summary>
/// <param name="VoltageV">Of the highest string alone, label figures without tolerance, V.</param>
/// <param name="Ends">When its step of weather ends, local standard time.</param>
/// <param name="Conditions">What the first kind of panel sees then, mean over the step.</param>
/// <param name="Source">Where the weather comes from, in one sentence.</param>
/// <param name="IsOfFile">Whether it is the plan's weather file, not the year made from the built-in climate.</param>
public sealed record WeatherVoltage(double VoltageV, DateTime Ends, Conditions Conditions, string Source, bool IsOfFile);

/// <summary>What a unit takes of what its inputs together would draw, each by itself.</summary>
/// <param name="Unit">Name of the unit.</param>
/// <param name="MaxW">The most it takes from all its inputs, W.</param>
/// <param name="OfferedW">What its inputs would draw together, W.</param>
public sealed record UnitHold(string Unit, double MaxW, double OfferedW);

/// <summary>A wiring on one input, judged and computed.</summary>
public sealed record Assignment
{
    /// <summary>Name of the input.</summary>
    public required string Input { get; init; }

    /// <summary>The wiring; null when nothing is connected to this input.</summary>
    public required Wiring? Wiring { get; init; }

    /// <summary>Open-circuit voltage at standard conditions: sum of labels of the highest string, V.</summary>
    public required double VocStcV { get; init; }

    /// <summary>Open-circuit voltage at the coldest, the highest of the ways it is computed, V.</summary>
    public required double VocColdV { get; init; }

    /// <summary>The highest open-circuit voltage in the weather of the place, to show beside <see cref="VocColdV"/>; null where no weather is known.</summary>
    public WeatherVoltage? VocWeather { get; init; }

    /// <summary>Short-circuit current at standard conditions: sum of labels of the strings, A.</summary>
    public required double IscStcA { get; init; }

    /// <summary>The same times 1.25 for strong sun, A.</summary>
    public required double IscDesignA { get; init; }

    /// <summary>Conditions of <see cref="Operating"/>.</summary>
    public required Conditions Conditions { get; init; }

    /// <summary>What the input draws under <see cref="Conditions"/>, by itself.</summary>
    public required OperatingPoint Operating { get; init; }

    /// <summary>The limit that its unit's inputs share, where together they would draw more than that; else null.</summary>
    public UnitHold? HeldByUnit { get; init; }

    /// <summary>The fuse that each string must have, A, in the order of the wiring's strings: null for a string that needs none, or for which none is made.</summary>
    public ImmutableArray<double?> StringFusesA { get; init; } = [];

    /// <summary>What each rule says, in rule order.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>The worst of the findings.</summary>
    public Level Verdict => Findings.IsEmpty ? Level.Go : Findings.Max(finding => finding.Level);
}

/// <summary>A wiring for every input, judged and computed: what the search ranks and every screen shows.</summary>
public sealed record Design
{
    /// <summary>Place in the list, from 1.</summary>
    public required int Rank { get; init; }

    /// <summary>Why one would choose it: "earns most", "simplest"; empty for an ordinary runner-up.</summary>
    public required ImmutableArray<string> ChosenFor { get; init; }

    /// <summary>One entry an input, in plan order.</summary>
    public required ImmutableArray<Assignment> Assignments { get; init; }

    /// <summary>What the search ranks by: weighted mean power into the inputs, W.</summary>
    public required double ObjectiveW { get; init; }

    /// <summary>Energy into the inputs in a year, or in the days of the goal, kWh; null when the place is not known.</summary>
    public required double? EnergyKWh { get; init; }

    /// <summary>Power into the inputs under the stated (or standard) conditions, W.</summary>
    public required double PeakPowerW { get; init; }

    /// <summary>Panels left out: kind and count, in plan order.</summary>
    public required ImmutableArray<(string Panel, int Count)> UnusedPanels { get; init; }

    /// <summary>Where the watts go, under the conditions of the operating points.</summary>
    public required ImmutableArray<LossStep> Losses { get; init; }

    /// <summary>The highest open-circuit voltage at the coldest of all inputs, V; 0 where nothing is connected.</summary>
    public double HighestVocColdV => Assignments.Select(assignment => assignment.VocColdV).DefaultIfEmpty(0).Max();

    /// <summary>The worst of its assignments; stop where nothing at all is connected, since that is no answer to go with.</summary>
    public Level Verdict => Assignments.All(assignment => assignment.Wiring is null) ? Level.Stop : Assignments.Max(assignment => assignment.Verdict);
}
