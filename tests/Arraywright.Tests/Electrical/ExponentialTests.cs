using System.Numerics;
using Arraywright.Electrical;
using CsCheck;

namespace Arraywright.Tests.Electrical;

public sealed class ExponentialTests
{
    private const int Bits = 320;

    private static readonly Gen<double> Arguments = Gen.OneOf(Gen.Double[-700, 700], Gen.Double[-40, 40], Gen.Double[-1, 1], Gen.Double[-1e-9, 1e-9]);

    [Fact]
    public void Error_against_whole_number_arithmetic_is_under_two_units_in_the_last_place() =>
        Arguments.Sample(x => Assert.InRange(RelativeError(x), -4e-16, 4e-16), iter: 4000);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, Math.E)]
    [InlineData(-1, 0.36787944117144233)]
    [InlineData(10, 22026.465794806718)]
    public void Known_values(double x, double value) => Assert.Equal(1, Exponential.Of(x) / value, 3e-16);

    [Fact]
    public void A_larger_argument_never_gives_a_smaller_result() =>
        Arguments.Sample(
            x =>
            {
                // Two arguments further apart than the error of either result.
                double next = x + (1e-15 * Math.Max(1, Math.Abs(x)));
                return Exponential.Of(next) >= Exponential.Of(x);
            },
            iter: 100_000);

    [Theory]
    [InlineData(700.1)]
    [InlineData(1e300)]
    [InlineData(double.PositiveInfinity)]
    public void Beyond_the_clamps_the_result_stands_still(double x)
    {
        Assert.Equal(Exponential.Of(700), Exponential.Of(x));
        Assert.Equal(Exponential.Of(-700), Exponential.Of(-x));
        Assert.InRange(Exponential.Of(700), 1.01e304, 1.02e304);
        Assert.InRange(Exponential.Of(-700), 9.8e-305, 9.9e-305);
    }

    [Fact]
    public void Two_at_once_give_the_same_bits_as_one_by_one() =>
        Gen.Select(Arguments, Arguments).Sample((a, b) =>
            Exponential.Of(new Vector<double>([a, b, a, b, a, b, a, b])) == new Vector<double>([Exponential.Of(a), Exponential.Of(b), Exponential.Of(a), Exponential.Of(b), Exponential.Of(a), Exponential.Of(b), Exponential.Of(a), Exponential.Of(b)]));

    /// <summary>(result − e^x)/e^x, with e^x from its series in whole numbers of 2⁻³²⁰: |x|/2²⁰, then squared twenty times.</summary>
    private static double RelativeError(double x)
    {
        BigInteger one = BigInteger.One << Bits;
        BigInteger r = Fixed(Math.Abs(x)) >> 20;
        BigInteger sum = one, term = one;
        for (int n = 1; !term.IsZero; n++)
        {
            term = (term * r >> Bits) / n;
            sum += term;
        }

        for (int i = 0; i < 20; i++)
        {
            sum = sum * sum >> Bits;
        }

        // For x under 0 compare result·e^|x| with 1, else result with e^x.
        if (x < 0)
        {
            (int shift, BigInteger mantissa) = Split(Exponential.Of(x));
            return Ratio(((mantissa * sum) >> -shift) - one, one);
        }

        return Ratio(Fixed(Exponential.Of(x)) - sum, sum);
    }

    private static double Ratio(BigInteger part, BigInteger whole) => Math.ScaleB((double)((part << 100) / whole), -100);

    private static BigInteger Fixed(double value)
    {
        (int shift, BigInteger mantissa) = Split(value);
        return shift + Bits >= 0 ? mantissa << (shift + Bits) : mantissa >> -(shift + Bits);
    }

    private static (int Shift, BigInteger Mantissa) Split(double value)
    {
        if (value == 0)
        {
            return (0, BigInteger.Zero);
        }

        int shift = Math.ILogB(value) - 52;
        return (shift, (BigInteger)Math.ScaleB(value, -shift));
    }
}
