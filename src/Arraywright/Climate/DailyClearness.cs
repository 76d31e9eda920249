using Arraywright.Electrical;

namespace Arraywright.Climate;

/// <summary>How clear and dull days are spread within a month of a given mean clearness.</summary>
/// <remarks>
/// P. Bendt, M. Collares-Pereira and A. Rabl, Solar Energy 27 (1981) 1, with the constants of Herzog (1985), as in Duffie and Beckman, eq. 2.9.5 to 2.9.7
/// (0.6313 from memory): an exponential distribution of the daily clearness between 0.05 and a highest value.
/// </remarks>
internal static class DailyClearness
{
    private const double Least = 0.05;

    /// <summary>Clearness of so many days, rising, with exactly the mean given.</summary>
    /// <param name="meanShare">Mean clearness of the month: global over extraterrestrial irradiation on the flat, 0.05 to 0.85.</param>
    /// <param name="clearestShare">Clearness of a day without a cloud: no day is clearer, unless the mean itself is.</param>
    /// <param name="days">Days in the month.</param>
    public static double[] Spread(double meanShare, double clearestShare, int days)
    {
        double mean = Math.Clamp(meanShare, Least + 0.01, 0.84);
        double bend = mean - 0.75;
        double bend2 = bend * bend;
        double bend4 = bend2 * bend2;
        double most = Math.Max(Math.Min(0.6313 + (0.267 * mean) - (11.9 * bend4 * bend4), clearestShare), mean + 0.02);
        double x = (most - Least) / (most - mean);
        double g = -1.498 + (((1.184 * x) - (27.182 * Exponential.Of(-1.5 * x))) / (most - Least));
        double low = Exponential.Of(g * Least);
        double high = Exponential.Of(g * most);
        double[] shares = new double[days];
        double sum = 0;
        for (int day = 0; day < days; day++)
        {
            double under = (day + 0.5) / days;
            shares[day] = Math.Abs(g) < 1e-6 ? Least + (under * (most - Least)) : Math.Log(low - (under * (low - high))) / g;
            sum += shares[day];
        }

        double shift = mean - (sum / days);
        for (int day = 0; day < days; day++)
        {
            shares[day] = Math.Max(0.02, shares[day] + shift);
        }

        return shares;
    }
}
