using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Limits.Rules;
using Arraywright.Sky;

namespace Arraywright.Energy;

/// <summary>The open-circuit voltage that the circuit model sees through a plan's weather: step by step, clean unshaded panels, each kind in its own plane.</summary>
/// <remarks>Shown beside the rule's figure, never instead of it: a typical year holds no record, and a step's mean hides its brightest minute.</remarks>
internal sealed class WeatherVolts
{
    private const double AlbedoFraction = 0.2;

    private readonly Plan _plan;

    /// <summary>Only steps that no other one beats in every kind of panel: the highest sum of any string is in one of them.</summary>
    private readonly List<Step> _highest = [];

    public WeatherVolts(PlanPhysics physics, WeatherYear weather)
    {
        _plan = physics.Plan;
        SunPath path = new(weather.Place.Site);
        foreach (WeatherStep step in weather.Steps)
        {
            if (step.GlobalWPerM2 > 0)
            {
                SunPosition sun = path.At(SunClock.JulianDay(weather.Middle(step)) - (weather.UtcOffsetH / 24));
                Add(Seen(physics, step, sun));
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
            double voltageV = wiring.HighestV(name => step.VoltsV[Index(name)]);
            if (highest is null || voltageV > highest.VoltageV)
            {
                highest = new WeatherVoltage(voltageV, step.Ends, step.Conditions[Index(wiring.Panels.First())]);
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

    private Step Seen(PlanPhysics physics, in WeatherStep step, in SunPosition sun)
    {
        SkyLight light = new(step.GlobalWPerM2, step.BeamNormalWPerM2, step.DiffuseWPerM2, sun.ExtraterrestrialWPerM2);
        double[] voltsV = new double[_plan.Panels.Length];
        Conditions[] conditions = new Conditions[voltsV.Length];
        for (int i = 0; i < voltsV.Length; i++)
        {
            PanelStock stock = _plan.Panels[i];
            Mount mount = stock.Mount ?? _plan.Mount;
            double incidenceDeg = TiltedPlane.IncidenceDeg(sun, mount.TiltDeg, mount.AzimuthDeg);
            double planeWPerM2 = TiltedPlane.Of(sun, light, mount.TiltDeg, incidenceDeg, AlbedoFraction, SkyModel.Perez).TotalWPerM2;
            conditions[i] = new Ambient(Math.Min(planeWPerM2, PlaneView.MostWPerM2), step.AirC, step.WindMPerS).On(stock, _plan.Mount);
            voltsV[i] = physics.OpenCircuitV(stock.Panel.Name, conditions[i]);
            ColdestCellC = Math.Min(ColdestCellC ?? double.PositiveInfinity, conditions[i].CellC);
        }

        return new Step(step.Ends, voltsV, conditions);
    }

    private void Add(Step step)
    {
        if (!_highest.Exists(other => Beats(other, step)))
        {
            _highest.RemoveAll(other => Beats(step, other));
            _highest.Add(step);
        }
    }

    private static bool Beats(Step one, Step other)
    {
        for (int i = 0; i < one.VoltsV.Length; i++)
        {
            if (one.VoltsV[i] < other.VoltsV[i])
            {
                return false;
            }
        }

        return true;
    }

    private sealed record Step(DateTime Ends, double[] VoltsV, Conditions[] Conditions);
}
