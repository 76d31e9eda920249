using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Gear;

namespace Arraywright.Planning;

/// <summary>What a year's run fills in, with what it moves.</summary>
internal static class YearAssumptions
{
    /// <summary>In a stable order.</summary>
    public static IEnumerable<Assumption> Of(Plan plan, WeatherYear weather, EnergyOptions options)
    {
        yield return new Assumption("dirt on the glass", "3 %", "A yearly mean where it rains now and then; dusty places lose more. The energy moves with it.");
        yield return new Assumption("ground beside the panels", "gives back 20 % of the light", "Grass and soil; fresh snow 60 to 90 %. At 40 degrees of tilt each 10 % more adds about 1 %.");
        yield return new Assumption("horizon", "free", "Hills and trees take the low sun: in winter much, over the year a little.");
        yield return new Assumption("clock", $"UTC{weather.UtcOffsetH:+0.##;-0.##;+0}", "Local standard time all year: loads and hourly shade are an hour off in summer where the clock is put forward.");
        foreach (PlannedInput planned in plan.Inputs)
        {
            if (planned.Input.EfficiencyFraction is null)
            {
                yield return new Assumption($"efficiency of {planned.Input.Name}", $"{EnergyOptions.UsualEfficiency * 100:0} %", "Usual for small units, 90 to 98 %. It moves what is stored, not what the input takes.");
            }
        }

        foreach ((string owner, Battery battery) in Batteries(plan))
        {
            if (battery.MaxChargeW is null)
            {
                yield return new Assumption($"charge power of {owner}", $"{battery.CapacityWh * BatteryState.UsualChargePerHour:0} W", "Half the capacity an hour, usual for portable batteries. It matters where the array gives more.");
            }

            if (battery.Chemistry is null)
            {
                yield return new Assumption($"chemistry of {owner}", "lithium iron phosphate", "Full power to 95 % of charge; other lithium and lead slow down from 80 %.");
            }
        }

        if (options.SpreadWithinStep)
        {
            yield return new Assumption("minutes within an hour", "clear or clouded, the hour's mean kept", "Shows what a limit cuts off bright minutes of a mixed hour; without it the clipped share comes out too small.");
        }

        foreach (string repair in weather.Repairs)
        {
            yield return new Assumption("weather file mended", repair, "A few hours of a year move it little.");
        }
    }

    private static IEnumerable<(string Owner, Battery Battery)> Batteries(Plan plan)
    {
        foreach (ChargingUnit unit in plan.Units)
        {
            if (unit.Battery is { } battery)
            {
                yield return (unit.Name, battery);
            }
        }

        foreach (PlannedInput planned in plan.Inputs)
        {
            if (planned.Input.Battery is { } battery)
            {
                yield return (planned.Input.Name, battery);
            }
        }
    }
}
