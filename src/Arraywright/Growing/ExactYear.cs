using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;

namespace Arraywright.Growing;

/// <summary>The year of any wiring of a plan's panels: models and sun are reckoned once, and a wiring seen before is not run again.</summary>
internal sealed class ExactYear
{
    private readonly PlanPhysics _physics;
    private readonly SunSeries _series;
    private readonly EnergyOptions _options;
    private readonly Dictionary<string, EnergyResult> _seen = new(StringComparer.Ordinal);

    /// <param name="plan">A plan with every kind that may be wired; how many of each does not count.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="options">How years are run.</param>
    public ExactYear(Plan plan, WeatherYear weather, EnergyOptions options)
    {
        _physics = new PlanPhysics(plan);
        _series = SunOnPanels.Of(plan, weather, SunOptions.Of(plan));
        _options = options;
        Sun = [.. _series.Stocks.Select(stock => KWhPerM2(stock.PlaneWPerM2) * _series.StepH)];
    }

    /// <summary>Sun in the plane of each kind of panel over the year, kWh/m².</summary>
    public ImmutableArray<double> Sun { get; }

    /// <summary>The year of a wiring for each input, null for nothing.</summary>
    public EnergyResult Of(ImmutableArray<Wiring?> wirings)
    {
        string key = string.Join('\n', wirings.Select(wiring => wiring is null ? "" : WiringText.Print(WiringText.Canonical(wiring))));
        if (!_seen.TryGetValue(key, out EnergyResult? year))
        {
            year = EnergyRun.Of(_physics, wirings, _series, _options);
            _seen.Add(key, year);
        }

        return year;
    }

    private static double KWhPerM2(double[] wPerM2)
    {
        double sum = 0;
        foreach (double step in wPerM2)
        {
            sum += step;
        }

        return sum / 1000;
    }
}
