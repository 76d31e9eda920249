namespace Arraywright.Electrical;

/// <summary>Finds where a function crosses zero between two ends of opposite sign.</summary>
/// <remarks>
/// T. R. Chandrupatla, "A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function without using
/// derivatives", Advances in Engineering Software 28 (1997) 145. The bracket never opens, so it cannot run away.
/// </remarks>
internal static class RootSearch
{
    /// <summary>More than bisection alone needs to close any bracket of doubles of one sign.</summary>
    private const int MostSteps = 200;

    /// <summary>The crossing, to about two units in the last place.</summary>
    /// <param name="f">Continuous; its sign at <paramref name="lo"/> differs from that at <paramref name="hi"/>, or is 0 at one of them.</param>
    /// <param name="lo">One end.</param>
    /// <param name="hi">The other end.</param>
    public static double Between(Func<double, double> f, double lo, double hi)
    {
        // a: newest end; b: the end across the root from it; c: the end before a.
        double a = hi, b = lo;
        double fa = f(a), fb = f(b);
        if (fa == 0 || fb == 0)
        {
            return fa == 0 ? a : b;
        }

        double share = 0.5;
        for (int step = 0; step < MostSteps; step++)
        {
            double x = a + (share * (b - a));
            double fx = f(x);
            double c = a, fc = fa;
            if (fx > 0 != fa > 0)
            {
                (c, b, fc, fb) = (b, a, fb, fa);
            }

            (a, fa) = (x, fx);
            double best = Math.Abs(fa) < Math.Abs(fb) ? a : b;
            double closest = ((4e-16 * Math.Abs(best)) + 1e-300) / Math.Abs(b - a);
            if (fa == 0 || !(closest < 0.5))
            {
                return best;
            }

            share = Math.Clamp(Share(a, b, c, fa, fb, fc), closest, 1 - closest);
        }

        return Math.Abs(fa) < Math.Abs(fb) ? a : b;
    }

    /// <summary>How far from a towards b to try next: by the inverse parabola where it can be trusted, else half.</summary>
    private static double Share(double a, double b, double c, double fa, double fb, double fc)
    {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        if (phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)
        {
            return (fa / (fb - fa) * (fc / (fb - fc))) + ((c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)));
        }

        return 0.5;
    }
}
