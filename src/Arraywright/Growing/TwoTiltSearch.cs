namespace Arraywright.Growing;

/// <summary>Finds the two tilts, and the days to change between them, that deliver most in a year.</summary>
/// <remarks>
/// What one tilt delivers more than the other each day is known; the span in which the first is used is the stretch of days, round the turn of
/// the year, with the largest sum of that difference. The pair is looked for in steps of 10°, then halved down to 1°.
/// </remarks>
internal sealed class TwoTiltSearch(FacingRuns year, double azimuthDeg)
{
    private const int CoarseDeg = 10;
    private const int OffDays = 14;

    /// <summary>The tilts that were run on the way to the pair, flat to upright in steps of 10°.</summary>
    public IEnumerable<Facing> Coarse => Enumerable.Range(0, (90 / CoarseDeg) + 1).Select(i => year.Of(i * CoarseDeg, azimuthDeg));

    /// <summary>The best pair; null where a second tilt adds nothing.</summary>
    /// <param name="oneKWh">What the best single tilt delivers.</param>
    public TwoTilts? Best(double oneKWh)
    {
        Pair best = new(0, CoarseDeg, default, 0);
        for (int flat = 0; flat < 90; flat += CoarseDeg)
        {
            for (int steep = flat + CoarseDeg; steep <= 90; steep += CoarseDeg)
            {
                best = Better(best, Of(flat, steep));
            }
        }

        for (int stepDeg = CoarseDeg / 2; stepDeg >= 1;)
        {
            Pair next = best;
            foreach ((int up, int down) in new[] { (1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, -1), (1, -1), (-1, 1) })
            {
                next = Better(next, Of(Math.Clamp(best.FlatDeg + (up * stepDeg), 0, 90), Math.Clamp(best.SteepDeg + (down * stepDeg), 0, 90)));
            }

            stepDeg = ReferenceEquals(next, best) ? stepDeg / 2 : stepDeg;
            best = next;
        }

        return best.Steep.Days == 0 || best.Steep.Days == year.Dates.Length || !(best.KWh > oneKWh * (1 + 1e-6)) ? null : Told(best);
    }

    private static Pair Better(Pair one, Pair other) => other.KWh > one.KWh ? other : one;

    private Pair Of(int flatDeg, int steepDeg)
    {
        double[] flat = year.Days(flatDeg, azimuthDeg);
        double[] gain = new double[flat.Length];
        double[] steep = year.Days(steepDeg, azimuthDeg);
        double flatKWh = 0;
        for (int day = 0; day < flat.Length; day++)
        {
            gain[day] = steep[day] - flat[day];
            flatKWh += flat[day];
        }

        (Stretch stretch, double gainKWh) = Richest(gain);
        return new Pair(flatDeg, steepDeg, stretch, flatKWh + gainKWh);
    }

    /// <summary>The stretch of a circle of days with the largest sum; of length 0 when every day is a loss.</summary>
    internal static (Stretch Stretch, double Sum) Richest(ReadOnlySpan<double> gain)
    {
        Stretch best = default;
        double bestSum = 0;
        for (int from = 0; from < gain.Length; from++)
        {
            double sum = 0;
            for (int days = 1; days <= gain.Length; days++)
            {
                sum += gain[(from + days - 1) % gain.Length];
                if (sum > bestSum + 1e-12)
                {
                    (best, bestSum) = (new Stretch(from, days), sum);
                }
            }
        }

        return (best, bestSum);
    }

    private TwoTilts Told(Pair pair)
    {
        int count = year.Dates.Length;
        return new TwoTilts
        {
            SteepDeg = pair.SteepDeg,
            FlatDeg = pair.FlatDeg,
            SteepFrom = year.Dates[pair.Steep.From],
            FlatFrom = year.Dates[(pair.Steep.From + pair.Steep.Days) % count],
            DeliveredKWh = pair.KWh,
            TwoWeeksOffShare = 1 - (WorstOffKWh(pair) / pair.KWh),
        };
    }

    private double WorstOffKWh(Pair pair)
    {
        double worst = pair.KWh;
        foreach ((int begins, int ends) in new[] { (-1, -1), (-1, 0), (-1, 1), (0, -1), (0, 1), (1, -1), (1, 0), (1, 1) })
        {
            int count = year.Dates.Length;
            int days = Math.Clamp(pair.Steep.Days + ((ends - begins) * OffDays), 0, count);
            worst = Math.Min(worst, KWh(pair, new Stretch((pair.Steep.From + (begins * OffDays) + count) % count, days)));
        }

        return worst;
    }

    private double KWh(Pair pair, Stretch steep)
    {
        double[] flat = year.Days(pair.FlatDeg, azimuthDeg);
        double[] upright = year.Days(pair.SteepDeg, azimuthDeg);
        double sum = 0;
        for (int day = 0; day < flat.Length; day++)
        {
            bool isSteep = (day - steep.From + flat.Length) % flat.Length < steep.Days;
            sum += isSteep ? upright[day] : flat[day];
        }

        return sum;
    }

    /// <summary>Days on a circle: the first, and how many.</summary>
    internal readonly record struct Stretch(int From, int Days);

    private sealed record Pair(int FlatDeg, int SteepDeg, Stretch Steep, double KWh);
}
