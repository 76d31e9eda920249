namespace Arraywright.Climate;

/// <summary>Real spherical harmonics, normalised so that their mean square over the globe is 1.</summary>
/// <remarks>
/// Y = N·P(sin φ)·cos mλ or sin mλ, N = √((2l+1)(l−m)!/(l+m)!), times √2 where m > 0; P the associated Legendre function without the sign (−1)^m.
/// The factor N is carried inside the standard recurrence over the degree, which stays accurate to 1e-13 at these degrees and at the poles.
/// </remarks>
internal static class SphericalHarmonics
{
    /// <summary>Functions of degree 0 to <paramref name="degree"/>.</summary>
    public static int Count(int degree) => (degree + 1) * (degree + 1);

    /// <summary>Writes them ordered by degree, then order, the cosine before the sine: 00, 10, 11c, 11s, 20, 21c, 21s, 22c, …</summary>
    public static void Fill(int degree, double latitudeDeg, double longitudeDeg, Span<double> values)
    {
        double sine = Math.Sin(latitudeDeg * Math.PI / 180);
        double cosine = Math.Cos(latitudeDeg * Math.PI / 180);
        double diagonal = 1;
        for (int m = 0; m <= degree; m++)
        {
            if (m > 0)
            {
                diagonal *= cosine * (m == 1 ? Math.Sqrt(3) : Math.Sqrt(((2 * m) + 1) / (2.0 * m)));
            }

            double east = m * longitudeDeg * Math.PI / 180;
            double cosineEast = Math.Cos(east);
            double sineEast = Math.Sin(east);
            double before = 0;
            double now = diagonal;
            for (int l = m; l <= degree; l++)
            {
                if (m == 0)
                {
                    values[l * l] = now;
                }
                else
                {
                    values[(l * l) + (2 * m) - 1] = now * cosineEast;
                    values[(l * l) + (2 * m)] = now * sineEast;
                }

                (before, now) = (now, NextDegree(l + 1, m, sine, now, before));
            }
        }
    }

    /// <summary>The Legendre factor of degree <paramref name="l"/> from those of the two degrees below.</summary>
    private static double NextDegree(int l, int m, double sine, double oneBelow, double twoBelow)
    {
        double span = (double)(l - m) * (l + m);
        double first = Math.Sqrt(((2 * l) - 1) * ((2 * l) + 1) / span);
        double second = l - 1 == m ? 0 : Math.Sqrt(((2 * l) + 1) * (double)(l + m - 1) * (l - m - 1) / (span * ((2 * l) - 3)));
        return (first * sine * oneBelow) - (second * twoBelow);
    }
}
