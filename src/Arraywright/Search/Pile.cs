namespace Arraywright.Search;

/// <summary>The pile of panels and every part of it, numbered: a part is a count of each kind, read as a number of mixed radix.</summary>
/// <remarks>Equal panels are one kind with a count, so that they are never told apart. Part 0 is empty; the whole pile is the last part.</remarks>
internal sealed class Pile
{
    private readonly ulong _guards;

    /// <summary>Numbers the parts of a pile.</summary>
    /// <param name="counts">How many of each kind.</param>
    public Pile(ReadOnlySpan<int> counts)
    {
        Counts = counts.ToArray();
        Strides = new int[counts.Length];
        Shifts = new int[counts.Length];
        int states = 1;
        int bit = 0;
        for (int kind = 0; kind < counts.Length; kind++)
        {
            Strides[kind] = states;
            Shifts[kind] = bit;
            states *= counts[kind] + 1;
            bit += BitsFor(counts[kind]) + 1;
            _guards |= 1UL << (bit - 1);
        }

        Packed = new ulong[states];
        Lowest = new int[states];
        Panels = new int[states];
        Lowest[0] = counts.Length;
        for (int part = 1; part < states; part++)
        {
            Describe(part);
        }
    }

    /// <summary>How many of each kind.</summary>
    public int[] Counts { get; }

    /// <summary>What one panel of each kind adds to a part's number.</summary>
    public int[] Strides { get; }

    /// <summary>Counts of each part, a bit field a kind with a spare bit above it, so that one subtraction compares them all.</summary>
    public ulong[] Packed { get; }

    /// <summary>First kind present in each part.</summary>
    public int[] Lowest { get; }

    /// <summary>Panels in each part.</summary>
    public int[] Panels { get; }

    /// <summary>Number of parts.</summary>
    public int States => Packed.Length;

    /// <summary>The whole pile.</summary>
    public int Whole => Packed.Length - 1;

    private int[] Shifts { get; }

    /// <summary>Number of parts of a pile, as a double since it may be huge; and whether counts fit a packed word.</summary>
    public static (double States, bool Packs) Measure(ReadOnlySpan<int> counts)
    {
        double states = 1;
        int bits = 0;
        foreach (int count in counts)
        {
            states *= count + 1.0;
            bits += BitsFor(count) + 1;
        }

        return (states, bits <= 64);
    }

    /// <summary>Whether one packed part lies within another.</summary>
    public bool Within(ulong inner, ulong outer) => (((outer | _guards) - inner) & _guards) == _guards;

    /// <summary>How many of a kind a part holds.</summary>
    public int CountOf(int part, int kind) => part / Strides[kind] % (Counts[kind] + 1);

    /// <summary>How many parts lie within a part.</summary>
    public long PartsIn(int part)
    {
        long parts = 1;
        for (int kind = 0; kind < Counts.Length; kind++)
        {
            parts *= CountOf(part, kind) + 1;
        }

        return parts;
    }

    private static int BitsFor(int count) => 32 - int.LeadingZeroCount(count);

    private void Describe(int part)
    {
        Lowest[part] = -1;
        int rest = part;
        for (int kind = 0; kind < Counts.Length; kind++)
        {
            (rest, int held) = Math.DivRem(rest, Counts[kind] + 1);
            if (held > 0)
            {
                Lowest[part] = Lowest[part] < 0 ? kind : Lowest[part];
                Panels[part] += held;
                Packed[part] |= (ulong)held << Shifts[kind];
            }
        }
    }
}

/// <summary>Goes through every part that lies within a part, the empty one first.</summary>
internal ref struct PartsWithin
{
    private readonly Pile _pile;
    private readonly Span<int> _most;
    private readonly Span<int> _held;

    /// <summary>Starts at the empty part.</summary>
    /// <param name="pile">The pile.</param>
    /// <param name="whole">The part to stay within.</param>
    /// <param name="scratch">Two numbers a kind.</param>
    public PartsWithin(Pile pile, int whole, Span<int> scratch)
    {
        int kinds = pile.Counts.Length;
        _pile = pile;
        _most = scratch[..kinds];
        _held = scratch.Slice(kinds, kinds);
        _held.Clear();
        for (int kind = 0; kind < kinds; kind++)
        {
            _most[kind] = pile.CountOf(whole, kind);
        }
    }

    /// <summary>The part gone to.</summary>
    public int Current { get; private set; }

    /// <summary>Goes to the next part; false when there is none.</summary>
    public bool Next()
    {
        for (int kind = 0; kind < _held.Length; kind++)
        {
            if (_held[kind] < _most[kind])
            {
                _held[kind]++;
                Current += _pile.Strides[kind];
                return true;
            }

            Current -= _held[kind] * _pile.Strides[kind];
            _held[kind] = 0;
        }

        return false;
    }
}
