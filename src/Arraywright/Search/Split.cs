namespace Arraywright.Search;

/// <summary>Which part of the pile goes on each input, with a bound on its worth.</summary>
/// <param name="Parts">One part an input.</param>
/// <param name="BoundW">No wiring of this sharing-out is worth more, W.</param>
internal sealed record Split(int[] Parts, double BoundW);

/// <summary>Lists the ways to share out the pile whose bound lies within a band.</summary>
internal sealed class SplitList
{
    /// <summary>Sharings-out listed at once.</summary>
    private const int Most = 20_000;

    /// <summary>Looked at beyond the budget for a first one.</summary>
    private const int MostOverdue = 200_000;

    private readonly PartBounds _bounds;
    private readonly Pile _pile;
    private readonly AlikeInputs _alike;
    private readonly Effort _effort;
    private readonly double _aboveW;
    private readonly double _upToW;
    private readonly int[] _parts;
    private readonly List<Split> _found = [];
    private int _overdue;
    private bool _cut;

    private SplitList(PartBounds bounds, Pile pile, double aboveW, double upToW, Effort effort)
    {
        _alike = new AlikeInputs(bounds.Problem);
        _effort = effort;
        _bounds = bounds;
        _pile = pile;
        _aboveW = aboveW;
        _upToW = upToW;
        _parts = new int[bounds.Covers.Length];
    }

    /// <summary>The sharings-out with a bound above one figure and not above another, best first.</summary>
    /// <returns>Them, and whether they were too many to list all.</returns>
    public static (List<Split> Found, bool Cut) Between(PartBounds bounds, Pile pile, double aboveW, double upToW, Effort effort)
    {
        var list = new SplitList(bounds, pile, aboveW, upToW, effort);
        list.Share(0, pile.Whole, 0);
        list._found.Sort((a, b) => b.BoundW != a.BoundW ? b.BoundW.CompareTo(a.BoundW) : a.Parts.AsSpan().SequenceCompareTo(b.Parts));
        return (list._found, list._cut);
    }

    private void Share(int input, int left, double soFarW)
    {
        if (input == _parts.Length)
        {
            double boundW = _bounds.Of(_parts);
            if (boundW > _aboveW && boundW <= _upToW)
            {
                _cut = _found.Count == Most;
                _found.AddRange(_cut ? [] : [new Split([.. _parts], boundW)]);
            }

            return;
        }

        int twin = _alike.TwinBefore(input);
        var taken = new PartsWithin(_pile, left, new int[2 * _pile.Counts.Length]);
        do
        {
            int part = taken.Current;
            double hereW = _bounds.TotalW[input][part];
            double restW = input + 1 < _parts.Length ? _bounds.TailW[input + 1][left - part] : 0;
            if (hereW >= 0 && soFarW + hereW + restW > _aboveW && (twin < 0 || part <= _parts[twin]))
            {
                // Of two orders of twins one is enough.
                _parts[input] = part;
                _effort.SpendOrGiveUp(1);
                _cut |= _effort.Left == 0 && (_found.Count > 0 || ++_overdue > MostOverdue);
                if (_bounds.FitsUnit(_parts, input))
                {
                    Share(input + 1, left - part, soFarW + hereW);
                }
            }
        }
        while (!_cut && taken.Next());
    }
}
