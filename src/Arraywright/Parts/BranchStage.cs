using System.Collections.Immutable;

namespace Arraywright.Parts;

/// <summary>One branch connector among those that join the branches of a parallel.</summary>
/// <param name="Ways">How many go into it, 2 to 4.</param>
/// <param name="Gathers">The branches that reach it in the end, each from 1.</param>
internal sealed record BranchStage(int Ways, ImmutableArray<int> Gathers)
{
    /// <summary>Connectors come two, three and four into one (common practice).</summary>
    private const int Most = 4;

    /// <summary>The connectors that join so many branches, those nearest the panels first, the last gathering all.</summary>
    /// <param name="branches">At least two.</param>
    public static ImmutableArray<BranchStage> For(int branches)
    {
        var stages = ImmutableArray.CreateBuilder<BranchStage>();
        List<ImmutableArray<int>> open = [.. Enumerable.Range(1, branches).Select(branch => ImmutableArray.Create(branch))];
        while (open.Count > 1)
        {
            int groups = (open.Count + Most - 1) / Most;
            List<ImmutableArray<int>> next = [];
            int taken = 0;
            for (int group = 0; group < groups; group++)
            {
                // As even as may be: five are three and two, not four and one.
                int size = (open.Count - taken + (groups - group) - 1) / (groups - group);
                ImmutableArray<int> gathered = [.. open.Skip(taken).Take(size).SelectMany(all => all)];
                next.Add(gathered);
                if (size > 1)
                {
                    stages.Add(new BranchStage(size, gathered));
                }

                taken += size;
            }

            open = next;
        }

        return stages.ToImmutable();
    }
}
