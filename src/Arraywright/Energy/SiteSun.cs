using System.Collections.Immutable;
using Arraywright.Climate;

namespace Arraywright.Energy;

/// <summary>The weather of a plan's place and what it makes of the sun on its panels: each made when first asked for, and kept.</summary>
/// <remarks>Nothing of it depends on the figures of a label but the NOCT: plans that differ in others alone share it.</remarks>
internal sealed class SiteSun
{
    /// <summary>Moments where all panels see the same sun; see <see cref="DistilledMoments"/>.</summary>
    private const int MomentsOfOneSun = 24;

    /// <summary>Moments where they do not.</summary>
    private const int MomentsOfSeveralSuns = 40;

    private readonly Plan _plan;
    private readonly Lazy<WeatherYear?> _year;
    private readonly Lazy<HighestSteps?> _highest;
    private readonly Lazy<SunSeries?> _series;
    private readonly Lazy<ImmutableArray<Moment>> _moments;

    public SiteSun(Plan plan)
    {
        _plan = plan;
        _year = new(() => plan.WeatherYear ?? SyntheticYear.For(plan));
        _highest = new(() => Year is { } year ? new HighestSteps(plan, year) : null);
        _series = new(() => Year is { } year ? SunOnPanels.Of(plan, year, SunOptions.Of(plan)) : null);
        _moments = new(() => Series is { } series ? MomentsOf(plan, series) : []);
    }

    /// <summary>The weather of the plan's file, or else the year made from the built-in climate; null where neither is known.</summary>
    public WeatherYear? Year => _year.Value;

    /// <summary>The steps of the year in which the highest voltage is; null where there is no year.</summary>
    public HighestSteps? Highest => _highest.Value;

    /// <summary>The sun on every kind of panel, step by step; null where there is no year.</summary>
    public SunSeries? Series => _series.Value;

    /// <summary>The year distilled into moments to search by; empty where there is no year, or no sun in it.</summary>
    public ImmutableArray<Moment> Moments => _moments.Value;

    /// <summary>The sun of a plan distilled into moments.</summary>
    public static ImmutableArray<Moment> MomentsOf(Plan plan, SunSeries series)
    {
        bool oneSun = plan.Panels.All(stock => stock.Mount is null && stock.Shade.Hours.IsEmpty);
        return DistilledMoments.Of(series, oneSun ? MomentsOfOneSun : MomentsOfSeveralSuns, EnergyOptions.Default.SpreadWithinStep);
    }

    /// <summary>Whether another plan has the same sun; no where that cannot be told cheaply.</summary>
    public bool IsOf(Plan plan) =>
        ReferenceEquals(plan.WeatherYear, _plan.WeatherYear) && plan.Place == _plan.Place && plan.Mount == _plan.Mount && plan.Sky == _plan.Sky
        && plan.Panels.Length == _plan.Panels.Length
        && plan.Panels.Zip(_plan.Panels, (one, other) => one.Mount == other.Mount && one.Panel.NoctC == other.Panel.NoctC && one.Shade.Hours.SequenceEqual(other.Shade.Hours)).All(same => same);
}

/// <summary>The sun of the places last asked about, for a caller that asks about one place again and again. Safe for several threads; changes no figure.</summary>
public sealed class SunMemory
{
    private readonly Lock _lock = new();
    private readonly LinkedList<SiteSun> _latest = [];
    private readonly int _most;

    /// <summary>A memory.</summary>
    /// <param name="most">Places with their panels that it keeps, at least 1; each holds about 0.4 MB a kind of panel and 0.6 MB of weather.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1.</exception>
    public SunMemory(int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        _most = most;
    }

    /// <summary>The sun of a plan, kept from an earlier one where that had the same.</summary>
    internal SiteSun Of(Plan plan)
    {
        lock (_lock)
        {
            SiteSun? known = _latest.FirstOrDefault(site => site.IsOf(plan));
            if (known is not null)
            {
                _latest.Remove(known);
            }
            else if (_latest.Count == _most)
            {
                _latest.RemoveLast();
            }

            return _latest.AddFirst(known ?? new SiteSun(plan)).Value;
        }
    }
}
