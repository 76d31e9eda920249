namespace Arraywright.Growing;

/// <summary>How many more panels are worth it.</summary>
/// <remarks>
/// One panel may add nothing where two complete a string. So the curve is read by its upper concave envelope: the steps that make sense, each
/// with what it adds a panel. The first step is the yardstick for all later ones.
/// </remarks>
/// <param name="More">How many are worth it; 0 for none.</param>
/// <param name="FirstKWh">What each panel of the first step adds, kWh a year.</param>
/// <param name="NextKWh">What each panel of the first step that is not worth it adds, kWh a year; 0 where nothing adds any more.</param>
/// <param name="NextMore">How many more that step leads to; null where nothing adds any more.</param>
public sealed record DiminishingReturn(int More, double FirstKWh, double NextKWh, int? NextMore)
{
    /// <summary>Reads a curve.</summary>
    /// <param name="deliveredKWh">kWh a year with 0, 1, 2 … more; never falling.</param>
    /// <param name="worthShare">Share of the first step that a later one must add a panel.</param>
    /// <param name="negligibleKWh">A step that adds less than this a panel is not worth it, however little the first adds.</param>
    public static DiminishingReturn Of(ReadOnlySpan<double> deliveredKWh, double worthShare, double negligibleKWh)
    {
        int at = 0;
        double firstKWh = 0;
        while (at < deliveredKWh.Length - 1)
        {
            int next = Steepest(deliveredKWh, at);
            double eachKWh = (deliveredKWh[next] - deliveredKWh[at]) / (next - at);
            firstKWh = at == 0 ? eachKWh : firstKWh;
            if (!(eachKWh > 0) || eachKWh < worthShare * firstKWh || eachKWh < negligibleKWh)
            {
                return new DiminishingReturn(at, firstKWh, Math.Max(0, eachKWh), eachKWh > 0 ? next : null);
            }

            at = next;
        }

        return new DiminishingReturn(at, firstKWh, 0, null);
    }

    /// <summary>The point to which the curve rises most a panel; of equals the nearest.</summary>
    private static int Steepest(ReadOnlySpan<double> kWh, int from)
    {
        int best = from + 1;
        for (int to = from + 2; to < kWh.Length; to++)
        {
            if ((kWh[to] - kWh[from]) / (to - from) > ((kWh[best] - kWh[from]) / (best - from)) + 1e-9)
            {
                best = to;
            }
        }

        return best;
    }
}
