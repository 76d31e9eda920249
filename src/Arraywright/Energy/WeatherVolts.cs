using Arraywright.Electrical;
using Arraywright.Limits.Rules;

namespace Arraywright.Energy;

/// <summary>The open-circuit voltage that the circuit model sees through a plan's weather: step by step, clean unshaded panels, each kind in its own plane.</summary>
/// <remarks>Shown beside the rule's figure, never instead of it: a typical year holds no record, and a step's mean hides its brightest minute.</remarks>
internal sealed class WeatherVolts(PlanPhysics physics, HighestSteps highest)
{
    private readonly Plan _plan = physics.Plan;

    /// <summary>Open-circuit voltage of one panel of each kind in each of the steps, V.</summary>
    private readonly double[][] _openV =
        [.. highest.Steps.Select(step => physics.Plan.Panels.Select((stock, index) => physics.OpenCircuitV(stock.Panel.Name, step.Seen[index])).ToArray())];

    /// <summary>Coldest cell of any kind in any light, °C; null where there is no light.</summary>
    public double? ColdestCellC => highest.ColdestCellC;

    /// <summary>The highest voltage of a wiring's strings, each alone; null where there is no light.</summary>
    public WeatherVoltage? Of(Wiring wiring)
    {
        WeatherVoltage? found = null;
        foreach ((HighestSteps.Step step, double[] openV) in highest.Steps.Zip(_openV))
        {
            double voltageV = wiring.HighestV(name => openV[Index(name)]);
            if (found is null || voltageV > found.VoltageV)
            {
                found = new WeatherVoltage(voltageV, step.Ends, step.Seen[Index(wiring.Panels.First())], highest.Source, _plan.WeatherYear is not null);
            }
        }

        return found;
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
}
