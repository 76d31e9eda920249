using Arraywright.Electrical;

namespace Arraywright.Climate;

/// <summary>How clear and dull days are spread within a month of a given mean clearness.</summary>
/// <remarks>
/// The density X·(1 − X)·exp(γX) of G. Y. Saunier, T. A. Reddy and S. Kumar, Solar Energy 38 (1987) 169 (its form from memory), X being clearness over a
/// highest clearness; γ follows from the mean. Days that it puts above a clear sky are clear days.
/// </remarks>
internal static class DailyClearness
{
    private const int Bins = 200;
    private const double SteepestBend = 100;

    /// <summary>Clearness of so many days, rising, with exactly the mean given.</summary>
    /// <param name="meanShare">Mean clearness of the month, above 0: global over extraterrestrial irradiation on the flat.</param>
    /// <param name="highestShare">Where the density ends; above the mean.</param>
    /// <param name="clearestShare">Clearness of a day without a cloud; above the mean.</param>
    /// <param name="days">Days in the month.</param>
    public static double[] Spread(double meanShare, double highestShare, double clearestShare, int days)
    {
        double[] below = new double[Bins + 1];
        double low = -SteepestBend;
        double high = SteepestBend;
        while (high - low > 1e-6)
        {
            double bend = 0.5 * (low + high);
            (low, high) = Mean(bend, highestShare, clearestShare, below) < meanShare ? (bend, high) : (low, bend);
        }

        double[] shares = new double[days];
        double sum = 0;
        int bin = 0;
        for (int day = 0; day < days; day++)
        {
            double under = (day + 0.5) / days * below[Bins];
            while (below[bin + 1] < under)
            {
                bin++;
            }

            double along = bin + ((under - below[bin]) / (below[bin + 1] - below[bin]));
            shares[day] = Math.Min(clearestShare, highestShare * along / Bins);
            sum += shares[day];
        }

        double scale = meanShare * days / sum;
        for (int day = 0; day < days; day++)
        {
            shares[day] *= scale;
        }

        return shares;
    }

    /// <summary>Mean clearness for a bend γ, and the distribution, not brought to 1.</summary>
    private static double Mean(double bend, double highestShare, double clearestShare, double[] below)
    {
        double growth = Exponential.Of(bend / Bins);
        double factor = Exponential.Of(-Math.Max(0, bend));
        double sum = 0;
        double weighted = 0;
        for (int bin = 0; bin < Bins; bin++)
        {
            double x = (bin + 0.5) / Bins;
            double density = x * (1 - x) * factor;
            factor *= growth;
            sum += density;
            weighted += density * Math.Min(clearestShare, highestShare * x);
            below[bin + 1] = sum;
        }

        return weighted / sum;
    }
}
