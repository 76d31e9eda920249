using Arraywright.Gear;

namespace Arraywright.Energy;

/// <summary>A unit with its inputs, or an input that stands alone: what shares a power limit, a battery and a load.</summary>
internal sealed class Owner
{
    private readonly Battery? _battery;
    private int _day = -1;
    private bool _isMet = true;
    private double _stepsH;

    private Owner(int[] inputs, double maxW, Battery? battery)
    {
        Inputs = inputs;
        MaxW = maxW;
        _battery = battery;
        State = battery is null ? null : new BatteryState(battery);
        LowestStateOfCharge = State?.StateOfCharge ?? 1;
    }

    /// <summary>Indices of its inputs in the plan.</summary>
    public int[] Inputs { get; }

    /// <summary>What its inputs take together at most, W.</summary>
    public double MaxW { get; }

    /// <summary>Its battery; null when the plan states none: then all that comes is used.</summary>
    public BatteryState? State { get; }

    /// <summary>Power after conversion in the present step, W.</summary>
    public double OfferedW { get; set; }

    private double LowestStateOfCharge { get; set; }

    private double? HoursToFull { get; set; }

    private int DaysMet { get; set; }

    private int Days { get; set; }

    public static Owner[] Of(Plan plan)
    {
        int[] InputsOf(string? unit) => [.. Enumerable.Range(0, plan.Inputs.Length).Where(i => plan.Inputs[i].Input.Unit == unit)];
        return
        [
            .. plan.Units.Select(unit => new Owner(InputsOf(unit.Name), unit.MaxPower?.Figure ?? double.PositiveInfinity, unit.Battery)),
            .. InputsOf(null).Select(input => new Owner([input], double.PositiveInfinity, plan.Inputs[input].Input.Battery)),
        ];
    }

    /// <summary>Puts the offer of a step to use. Returns watts that found room, watts of load asked for and served.</summary>
    public (double RoomW, double LoadW, double ServedW) Step(int step, SunSeries series, int hour)
    {
        if (State is null || _battery is null)
        {
            return (OfferedW, 0, 0);
        }

        if (series.Day[step] != _day)
        {
            CloseDay();
            _day = series.Day[step];
        }

        double loadW = _battery.LoadAtW(hour);
        (double roomW, double servedW) = State.Step(OfferedW, loadW, series.StepH);
        _isMet &= servedW >= loadW * (1 - 1e-9);
        _stepsH += series.StepH;
        HoursToFull ??= State.IsFull ? _stepsH : null;
        LowestStateOfCharge = Math.Min(LowestStateOfCharge, State.StateOfCharge);
        return (roomW, loadW, servedW);
    }

    public static BatteryReport? Report(Owner[] owners, EnergySpan total)
    {
        Owner[] withBattery = [.. owners.Where(owner => owner.State is not null)];
        if (withBattery.Length == 0)
        {
            return null;
        }

        foreach (Owner owner in withBattery)
        {
            owner.CloseDay();
        }

        return new BatteryReport(
            total.LevelsKWh[(int)Stage.Conversion] - total.LevelsKWh[(int)Stage.BatteryFull],
            total.LoadKWh,
            total.ServedKWh,
            withBattery.Min(owner => owner.DaysMet),
            withBattery.Max(owner => owner.Days),
            withBattery.Min(owner => owner.HoursToFull),
            withBattery.Min(owner => owner.LowestStateOfCharge));
    }

    private void CloseDay()
    {
        if (_day >= 0)
        {
            Days++;
            DaysMet += _isMet ? 1 : 0;
        }

        _day = -1;
        _isMet = true;
    }
}
