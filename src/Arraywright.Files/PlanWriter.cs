using Arraywright.Electrical;
using Arraywright.Files.Keys;
using Arraywright.Files.Plans;
using Arraywright.Files.Quantities;
using Arraywright.Files.Writing;
using Arraywright.Gear;

namespace Arraywright.Files;

/// <summary>Writes a plan as a plan file that reads back to an equal plan. What was filled in is left out, so that it is filled in openly again.</summary>
public static class PlanWriter
{
    /// <summary>The plan as YAML, one key a line, in the units of the library.</summary>
    public static string Write(Plan plan)
    {
        HashSet<string> assumed = [.. plan.Assumed.Select(static assumption => assumption.What)];
        YamlLines lines = new();
        lines.Add(RootKeys.Plan, YamlLines.Quote(plan.Name));
        lines.Add(RootKeys.Goal, assumed.Contains(Defaults.GoalName) ? null : RootKeys.Goal.Options[(int)plan.Goal]);
        lines.Add(RootKeys.Date, plan.Dates?.ToString());
        WritePlace(lines, plan.Place, assumed);
        WriteMount(lines, plan.Mount, assumed);
        lines.Add(RootKeys.Sky, plan.Sky is { } sky ? RootKeys.Sky.Options[(int)sky] : null);
        lines.AddList(RootKeys.Panels, plan.Panels, stock => PanelWriting.Write(lines, stock, plan.Currency, isOwned: true));
        lines.AddList(RootKeys.Candidates, plan.Candidates, stock => PanelWriting.Write(lines, stock, plan.Currency, isOwned: false));
        lines.AddList(RootKeys.Units, plan.Units, unit => WriteUnit(lines, unit, assumed));
        lines.AddList(RootKeys.Inputs, plan.Inputs, input => WriteInput(lines, input, assumed));
        WriteCable(lines, plan.Cable);
        lines.Add(RootKeys.Rules, plan.Rules is { } rules ? RootKeys.Rules.Options[(int)rules] : null);
        lines.AddList(RootKeys.Owned, plan.Owned, owned => PartsWriting.Write(lines, owned));
        lines.AddList(RootKeys.Prices, plan.PartPrices, price => PartsWriting.Write(lines, price, plan.Currency));
        return lines.ToString();
    }

    private static void WritePlace(YamlLines lines, Place? place, HashSet<string> assumed) => lines.AddGroup(RootKeys.Place, place is not null, () =>
    {
        lines.Add(PlaceKeys.Latitude, Decimals.Shifted(place!.LatitudeDeg, 0));
        lines.Add(PlaceKeys.Longitude, Decimals.Shifted(place.LongitudeDeg, 0));
        lines.Add(PlaceKeys.Elevation, assumed.Contains(Defaults.ElevationName) ? null : Figures.Of(place.ElevationM, PlaceKeys.Elevation));
        lines.Add(PlaceKeys.Coldest, Figures.Of(place.ColdestC, PlaceKeys.Coldest));
        lines.Add(PlaceKeys.Weather, place.Weather is null ? null : YamlLines.Quote(place.Weather));
        lines.Add(PlaceKeys.TimeZone, place.Zone is null ? null : YamlLines.Quote(place.Zone.Name));
        lines.AddList(PlaceKeys.Horizon, place.Horizon?.Points ?? [], point =>
        {
            lines.Add(HorizonKeys.Azimuth, Figures.Of(point.AzimuthDeg, HorizonKeys.Azimuth));
            lines.Add(HorizonKeys.Height, Figures.Of(point.ElevationDeg, HorizonKeys.Height));
        });
        string[] albedo = [.. place.AlbedoFractions.Select(static share => Figures.Of(share, QuantityKinds.Share))];
        lines.Add(PlaceKeys.Albedo, albedo.Length == 0 ? null : albedo.Length == 1 ? albedo[0] : $"[{string.Join(", ", albedo)}]");
    });

