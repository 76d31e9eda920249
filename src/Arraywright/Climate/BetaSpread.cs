using System.Numerics;
using Arraywright.Electrical;

namespace Arraywright.Climate;

/// <summary>The beta distribution of a mean and a spread between 0 and 1, ready to be read at any share of its cases.</summary>
/// <remarks>In the angle θ with x = sin²θ its density is sin^(2a−1) θ · cos^(2b−1) θ, smooth to both ends for a and b from ½ on: summed over equal steps of θ.</remarks>
internal sealed class BetaSpread
{
    private const int Bins = 32;

    private readonly double[] _ends = new double[Bins + 1];
    private readonly double[] _logSines = new double[Bins];
    private readonly double[] _logCosines = new double[Bins];
    private readonly double[] _density = new double[Bins];
    private readonly double[] _below = new double[Bins + 1];

    public BetaSpread()
    {
        for (int bin = 0; bin < Bins; bin++)
        {
            double end = Math.Sin(Math.PI / 2 * (bin + 1) / Bins);
            (double sine, double cosine) = Math.SinCos(Math.PI / 2 * (bin + 0.5) / Bins);
            (_ends[bin + 1], _logSines[bin], _logCosines[bin]) = (end * end, Math.Log(sine * sine), Math.Log(cosine * cosine));
        }
    }

    /// <summary>Sets the distribution.</summary>
    /// <param name="mean">Its mean, 0.01 to 0.99.</param>
    /// <param name="deviation">Its standard deviation; a wider one than makes the cases crowd at one end, or at none, is narrowed: they never crowd at both.</param>
    public void Set(double mean, double deviation)
    {
        double size = Math.Max((mean * (1 - mean) / (deviation * deviation)) - 1, 0.5 / Math.Min(mean, 1 - mean));
        Vector<double> a = new((mean * size) - 0.5);
        Vector<double> b = new(((1 - mean) * size) - 0.5);
        for (int bin = 0; bin < Bins; bin += Vector<double>.Count)
        {
            Exponential.Of((a * new Vector<double>(_logSines, bin)) + (b * new Vector<double>(_logCosines, bin))).CopyTo(_density, bin);
        }

        for (int bin = 0; bin < Bins; bin++)
        {
            _below[bin + 1] = _below[bin] + _density[bin];
        }
    }

    /// <summary>The value that a share of all cases stays below.</summary>
    /// <param name="belowShare">Above 0 and below 1.</param>
    public double At(double belowShare)
    {
        double below = belowShare * _below[Bins];
        int found = Array.BinarySearch(_below, below);
        int bin = Math.Clamp((found < 0 ? ~found : found) - 1, 0, Bins - 1);
        double along = (below - _below[bin]) / (_below[bin + 1] - _below[bin]);
        return _ends[bin] + (along * (_ends[bin + 1] - _ends[bin]));
    }
}
