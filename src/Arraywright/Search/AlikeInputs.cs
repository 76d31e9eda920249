using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>Which inputs may be exchanged without changing anything: wirings that differ by that alone are one.</summary>
internal sealed class AlikeInputs
{
    private readonly SearchProblem _problem;
    private readonly int[] _first;

    /// <summary>Compares the inputs.</summary>
    public AlikeInputs(SearchProblem problem)
    {
        _problem = problem;
        SearchInput[] bare = [.. problem.Inputs.Select(input => input with { Name = "", Unit = -1 })];
        _first = [.. bare.Select(input => Array.IndexOf(bare, input))];
    }

    /// <summary>The last earlier input that one may be exchanged with by itself; −1 for none.</summary>
    public int TwinBefore(int input)
    {
        int twin = input - 1;
        while (twin >= 0 && !(_first[twin] == _first[input] && (UnitOf(twin) == UnitOf(input) || (IsAloneInUnit(twin) && IsAloneInUnit(input) && LimitsOf(twin) == LimitsOf(input)))))
        {
            twin--;
        }

        return twin;
    }

    /// <summary>A text that is the same for wirings, one entry an input, that differ by exchanging inputs or whole units that are alike.</summary>
    public string Key(ImmutableArray<Wiring?> wirings)
    {
        string Text(int input) => $"{_first[input]}:{(wirings[input] is { } wiring ? WiringText.Print(WiringText.Canonical(wiring)) : "")}";
        IEnumerable<int> all = Enumerable.Range(0, wirings.Length);
        return Sorted(all.GroupBy(input => UnitOf(input) < 0 ? -1 - input : UnitOf(input))
            .Select(unit => $"{LimitsOf(unit.First())} {Sorted(unit.Select(Text))}"));
    }

    private static string Sorted(IEnumerable<string> texts) => string.Join('/', texts.Order(StringComparer.Ordinal));

    private int UnitOf(int input) => _problem.Inputs[input].Unit;

    private bool IsAloneInUnit(int input) => UnitOf(input) >= 0 && _problem.Inputs.Count(other => other.Unit == UnitOf(input)) == 1;

    private (double TakesW, double LabelW)? LimitsOf(int input) => UnitOf(input) is >= 0 and int unit
        ? (_problem.UnitMaxW[unit], _problem.UnitMaxLabelPowerW.IsEmpty ? double.PositiveInfinity : _problem.UnitMaxLabelPowerW[unit])
        : null;
}
