namespace Arraywright.Print.Setting;

/// <summary>A strip on its page.</summary>
internal readonly record struct Placed(Strip Strip, double TopPt);

/// <summary>Puts strips on pages.</summary>
internal static class Pager
{
    /// <summary>A sum of heights may miss by a last bit.</summary>
    private const double RoundingPt = 1e-6;

    /// <summary>The pages, at least one.</summary>
    public static List<List<Placed>> Pages(IReadOnlyList<Strip> strips)
    {
        List<List<Placed>> pages = [[]];
        double topPt = Layout.TopPt;
        for (int first = 0, next; first < strips.Count; first = next)
        {
            next = EndOfGroup(strips, first);
            List<Strip> group = [.. strips.Skip(first).Take(next - first)];
            double togetherPt = group.Sum(strip => strip.HeightPt);
            double roomPt = Layout.BottomPt - topPt;
            if (togetherPt > roomPt && group.FindIndex(strip => strip.HeightPt - strip.LeastHeightPt >= togetherPt - roomPt) is >= 0 and int picture)
            {
                group[picture] = group[picture].Lowered(togetherPt - roomPt);
                togetherPt = roomPt;
            }

            // What is too high for a page of its own is cut where it must be.
            bool isTooHigh = togetherPt > Layout.BottomPt - Layout.TopPt;
            for (int index = 0; index < group.Count; index++)
            {
                Strip strip = group[index];
                double neededPt = index == 0 && !isTooHigh ? togetherPt : strip.HeightPt;
                if (topPt + neededPt > Layout.BottomPt + RoundingPt && topPt > Layout.TopPt)
                {
                    topPt = Layout.TopPt;
                    pages.Add([]);
                    if (strips.Skip(first + index).FirstOrDefault(each => each.HeightPt > 0)?.Head is { } head)
                    {
                        pages[^1].Add(new Placed(head, topPt));
                        topPt += head.HeightPt;
                    }
                }

                if (strip.IsGap && topPt == Layout.TopPt)
                {
                    continue;
                }

                pages[^1].Add(new Placed(strip, topPt));
                topPt += strip.HeightPt;
            }
        }

        return pages;
    }

    /// <summary>The strip after those that must stay with the first.</summary>
    private static int EndOfGroup(IReadOnlyList<Strip> strips, int first)
    {
        int next = first + 1;
        for (bool keeps = strips[first].KeepsWithNext; keeps && next < strips.Count; next++)
        {
            keeps = strips[next].KeepsWithNext || strips[next].IsGap;
        }

        return next;
    }
}