    private static void WriteMount(YamlLines lines, Mount mount, HashSet<string> assumed)
    {
        bool tilt = !assumed.Contains(Defaults.TiltName), azimuth = !assumed.Contains(Defaults.AzimuthName), kind = !assumed.Contains(Defaults.KindName);
        lines.AddGroup(RootKeys.Mount, tilt || azimuth || kind || mount.SoilingFraction is not null, () =>
        {
            lines.Add(MountKeys.Tilt, tilt ? Figures.Of(mount.TiltDeg, MountKeys.Tilt) : null);
            lines.Add(MountKeys.Azimuth, azimuth ? Figures.Of(mount.AzimuthDeg, MountKeys.Azimuth) : null);
            lines.Add(MountKeys.Kind, kind ? MountKeys.Kind.Options[(int)mount.Kind] : null);
            lines.Add(MountKeys.Soiling, Figures.Of(mount.SoilingFraction, MountKeys.Soiling));
        });
    }

    private static void WriteUnit(YamlLines lines, ChargingUnit unit, HashSet<string> assumed)
    {
        lines.Add(UnitKeys.Name, unit.Name);
        WriteLimit(lines, UnitKeys.MaxPower, unit.MaxPower);
        WriteBattery(lines, UnitKeys.Battery, unit.Battery, unit.Name, assumed);
    }

    private static void WriteInput(YamlLines lines, PlannedInput planned, HashSet<string> assumed)
    {
        DcInput input = planned.Input;
        lines.Add(InputKeys.Name, input.Name);
        lines.Add(InputKeys.Unit, input.Unit);
        lines.Add(InputKeys.MaxVoltage, Figures.Of(input.MaxVoltageV, InputKeys.MaxVoltage));
        lines.Add(InputKeys.StartVoltage, Figures.Of(input.StartVoltageV, InputKeys.StartVoltage));
        lines.Add(InputKeys.MppVoltage, input is { TrackingMinV: { } from, TrackingMaxV: { } to } ? $"{Decimals.Shifted(from, 0)}..{Decimals.Shifted(to, 0)} V" : null);
        WriteLimit(lines, InputKeys.MaxCurrent, input.MaxCurrent);
        WriteLimit(lines, InputKeys.MaxShortCircuitCurrent, input.MaxShortCircuitCurrent);
        WriteLimit(lines, InputKeys.RatedCurrent, input.RatedCurrent);
        WriteLimit(lines, InputKeys.MaxPower, input.MaxPower);
        lines.Add(InputKeys.Efficiency, Figures.Of(input.EfficiencyFraction, InputKeys.Efficiency));
        lines.Add(InputKeys.SelfUse, input.SelfUseW == 0 ? null : Figures.Of(input.SelfUseW, InputKeys.SelfUse));
        lines.Add(InputKeys.Connector, Figures.Of(input.ConnectorA, InputKeys.Connector));
        lines.Add(InputKeys.Socket, Figures.Of(input.SocketA, InputKeys.Socket));
        lines.Add(InputKeys.WattMeter, input.HasWattMeter ? InputKeys.WattMeter.Options[1] : null);
        lines.Add(InputKeys.Wiring, planned.StatedWiring is null ? null : $"\"{WiringText.Print(planned.StatedWiring)}\"");
        WriteBattery(lines, InputKeys.Battery, input.Battery, input.Name, assumed);
    }

    private static void WriteLimit(YamlLines lines, LimitKey key, Limit? limit)
    {
        if (limit is null || limit.Evidence == Evidence.Nothing)
        {
            lines.Add(key, limit is null ? null : Figures.Of(limit.Figure, key.Quantity));
            return;
        }

        lines.AddGroup(key, true, () =>
        {
            lines.Add(LimitKeys.Value, Figures.Of(limit.Figure, key.Quantity));
            lines.Add(LimitKeys.Evidence, LimitKeys.Evidence.Options[(int)limit.Evidence.Kind]);
            lines.Add(LimitKeys.Note, limit.Evidence.Note is null ? null : YamlLines.Quote(limit.Evidence.Note));
            lines.Add(LimitKeys.Exceed, limit.Evidence.ExceedFraction == 0 ? null : Figures.Of(limit.Evidence.ExceedFraction, LimitKeys.Exceed));
        });
    }

