namespace Arraywright.Print.Setting;

/// <summary>A strip on its page.</summary>
internal readonly record struct Placed(Strip Strip, double TopPt);

/// <summary>Puts strips on pages.</summary>
internal static class Pager
{
    /// <summary>The pages, at least one.</summary>
    public static List<List<Placed>> Pages(IReadOnlyList<Strip> strips)
    {
        List<List<Placed>> pages = [[]];
        double topPt = Layout.TopPt;
        for (int first = 0, next; first < strips.Count; first = next)
        {
            next = first + 1;
            double togetherPt = strips[first].HeightPt;
            for (bool keeps = strips[first].KeepsWithNext; keeps && next < strips.Count; next++)
            {
                togetherPt += strips[next].HeightPt;
                keeps = strips[next].KeepsWithNext || strips[next].IsGap;
            }

            // What is too high for a page of its own is cut where it must be.
            bool isTooHigh = togetherPt > Layout.BottomPt - Layout.TopPt;
            for (int index = first; index < next; index++)
            {
                Strip strip = strips[index];
                double neededPt = index == first && !isTooHigh ? togetherPt : strip.HeightPt;
                if (topPt + neededPt > Layout.BottomPt && topPt > Layout.TopPt)
                {
                    topPt = Layout.TopPt;
                    pages.Add([]);
                    if (strips.Skip(index).FirstOrDefault(each => each.HeightPt > 0)?.Head is { } head)
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
}
