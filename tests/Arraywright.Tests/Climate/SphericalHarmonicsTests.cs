using System.Numerics;
using Arraywright.Climate;

namespace Arraywright.Tests.Climate;

public class SphericalHarmonicsTests
{
    private const int Degree = 16;

    /// <summary>Two routes: the recurrence against the textbook's explicit sum over powers of sin φ (in exact integers up to the last division).</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(37.5, 12.25)]
    [InlineData(-59.9, -179.5)]
    [InlineData(83.9, 101)]
    public void The_recurrence_gives_what_the_explicit_sum_gives(double latitudeDeg, double longitudeDeg)
    {
        double[] values = new double[SphericalHarmonics.Count(Degree)];
        SphericalHarmonics.Fill(Degree, latitudeDeg, longitudeDeg, values);

        int next = 0;
        for (int l = 0; l <= Degree; l++)
        {
            for (int m = 0; m <= l; m++)
            {
                double legendre = Explicit(l, m, Math.Sin(latitudeDeg * Math.PI / 180));
                double east = m * longitudeDeg * Math.PI / 180;
                Assert.Equal(legendre * Math.Cos(east), values[next++], 1e-9);
                if (m > 0)
                {
                    Assert.Equal(legendre * Math.Sin(east), values[next++], 1e-9);
                }
            }
        }

        Assert.Equal(values.Length, next);
    }

    /// <summary>Addition theorem: at any place the squares of one degree l add to 2l + 1.</summary>
    [Theory]
    [InlineData(90, 0)]
    [InlineData(-90, 45)]
    [InlineData(12, -77)]
    public void Squares_of_one_degree_add_to_their_number(double latitudeDeg, double longitudeDeg)
    {
        double[] values = new double[SphericalHarmonics.Count(Degree)];
        SphericalHarmonics.Fill(Degree, latitudeDeg, longitudeDeg, values);

        for (int l = 0; l <= Degree; l++)
        {
            double sum = values[(l * l)..((l + 1) * (l + 1))].Sum(value => value * value);
            Assert.Equal((2 * l) + 1, sum, 1e-10);
        }
    }

    private static double Explicit(int l, int m, double x)
    {
        double sum = 0;
        for (int k = 0; 2 * k <= l - m; k++)
        {
            var divisor = BigInteger.Pow(2, l) * Factorial(k) * Factorial(l - k) * Factorial(l - (2 * k) - m);
            sum += (k % 2 == 0 ? 1 : -1) * (double)Factorial((2 * l) - (2 * k)) / (double)divisor * Math.Pow(x, l - (2 * k) - m);
        }

        double norm = Math.Sqrt(((2 * l) + 1) * (double)Factorial(l - m) / (double)Factorial(l + m)) * (m == 0 ? 1 : Math.Sqrt(2));
        return norm * sum * Math.Pow(1 - (x * x), m / 2.0);
    }

    private static BigInteger Factorial(int n) => n < 2 ? 1 : n * Factorial(n - 1);
}
