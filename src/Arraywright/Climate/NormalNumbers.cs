namespace Arraywright.Climate;

/// <summary>Standard normal numbers from a seed, after Box and Muller (1958).</summary>
internal sealed class NormalNumbers(int seed)
{
    private readonly Random _random = new(seed);
    private double? _second;

    public double Next()
    {
        if (_second is { } kept)
        {
            _second = null;
            return kept;
        }

        double radius = Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble()));
        (double sine, double cosine) = Math.SinCos(2 * Math.PI * _random.NextDouble());
        _second = radius * sine;
        return radius * cosine;
    }
}
