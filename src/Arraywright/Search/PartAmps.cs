namespace Arraywright.Search;

/// <summary>The label amps of strings chosen so far.</summary>
/// <param name="IscA">Their short-circuit currents, summed, A.</param>
/// <param name="ImpA">Their currents at maximum power, summed, A.</param>
/// <param name="MostIscA">The most that all strings together may offer for these to stand among them, A.</param>
internal readonly record struct ChosenAmps(double IscA, double ImpA, double MostIscA)
{
    /// <summary>No string chosen.</summary>
    public static ChosenAmps None { get; } = new(0, 0, double.PositiveInfinity);
}

/// <summary>For every part of the pile, the least amps it offers however it is cut into strings, and the most it may: some parts cannot be wired up whole.</summary>
internal sealed class PartAmps
{
    private readonly InputStrings _strings;
    private readonly double[] _leastIscA;
    private readonly double[] _leastImpA;
    private readonly double[] _mostIscA;

    /// <summary>Goes through the parts, each by its first string and the rest.</summary>
    public PartAmps(InputStrings strings, Pile pile, Effort effort)
    {
        _strings = strings;
        _leastIscA = new double[pile.States];
        _leastImpA = new double[pile.States];
        _mostIscA = new double[pile.States];
        Possible = new bool[pile.States];
        Possible[0] = true;
        _mostIscA[0] = double.PositiveInfinity;
        for (int part = 1; part < pile.States; part++)
        {
            effort.SpendOrGiveUp(1 + (strings.Buckets[pile.Lowest[part]].Length / CoverTable.LooksPerNode));
            (double leastIscA, double leastImpA, double mostIscA) = (double.PositiveInfinity, double.PositiveInfinity, 0);
            foreach (int s in strings.Buckets[pile.Lowest[part]])
            {
                if (pile.Within(pile.Packed[strings.Parts[s]], pile.Packed[part]) && Fits(ChosenAmps.None, s, part - strings.Parts[s]))
                {
                    int rest = part - strings.Parts[s];
                    leastIscA = Math.Min(leastIscA, strings.IscA[s] + _leastIscA[rest]);
                    leastImpA = Math.Min(leastImpA, strings.ImpA[s] + _leastImpA[rest]);
                    mostIscA = Math.Max(mostIscA, Math.Min(strings.MostIscA[s], _mostIscA[rest]));
                    Possible[part] = true;
                }
            }

            (_leastIscA[part], _leastImpA[part], _mostIscA[part]) = (leastIscA, leastImpA, mostIscA);
        }
    }

    /// <summary>Whether a part can be cut into strings of this input at all.</summary>
    public bool[] Possible { get; }

    /// <summary>Whether one more string, and then the rest of a part cut in some way, may stand beside those chosen.</summary>
    public bool Fits(ChosenAmps chosen, int s, int rest) =>
        Possible[rest]
        && chosen.IscA + _strings.IscA[s] + _leastIscA[rest] <= Math.Min(chosen.MostIscA, Math.Min(_strings.MostIscA[s], _mostIscA[rest]))
        && chosen.ImpA + _strings.ImpA[s] + _leastImpA[rest] <= _strings.MostImpA;

    /// <summary>Those chosen and one more.</summary>
    public ChosenAmps With(ChosenAmps chosen, int s) =>
        new(chosen.IscA + _strings.IscA[s], chosen.ImpA + _strings.ImpA[s], Math.Min(chosen.MostIscA, _strings.MostIscA[s]));
}
