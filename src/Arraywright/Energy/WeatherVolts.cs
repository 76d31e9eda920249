using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Limits.Rules;
using Arraywright.Sky;

namespace Arraywright.Energy;

/// <summary>The open-circuit voltage that the circuit model sees through a plan's weather: step by step, clean unshaded panels, each kind in its own plane.</summary>
/// <remarks>Shown beside the rule's figure, never instead of it: a typical year holds no record, and a step's mean hides its brightest minute.</remarks>
internal sealed class WeatherVolts
{
    private readonly Plan _plan;
    private readonly WeatherYear _weather;

    /// <summary>Only steps than which no other is both brighter and colder for every kind of panel: the highest sum of any string is in one of them.</summary>
    private readonly List<Step> _highest = [];

    private readonly Func<string, Conditions, double> _openCircuitV;

    public WeatherVolts(PlanPhysics physics, WeatherYear weather)
    {
        (_plan, _weather, _openCircuitV) = (physics.Plan, weather, physics.OpenCircuitV);
        Mount[] mounts = [.. _plan.Panels.Select(stock => stock.Mount ?? _plan.Mount)];
        SunOptions clean = SunOptions.Of(_plan) with { SoilingFraction = 0, Horizon = HorizonProfile.Free };
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
                    seen[i] = new Ambient(planeWPerM2, step.AirC, step.WindMPerS).On(_plan.Panels[i], _plan.Mount);
                    ColdestCellC = Math.Min(ColdestCellC ?? double.PositiveInfinity, seen[i].CellC);
                }

                Add(new Step(step.Ends, seen));
            }
        }
    }

    /// <summary>Coldest cell of any kind in any light, °C; null where there is no light.</summary>
    public double? ColdestCellC { get; private set; }

    /// <summary>The highest voltage of a wiring's strings, each alone; null where there is no light.</summary>
    public WeatherVoltage? Of(Wiring wiring)
    {
        WeatherVoltage? highest = null;
        foreach (Step step in _highest)
        {
            double voltageV = wiring.HighestV(name => _openCircuitV(name, step.Seen[Index(name)]));
            if (highest is null || voltageV > highest.VoltageV)
            {
                highest = new WeatherVoltage(voltageV, step.Ends, step.Seen[Index(wiring.Panels.First())], _weather.Source, _plan.WeatherYear is not null);
            }
        }

        return highest;
    }

    private int Index(string panel)
    {
        int index = 0;
        while (_plan.Panels[index].Panel.Name != panel)
        {
            index++;
        }

        return index;
    }

    private void Add(Step step)
    {
        if (!_highest.Exists(other => Beats(other, step)))
        {
            _highest.RemoveAll(other => Beats(step, other));
            _highest.Add(step);
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

    private sealed record Step(DateTime Ends, Conditions[] Seen);
}
