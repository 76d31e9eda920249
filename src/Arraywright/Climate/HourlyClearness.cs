using Arraywright.Electrical;

namespace Arraywright.Climate;

/// <summary>How the sun of days of given clearness is spread over their hours.</summary>
/// <remarks>
/// The profile of M. Collares-Pereira and A. Rabl, Solar Energy 22 (1979) 155, with the spread and hour-to-hour correlation of R. Aguiar and
/// M. Collares-Pereira, Solar Energy 49 (1992) 167 (from memory). No hour passes the clear sky; each day is brought to its sum.
/// </remarks>
internal static class HourlyClearness
{
    private const int Rounds = 8;

    /// <summary>Global irradiance on the flat, hour by hour, W/m².</summary>
    /// <param name="sun">The month.</param>
    /// <param name="clearness">Clearness of each of its days.</param>
    /// <param name="clearestOverClear">The clearest hour against the clear sky of usual air.</param>
    /// <param name="noise">Standard normal numbers.</param>
    public static double[] Spread(SunOfMonth sun, double[] clearness, double clearestOverClear, NormalNumbers noise)
    {
        double[] globalW = new double[24 * clearness.Length];
        double spread = noise.Next();
        for (int day = 0; day < clearness.Length; day++)
        {
            double k = clearness[day];
            double correlation = 0.38 + (0.06 * Math.Cos((7.4 * k) - 2.5));
            double fresh = Math.Sqrt(1 - (correlation * correlation));
            double spreadA = 0.14 * Exponential.Of(-20 * (k - 0.35) * (k - 0.35));
            double spreadB = (3 * (k - 0.45) * (k - 0.45)) + (16 * k * k * k * k * k);
            (double a, double b) = Profile(sun, day);
            double wantedWh = 0;
            for (int i = 24 * day; i < 24 * (day + 1); i++)
            {
                double outsideW = sun.OutsideWPerM2[i];
                if (outsideW > 0)
                {
                    spread = (correlation * spread) + (fresh * noise.Next());
                    double share = k * Math.Max(0.2, a + (b * sun.NoonCosine[i]));
                    double sigma = Math.Min(0.35, spreadA * Exponential.Of(spreadB * (1 - sun.UpShare[i])));
                    globalW[i] = Math.Min(Math.Max(share + (sigma * spread), 0.25 * share) * outsideW, clearestOverClear * sun.ClearWPerM2[i]);
                    wantedWh += k * outsideW;
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
