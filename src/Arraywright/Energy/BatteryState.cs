using Arraywright.Gear;

namespace Arraywright.Energy;

/// <summary>A battery through time: what it takes, what it gives, what it turns away.</summary>
/// <remarks>
/// Charging follows constant current, then constant voltage: full power up to a state of charge that depends on the chemistry, from there falling
/// in a straight line to a twentieth of the capacity an hour at full (common practice; reading of data sheets, no single source).
/// </remarks>
internal sealed class BatteryState(Battery battery)
{
    /// <summary>Charge power assumed where none is stated, as a share of the capacity an hour.</summary>
    public const double UsualChargePerHour = 0.5;

    private const double LastChargePerHour = 0.05;

    private readonly double _taperFrom = battery.Chemistry switch
    {
        BatteryChemistry.Nickel or BatteryChemistry.Lead => 0.80,
        _ => 0.95,
    };

    /// <summary>Energy in the battery, Wh.</summary>
    public double StoredWh { get; private set; } = battery.CapacityWh * battery.FromFraction;

    /// <summary>State of charge, 0 to 1.</summary>
    public double StateOfCharge => StoredWh / battery.CapacityWh;

    /// <summary>Whether it has reached the state at which charging stops.</summary>
    public bool IsFull => StoredWh >= battery.CapacityWh * battery.ToFraction * (1 - 1e-9);

    /// <summary>One step: the load is served first from what comes in, then from the battery.</summary>
    /// <param name="incomingW">Power offered, after conversion, W.</param>
    /// <param name="loadW">Power asked for, W.</param>
    /// <param name="hours">Length of the step, h.</param>
    /// <returns>Watts of the offer that found room, and watts of the load that were served.</returns>
    public (double RoomW, double ServedW) Step(double incomingW, double loadW, double hours)
    {
        double straightW = Math.Min(incomingW, loadW);
        double chargeW = Math.Min(incomingW - straightW, AcceptedW(hours));
        double availableW = Math.Max(0, StoredWh - (battery.ReserveFraction * battery.CapacityWh)) / hours;
        double drawnW = Math.Min(loadW - straightW, availableW);
        StoredWh += (chargeW - drawnW) * hours;
        return (straightW + chargeW, straightW + drawnW);
    }

    private double AcceptedW(double hours)
    {
        double roomWh = (battery.CapacityWh * battery.ToFraction) - StoredWh;
        if (roomWh <= 0)
        {
            return 0;
        }

        double bulkW = battery.MaxChargeW ?? (UsualChargePerHour * battery.CapacityWh);
        double lastW = Math.Min(bulkW, LastChargePerHour * battery.CapacityWh);
        double along = Math.Clamp((StateOfCharge - _taperFrom) / (1 - _taperFrom), 0, 1);
        return Math.Min(bulkW + ((lastW - bulkW) * along), roomWh / hours);
    }
}