    private static void WriteBattery(YamlLines lines, SectionKey key, Battery? battery, string owner, HashSet<string> assumed) => lines.AddGroup(key, battery is not null, () =>
    {
        lines.Add(BatteryKeys.Capacity, Figures.Of(battery!.CapacityWh, BatteryKeys.Capacity));
        Add(BatteryKeys.From, battery.FromFraction);
        Add(BatteryKeys.To, battery.ToFraction);
        if (battery.LoadByHourW.IsEmpty)
        {
            lines.Add(BatteryKeys.Load, assumed.Contains(BatteryReader.AssumedName(owner, BatteryKeys.Load)) ? null : Figures.Of(battery.LoadW, LoadKey.Constant));
        }

        lines.AddList(BatteryKeys.Load, LoadWriting.Hours(battery), hours =>
        {
            lines.Add(LoadHoursKeys.From, ClockHour.Write(hours.From));
            lines.Add(LoadHoursKeys.To, ClockHour.Write(hours.To));
            lines.Add(LoadHoursKeys.Power, Figures.Of(hours.PowerW, LoadHoursKeys.Power));
        });
        lines.Add(BatteryKeys.Reserve, battery.ReserveFraction == 0 ? null : Figures.Of(battery.ReserveFraction, BatteryKeys.Reserve));
        lines.Add(BatteryKeys.Chemistry, battery.Chemistry is { } chemistry ? BatteryKeys.Chemistry.Options[(int)chemistry] : null);
        lines.Add(BatteryKeys.MaxCharge, Figures.Of(battery.MaxChargeW, BatteryKeys.MaxCharge));

        void Add(QuantityKey part, double figure) =>
            lines.Add(part, assumed.Contains(BatteryReader.AssumedName(owner, part)) ? null : Figures.Of(figure, part));
    });

    private static void WriteCable(YamlLines lines, Cable cable)
    {
        Sourced<double>[] figures = [cable.LengthM, cable.AreaMm2, cable.StringLengthM, cable.StringAreaMm2, cable.ContactOhm];
        bool isSaid = Array.Exists(figures, static figure => figure.Origin == Origin.Given)
            || cable is not { Class: null, Laying: null, AmbientC: null, Bundled: null, TerminalC: null, MaxDropFraction: null, ExtensionLengthM: 0, ExtensionAreaMm2: null };
        lines.AddGroup(RootKeys.Cable, isSaid, () =>
        {
            lines.Add(CableKeys.Length, Figures.Given(cable.LengthM, CableKeys.Length));
            lines.Add(CableKeys.Size, Figures.Given(cable.AreaMm2, CableKeys.Size));
            lines.Add(CableKeys.StringLength, Figures.Given(cable.StringLengthM, CableKeys.StringLength));
            lines.Add(CableKeys.StringSize, Figures.Given(cable.StringAreaMm2, CableKeys.StringSize));
            lines.Add(CableKeys.Contact, Figures.Given(cable.ContactOhm, CableKeys.Contact));
            lines.Add(CableKeys.ExtensionLength, cable.ExtensionLengthM == 0 ? null : Figures.Of(cable.ExtensionLengthM, CableKeys.ExtensionLength));
            lines.Add(CableKeys.ExtensionSize, Figures.Of(cable.ExtensionAreaMm2, CableKeys.ExtensionSize));
            lines.Add(CableKeys.Class, cable.Class is { } kind ? CableKeys.Class.Options[(int)kind] : null);
            lines.Add(CableKeys.Laying, cable.Laying is { } laying ? CableKeys.Laying.Options[(int)laying] : null);
            lines.Add(CableKeys.Ambient, Figures.Of(cable.AmbientC, CableKeys.Ambient));
            lines.Add(CableKeys.Bundled, cable.Bundled?.ToString());
            lines.Add(CableKeys.Terminals, cable.TerminalC is { } markC ? CableKeys.Terminals.Options[(int)((markC - 60) / 15)] : null);
            lines.Add(CableKeys.MaxDrop, Figures.Of(cable.MaxDropFraction, CableKeys.MaxDrop));
        });
    }
}
