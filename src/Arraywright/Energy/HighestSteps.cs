using Arraywright.Climate;
using Arraywright.Sky;

namespace Arraywright.Energy;

/// <summary>The steps of a year than which no other is both brighter and colder for every kind of panel: the highest open-circuit voltage of any string is in one of them.</summary>
internal sealed class HighestSteps
{
    private readonly List<Step> _steps = [];

    public HighestSteps(Plan plan, WeatherYear weather)
    {
        Source = weather.Source;
        Mount[] mounts = [.. plan.Panels.Select(stock => stock.Mount ?? plan.Mount)];
        SunOptions clean = SunOptions.Of(plan) with { SoilingFraction = 0, Horizon = HorizonProfile.Free };
        PlaneView[] planes = [.. mounts.Select(mount => new PlaneView(mount, clean))];
        SunPath path = new(weather.Place.Site);
        foreach (WeatherStep step in weather.Steps)
        {
            if (step.GlobalWPerM2 > 0)
            {
                DateTime middle = weather.Middle(step);
                SunPosition sun = path.At(SunClock.JulianDay(middle) - (weather.UtcOffsetH / 24));
                SkyLight light = new(step.GlobalWPerM2, step.BeamNormalWPerM2, step.DiffuseWPerM2, sun.ExtraterrestrialWPerM2);
                Conditions[] seen = new Conditions[mounts.Length];
                for (int i = 0; i < seen.Length; i++)
                {
                    double planeWPerM2 = i > 0 && mounts[i] == mounts[i - 1] ? seen[i - 1].IrradianceWPerM2 : planes[i].Of(sun, light, middle.Month).PlaneWPerM2;
                    seen[i] = new Ambient(planeWPerM2, step.AirC, step.WindMPerS).On(plan.Panels[i], plan.Mount);
                    ColdestCellC = Math.Min(ColdestCellC ?? double.PositiveInfinity, seen[i].CellC);
                }

                Add(new Step(step.Ends, seen));
            }
        }
    }

    /// <summary>In the order of the year.</summary>
    public IReadOnlyList<Step> Steps => _steps;

    /// <summary>Coldest cell of any kind in any light, °C; null where there is no light.</summary>
    public double? ColdestCellC { get; }

    /// <summary>Where the weather comes from.</summary>
    public string Source { get; }

    private void Add(Step step)
    {
        if (!_steps.Exists(other => Beats(other, step)))
        {
            _steps.RemoveAll(other => Beats(step, other));
            _steps.Add(step);
        }
    }

    /// <summary>Open-circuit voltage rises with light and falls with warmth.</summary>
    private static bool Beats(Step one, Step other)
    {
        for (int i = 0; i < one.Seen.Length; i++)
        {
            if (one.Seen[i].IrradianceWPerM2 < other.Seen[i].IrradianceWPerM2 || one.Seen[i].CellC > other.Seen[i].CellC)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A step.</summary>
    /// <param name="Ends">When it ends, by the weather's clock.</param>
    /// <param name="Seen">What each kind of panel sees, in plan order.</param>
    internal sealed record Step(DateTime Ends, Conditions[] Seen);
}
