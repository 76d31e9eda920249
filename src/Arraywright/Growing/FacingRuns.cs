using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;

namespace Arraywright.Growing;

/// <summary>What a wiring delivers day by day over some weather, facing this way or that; a facing seen before is not run again.</summary>
internal sealed class FacingRuns
{
    private readonly Plan _plan;
    private readonly PlanPhysics _physics;
    private readonly ImmutableArray<Wiring?> _wirings;
    private readonly WeatherYear _weather;
    private readonly EnergyOptions _options;
    private readonly CancellationToken _cancellation;
    private readonly Dictionary<(double TiltDeg, double AzimuthDeg), double[]> _seen = [];

    public FacingRuns(PlanPhysics physics, ImmutableArray<Wiring?> wirings, WeatherYear weather, EnergyOptions options, CancellationToken cancellation)
    {
        (_plan, _physics, _wirings, _weather, _options, _cancellation) = (physics.Plan, physics, wirings, weather, options, cancellation);
        Dates = DatesOf(weather);
    }

    /// <summary>The date of each day of the weather.</summary>
    public ImmutableArray<DateOnly> Dates { get; }

    /// <summary>Over all days, kWh.</summary>
    public Facing Of(double tiltDeg, double azimuthDeg)
    {
        double sum = 0;
        foreach (double day in Days(tiltDeg, azimuthDeg))
        {
            sum += day;
        }

        return new Facing(tiltDeg, azimuthDeg, sum);
    }

    /// <summary>Each day, kWh. Flat panels face nowhere.</summary>
    public double[] Days(double tiltDeg, double azimuthDeg)
    {
        (double, double) key = tiltDeg == 0 ? (0, 0) : (tiltDeg, azimuthDeg);
        if (!_seen.TryGetValue(key, out double[]? days))
        {
            _cancellation.ThrowIfCancellationRequested();
            days = Run(tiltDeg, azimuthDeg);
            _seen.Add(key, days);
        }

        return days;
    }

    /// <summary>The same with only some days of the weather.</summary>
    public FacingRuns Only(Func<int, DateOnly, bool> keep)
    {
        var steps = ImmutableArray.CreateBuilder<WeatherStep>();
        int day = -1;
        DateOnly today = default;
        foreach (WeatherStep step in _weather.Steps)
        {
            DateOnly date = DateOnly.FromDateTime(_weather.Middle(step));
            day += day < 0 || date != today ? 1 : 0;
            today = date;
            if (keep(day, date))
            {
                steps.Add(step);
            }
        }

        return new FacingRuns(_physics, _wirings, _weather.With(steps.ToImmutable()), _options, _cancellation);
    }

    private double[] Run(double tiltDeg, double azimuthDeg)
    {
        SunSeries series = SunOnPanels.Of(_plan with { Mount = _plan.Mount with { TiltDeg = tiltDeg, AzimuthDeg = azimuthDeg } }, _weather, SunOptions.Of(_plan));
        series = series with { Span = series.Day, SpanNames = [.. Dates.Select(_ => "day")] };
        return [.. EnergyRun.Of(_physics, _wirings, series, _options).Spans.Select(day => day.DeliveredKWh)];
    }

    private static ImmutableArray<DateOnly> DatesOf(WeatherYear weather)
    {
        var dates = ImmutableArray.CreateBuilder<DateOnly>();
        foreach (WeatherStep step in weather.Steps)
        {
            DateOnly date = DateOnly.FromDateTime(weather.Middle(step));
            if (dates.Count == 0 || dates[^1] != date)
            {
                dates.Add(date);
            }
        }

        return dates.ToImmutable();
    }
}
