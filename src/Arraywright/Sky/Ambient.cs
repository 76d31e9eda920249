using System.Collections.Immutable;

namespace Arraywright.Sky;

/// <summary>What surrounds the panels at one moment.</summary>
/// <param name="IrradianceWPerM2">Irradiance in the plane of the panels before any shade, W/m².</param>
/// <param name="AirC">Air temperature, °C; not the cells'.</param>
/// <param name="WindMPerS">Wind, m/s.</param>
public readonly record struct Ambient(double IrradianceWPerM2, double AirC, double WindMPerS)
{
    /// <summary>What panels of one kind see, in their own mount or the plan's, with the NOCT of their label where it gives one.</summary>
    public Conditions On(PanelStock stock, Mount planMount) => new(
        IrradianceWPerM2,
        CellTemperature.At(AirC, IrradianceWPerM2, WindMPerS, (stock.Mount ?? planMount).Kind, stock.Panel.NoctC));

    /// <summary>What each kind of panel sees, in plan order.</summary>
    public ImmutableArray<Conditions> ByStock(Plan plan)
    {
        var all = ImmutableArray.CreateBuilder<Conditions>(plan.Panels.Length);
        foreach (PanelStock stock in plan.Panels)
        {
            all.Add(On(stock, plan.Mount));
        }

        return all.MoveToImmutable();
    }
}
