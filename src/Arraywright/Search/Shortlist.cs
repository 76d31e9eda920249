using System.Collections.Immutable;

namespace Arraywright.Search;

/// <summary>The best wirings met so far with their exact worth.</summary>
/// <param name="size">How many at least are kept.</param>
/// <param name="isForAll">Whether all are wanted, however little they are worth.</param>
internal sealed class Shortlist(int size, bool isForAll = false)
{
    /// <summary>What two objectives must differ by to be told apart, fraction: well above the solver's tolerance.</summary>
    public const double Resolution = 1e-6;

    private readonly Dictionary<string, Candidate> _byText = new(StringComparer.Ordinal);

    /// <summary>The highest worth, W; 0 before the first.</summary>
    public double BestW { get; private set; }

    /// <summary>A wiring must pass this to change the answer, W.</summary>
    public double FloorW => isForAll ? 0 : BestW * (1 + Resolution);

    /// <summary>Below this a wiring does not make the list, W.</summary>
    public double LeastW { get; private set; }

    /// <summary>Wirings kept.</summary>
    public int Count => _byText.Count;

    /// <summary>Takes note of a wiring; of one that never starts and earns nothing it does not.</summary>
    /// <param name="key">Tells it from others.</param>
    /// <param name="candidate">The wiring.</param>
    public void Add(string key, Candidate candidate)
    {
        if (candidate.ObjectiveW <= 0 || !_byText.TryAdd(key, candidate))
        {
            return;
        }

        BestW = Math.Max(BestW, candidate.ObjectiveW);
        if (_byText.Count > 4 * size)
        {
            foreach (string worse in _byText.OrderByDescending(entry => entry.Value.ObjectiveW).ThenBy(entry => entry.Key, StringComparer.Ordinal).Skip(2 * size).Select(entry => entry.Key).ToArray())
            {
                _byText.Remove(worse);
            }

            LeastW = _byText.Values.Min(kept => kept.ObjectiveW);
        }
    }

    /// <summary>All kept, highest worth first; the simpler and then the first met goes before its equal.</summary>
    public ImmutableArray<Candidate> Ranked() =>
        [.. _byText.OrderByDescending(entry => entry.Value.ObjectiveW)
            .ThenBy(entry => entry.Value.Complexity)
            .ThenBy(entry => entry.Key, StringComparer.Ordinal)
            .Select(entry => entry.Value)];
}
