using Arraywright.Files.Quantities;

namespace Arraywright.Files.Keys;

/// <summary>Keys of one kind of panel.</summary>
internal static class PanelKeys
{
    public static readonly NameKey Name = new("name", "shed-120", "Name of this kind of panel; wirings use it.") { Required = true };

    public static readonly CountKey Count = new("count", 1, Caps.Panels, "4", "How many of this kind are at hand.") { Required = true };

    public static readonly QuantityKey Power = new("power", QuantityKinds.Power.Within(0.1, 3000), "120 W", "Rated power at standard test conditions.")
    {
        Otherwise = "Vmp × Imp",
    };

    public static readonly QuantityKey Voc = new("voc", Cell, "22.9 V", "Open-circuit voltage at standard test conditions, not the operating voltage.") { Required = true };

    public static readonly QuantityKey Isc = new("isc", CellCurrent, "6.72 A", "Short-circuit current at standard test conditions, not the operating current.") { Required = true };

    public static readonly QuantityKey Vmp = new("vmp", Cell, "18.9 V", "Voltage at maximum power.") { Otherwise = "from power and imp, or typical of the technology" };

    public static readonly QuantityKey Imp = new("imp", CellCurrent, "6.35 A", "Current at maximum power.") { Otherwise = "from power and vmp, or typical of the technology" };

    public static readonly QuantityKey VocTemperature = new("voc_temperature", QuantityKinds.VoltageSlope, "-0.29 %/K", "Change of voc a degree; in %/K, or V/K or mV/K of the whole panel.")
    {
        Otherwise = "typical of the technology; the coldest voltage then goes by the code's table",
    };

    public static readonly QuantityKey IscTemperature = new("isc_temperature", QuantityKinds.CurrentSlope, "0.05 %/K", "Change of isc a degree; in %/K, or A/K or mA/K of the whole panel.")
    {
        Otherwise = "typical of the technology",
    };

    public static readonly QuantityKey PowerTemperature = new("power_temperature", QuantityKinds.PowerSlope, "-0.38 %/K", "Change of power a degree; in %/K, or W/K.")
    {
        Otherwise = "what the circuit model gives",
    };

    public static readonly CountKey Cells = new("cells", 1, 400, "36", "Cells in series; a panel of 120 half cells counts 60.") { Otherwise = "from voc and the technology" };

    public static readonly CountKey BypassDiodes = new("bypass_diodes", 0, SharesKey.Most, "2", "Bypass diodes in the panel; 0 for none.") { Otherwise = "from the number of cells" };

    public static readonly QuantityKey MaxSeriesFuse = new("max_series_fuse", QuantityKinds.Current.Within(0.1, 100), "15 A", "Largest series fuse the label allows.")
    {
        Otherwise = "unknown; three or more strings in parallel then need asking",
    };

    public static readonly QuantityKey MaxSystemVoltage = new("max_system_voltage", QuantityKinds.Voltage.Within(10, 2000), "600 V", "Largest system voltage the label allows.") { Otherwise = "unknown" };

    public static readonly QuantityKey Tolerance = new("tolerance", QuantityKinds.Percent.Within(0, 0.5), "3 %", "Label tolerance, taken for volts and amps as well.") { Otherwise = "typical" };

    public static readonly QuantityKey Noct = new("noct", QuantityKinds.Temperature.Within(20, 80), "45 C", "Cell temperature at 800 W/m², 20 °C air and 1 m/s wind.") { Otherwise = "from how it is mounted" };

    public static readonly ChoiceKey Technology = new(
        "technology",
        ["crystalline silicon", "mono perc", "multicrystalline", "topcon", "heterojunction", "back contact", "cadmium telluride", "cigs", "amorphous silicon"],
        "mono perc",
        "What the cells are made of.")
    {
        Otherwise = "crystalline silicon",
    };

    public static readonly ShadeKey Shade = new("shade", "30 %", "Share of the light kept off these panels; a list of hours; or a share for each bypassed group of cells.") { Otherwise = "none" };

    public static readonly QuantityKey Tilt = new("tilt", MountKeys.TiltRange, "40 deg", "Tilt of these panels, when it is not that of `mount`.") { Otherwise = "that of mount" };

    public static readonly QuantityKey Azimuth = new("azimuth", QuantityKinds.Angle, "180 deg", "Direction these panels face, clockwise from north, when it is not that of `mount`.") { Otherwise = "that of mount" };

    public static readonly PriceKey Price = new("price", "95 EUR", "Price of one panel, with the currency's three letters.") { Otherwise = "unknown" };

    public static readonly PlanSection Section = new(
        "a panel",
        [
            Name, Count, Power, Voc, Isc, Vmp, Imp, VocTemperature, IscTemperature, PowerTemperature, Cells, BypassDiodes,
            MaxSeriesFuse, MaxSystemVoltage, Tolerance, Noct, Technology, Shade, Tilt, Azimuth, Price,
        ]);

    /// <summary>The same without a count: what is not owned cannot be counted.</summary>
    public static readonly PlanSection Candidate = new("a candidate", [.. Section.Keys.Where(static key => key != Count)]);

    private static Quantity Cell => QuantityKinds.Voltage.Within(0.3, 1500);

    private static Quantity CellCurrent => QuantityKinds.Current.Within(0.005, 200);
}
