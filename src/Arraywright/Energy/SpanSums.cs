namespace Arraywright.Energy;

/// <summary>Sums over the steps of a span, in Wh.</summary>
internal sealed class SpanSums(int stages)
{
    private readonly double[] _levelsWh = new double[stages];
    private double _planeWhPerM2;
    private double _loadWh;
    private double _servedWh;

    public void Add(ReadOnlySpan<double> levelsW, double planeWPerM2, double loadW, double servedW, double hours)
    {
        for (int stage = 0; stage < _levelsWh.Length; stage++)
        {
            _levelsWh[stage] += levelsW[stage] * hours;
        }

        _planeWhPerM2 += planeWPerM2 * hours;
        _loadWh += loadW * hours;
        _servedWh += servedW * hours;
    }

    public void Add(SpanSums other)
    {
        for (int stage = 0; stage < _levelsWh.Length; stage++)
        {
            _levelsWh[stage] += other._levelsWh[stage];
        }

        _planeWhPerM2 += other._planeWhPerM2;
        _loadWh += other._loadWh;
        _servedWh += other._servedWh;
    }

    public EnergySpan Named(string name) => new()
    {
        Name = name,
        LevelsKWh = [.. _levelsWh.Select(wh => wh / 1000)],
        PlaneKWhPerM2 = _planeWhPerM2 / 1000,
        LoadKWh = _loadWh / 1000,
        ServedKWh = _servedWh / 1000,
    };
}
