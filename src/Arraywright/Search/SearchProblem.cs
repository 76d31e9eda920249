using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>Panels of one kind as the search sees them.</summary>
/// <param name="Name">Name of the kind, as a <see cref="Wiring"/> writes it.</param>
/// <param name="Count">How many are at hand, at least 1.</param>
/// <param name="AtWork">The panel in each moment, in the order of <see cref="SearchProblem.Weights"/>.</param>
/// <param name="ColdLabelV">Open-circuit voltage of one at its coldest, by its label or the code's table, V.</param>
/// <param name="ColdModelV">The same by the circuit model, V.</param>
/// <param name="MaxSystemV">Largest system voltage it allows, V; infinite when not stated.</param>
/// <param name="LabelIscA">Short-circuit current on its label, A.</param>
/// <param name="LabelPowerW">Power on its label, W.</param>
public sealed record SearchStock(
    string Name,
    int Count,
    ImmutableArray<PanelAtWork> AtWork,
    double ColdLabelV,
    double ColdModelV,
    double MaxSystemV,
    double LabelIscA,
    double LabelPowerW)
{
    /// <summary>Most label short-circuit amps that may stand beside any string that holds it, A; infinite when not held.</summary>
    public double MaxBesideA { get; init; } = double.PositiveInfinity;

    /// <summary>Current at maximum power on its label, A.</summary>
    public double LabelImpA { get; init; } = LabelIscA;

    /// <summary>When this stands for several kinds, those: its curve is then above all of theirs. Empty otherwise.</summary>
    internal ImmutableArray<SearchStock> Members { get; init; } = [];

    /// <summary>Every panel its curve must cover.</summary>
    internal IEnumerable<SearchStock> Covered => Members.IsEmpty ? [this] : Members;
}

/// <summary>One input as the search sees it.</summary>
/// <param name="Name">Name of the input.</param>
/// <param name="Window">What it lets happen while it works.</param>
/// <param name="MaxVoltageV">Highest voltage it bears, V: no string may pass it at its coldest.</param>
/// <param name="RunOhm">Resistance of the run from the array to it, there and back, Ω.</param>
public sealed record SearchInput(string Name, InputWindow Window, double MaxVoltageV, double RunOhm)
{
    /// <summary>Most short-circuit amps by label that its strings together may offer, A; infinite when not held.</summary>
    public double MaxIscSumA { get; init; } = double.PositiveInfinity;

    /// <summary>Most amps at maximum power by label that its strings together may have, A; infinite when not held.</summary>
    public double MaxImpSumA { get; init; } = double.PositiveInfinity;

    /// <summary>Most label watts that may be connected, W; infinite when not held.</summary>
    public double MaxLabelPowerW { get; init; } = double.PositiveInfinity;

    /// <summary>Index of its unit in <see cref="SearchProblem.UnitMaxW"/>; −1 when it stands alone.</summary>
    public int Unit { get; init; } = -1;
}

/// <summary>Which wirings the search looks at.</summary>
public enum WiringFamily
{
    /// <summary>Any number of strings in parallel on each input; a string is panels in series.</summary>
    Strings,

    /// <summary>The same, and a position of a string may be panels side by side in parallel.</summary>
    StringsOfBlocks,
}

/// <summary>A pile of panels, the inputs they may be wired to, and the moments a wiring is ranked by.</summary>
public sealed record SearchProblem
{
    /// <summary>The pile, one entry a kind.</summary>
    public required ImmutableArray<SearchStock> Stocks { get; init; }

    /// <summary>The inputs.</summary>
    public required ImmutableArray<SearchInput> Inputs { get; init; }

    /// <summary>What each moment counts, any positive unit: the objective is the weighted mean.</summary>
    public required ImmutableArray<double> Weights { get; init; }

    /// <summary>What all inputs of each unit take together at most, W; infinite when not stated.</summary>
    public ImmutableArray<double> UnitMaxW { get; init; } = [];

    /// <summary>Most label watts that may be connected to each unit, W; infinite for all when empty.</summary>
    public ImmutableArray<double> UnitMaxLabelPowerW { get; init; } = [];

    /// <summary>Most label short-circuit amps that may stand beside a string, A, negative where it may not be connected at all; null when nothing is held.</summary>
    public Func<Wiring, double>? MaxBesideA { get; init; }

    /// <summary>Own run of each string, there and back, Ω.</summary>
    public double StringOhm { get; init; }

    /// <summary>One mated connector, Ω.</summary>
    public double ContactOhm { get; init; }

    /// <summary>Which wirings to look at.</summary>
    public WiringFamily Family { get; init; }

    /// <summary>A last word on a complete wiring (one entry an input, null for nothing); null when there is none.</summary>
    public Func<ImmutableArray<Wiring?>, bool>? Accept { get; init; }
}

/// <summary>How far the search goes.</summary>
public sealed record SearchOptions
{
    /// <summary>The ordinary search.</summary>
    public static SearchOptions Default { get; } = new();

    /// <summary>Work before it stops with an honest gap, in nodes: partial wirings bounded, and what takes as long. Counted, not timed: the answer is the same on every machine.</summary>
    public long NodeBudget { get; init; } = 5_000_000;

    /// <summary>Parts of the pile, counted as the product over kinds of their number plus one, above which nearly equal panels are taken for equal.</summary>
    public int MostParts { get; init; } = 1 << 17;

    /// <summary>Different strings above which the same is done.</summary>
    public int MostStrings { get; init; } = 40_000;

    /// <summary>Work of filling the bound tables once, in nodes, above which the same is done.</summary>
    public long MostTableNodes { get; init; } = 2_000_000;

    /// <summary>Wirings to return at most.</summary>
    public int Show { get; init; } = 8;

    /// <summary>Loss against the best that still counts as a tie, fraction: among such the simplest comes first.</summary>
    public double NearTieFraction { get; init; } = 0.0005;

    /// <summary>Memory the bound tables may take, bytes.</summary>
    public long TableBytes { get; init; } = 100L << 20;
}

/// <summary>A wiring for every input with its exact worth.</summary>
/// <param name="Wirings">One entry an input, null for nothing.</param>
/// <param name="ObjectiveW">Weighted mean power into the inputs, W, by the exact circuit.</param>
/// <param name="Panels">Panels used.</param>
/// <param name="Strings">Strings used.</param>
/// <param name="HighestColdV">Highest cold voltage of any string, V.</param>
public sealed record Candidate(ImmutableArray<Wiring?> Wirings, double ObjectiveW, int Panels, int Strings, double HighestColdV)
{
    /// <summary>How much there is to connect: one a panel, one more a string. Lower is simpler.</summary>
    public int Complexity => Panels + Strings;

    /// <summary>Why one would choose it; empty for a runner-up.</summary>
    public ImmutableArray<string> ChosenFor { get; init; } = [];
}

/// <summary>What came out.</summary>
/// <param name="Best">Best first: the first is the simplest of those that tie with the best. Empty when nothing may be connected.</param>
/// <param name="Report">What was looked at and what is proved: of the objective, not of the order of the runners-up.</param>
/// <param name="Nodes">Work done, in nodes: partial wirings bounded, and what takes as long.</param>
public sealed record SearchOutcome(ImmutableArray<Candidate> Best, SearchReport Report, long Nodes);
