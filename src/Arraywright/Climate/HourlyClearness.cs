namespace Arraywright.Climate;

/// <summary>How the sun of days of given clearness is spread over their hours.</summary>
/// <remarks>
/// About the profile of M. Collares-Pereira and A. Rabl, Solar Energy 22 (1979) 155. The spread about it after V. A. Graham and K. G. T. Hollands, Solar Energy 44 (1990) 333
/// (from memory): a standard deviation of clearness of 0.16·sin(πK/0.9), K being that of the day, beta distributed between no sun and the clear sky, with a correlation of 0.54
/// from hour to hour. Each day is brought to its sum.
/// </remarks>
internal static class HourlyClearness
{
    private const int Rounds = 8;
    private const double HourToHour = 0.54;

    /// <summary>Global irradiance on the flat, hour by hour, W/m².</summary>
    /// <param name="sun">The month.</param>
    /// <param name="clearness">Clearness of each of its days.</param>
    /// <param name="clearestOverClear">The clearest hour against the clear sky of usual air.</param>
    /// <param name="noise">Standard normal numbers.</param>
    public static double[] Spread(SunOfMonth sun, double[] clearness, double clearestOverClear, NormalNumbers noise)
    {
        double[] globalW = new double[24 * clearness.Length];
        double[] belowShare = Darker(clearness.Length, noise);
        BetaSpread beta = new();
        for (int day = 0; day < clearness.Length; day++)
        {
            double k = clearness[day];
            double sigma = 0.16 * Math.Sin(Math.PI * Math.Clamp(k / 0.9, 0.02, 0.98));
            (double a, double b) = Profile(sun, day);
            double wantedWh = 0;
            for (int i = 24 * day; i < 24 * (day + 1); i++)
            {
                double outsideW = sun.OutsideWPerM2[i];
                double clearestW = clearestOverClear * sun.ClearWPerM2[i];
                wantedWh += k * outsideW;
                if (clearestW > 0)
                {
                    double share = k * Math.Max(0.2, a + (b * sun.NoonCosine[i])) * outsideW / clearestW;
                    beta.Set(Math.Clamp(share, 0.01, 0.99), sigma * outsideW / clearestW);
                    globalW[i] = clearestW * beta.At(belowShare[i]);
                }
            }

            BringToSum(globalW.AsSpan(24 * day, 24), sun.ClearWPerM2.AsSpan(24 * day, 24), clearestOverClear, wantedWh);
        }

        return globalW;
    }

    /// <summary>Scales hours to their sum; those that would pass a highest are held there, and the rest raised for them.</summary>
    public static void BringToSum(Span<double> globalW, ReadOnlySpan<double> highestW, double factor, double wantedWh)
    {
        for (int round = 0; round < Rounds; round++)
        {
            double sumWh = 0;
            foreach (double w in globalW)
            {
                sumWh += w;
            }

            double scale = sumWh > 0 ? wantedWh / sumWh : 1;
            if (Math.Abs(scale - 1) < 1e-6)
            {
                return;
            }

            for (int i = 0; i < globalW.Length; i++)
            {
                globalW[i] = Math.Min(globalW[i] * scale, factor * highestW[i]);
            }
        }
    }

    /// <summary>For every hour the share of the month's days that are darker at that time of day: a correlated random series, each rank there once.</summary>
    private static double[] Darker(int days, NormalNumbers noise)
    {
        double[] series = new double[24 * days];
        double last = noise.Next();
        for (int i = 0; i < series.Length; i++)
        {
            series[i] = last = (HourToHour * last) + (Math.Sqrt(1 - (HourToHour * HourToHour)) * noise.Next());
        }

        double[] keys = new double[days];
        int[] order = new int[days];
        for (int hour = 0; hour < 24; hour++)
        {
            for (int day = 0; day < days; day++)
            {
                (keys[day], order[day]) = (series[(24 * day) + hour], day);
            }

            Array.Sort(keys, order);
            for (int rank = 0; rank < days; rank++)
            {
                series[(24 * order[rank]) + hour] = (rank + 0.5) / days;
            }
        }

        return series;
    }

    /// <summary>Collares-Pereira and Rabl's coefficients, from the sunset hour angle that the day's sun shows.</summary>
    private static (double A, double B) Profile(SunOfMonth sun, int day)
    {
        int lit = 0;
        for (int i = 24 * day; i < 24 * (day + 1); i++)
        {
            lit += sun.OutsideWPerM2[i] > 0 ? 1 : 0;
        }

        double sine = Math.Sin((Math.PI * Math.Min(lit, 23) / 24) - (Math.PI / 3));
        return (0.409 + (0.5016 * sine), 0.6609 - (0.4767 * sine));
    }
}
