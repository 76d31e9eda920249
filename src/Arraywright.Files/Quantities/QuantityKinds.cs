namespace Arraywright.Files.Quantities;

/// <summary>The quantities of a plan. The ranges hold everything that can be meant, not everything that is wise.</summary>
internal static class QuantityKinds
{
    public static readonly Quantity Voltage = new("a voltage", "22.9 V", 0.1, 2000, [new("V"), Also("v")]);

    public static readonly Quantity Current = new("a current", "6.72 A", 0.001, 1000, [new("A"), new("mA", -3), Also("a")]);

    public static readonly Quantity Power = new("a power", "400 W", 0.1, 1e6, [new("W"), new("kW", 3), Also("w"), Also("Wp"), Also("kw", 3)]);

    public static readonly Quantity Energy = new("an energy", "1.2 kWh", 1, 1e7, [new("Wh"), new("kWh", 3), Also("wh"), Also("kwh", 3)])
    {
        OftenConfused = ("Ah", "multiply the amp-hours by the battery's volts and write Wh"),
    };

    public static readonly Quantity Length = new("a length", "8 m", 0, 1000, [new("m"), new("ft", Scale: Scale.Foot)]);

    public static readonly Quantity Elevation = Length with { Name = "a height above the sea", Example = "210 m", Min = -450, Max = 6000 };

    public static readonly Quantity Area = new(
        "a cable size",
        "4 mm2",
        0.1,
        500,
        [new("mm2"), new("AWG", Scale: Scale.WireGauge), Also("mm²"), Also("mm^2"), new("awg", Scale: Scale.WireGauge) { IsVariant = true }])
    {
        OftenConfused = ("mm", "write the copper's cross-section in mm2, not its diameter"),
    };

    public static readonly Quantity Resistance = new("a resistance", "0.5 mohm", 0, 1, [new("mohm", -3), new("ohm"), Also("m\u03A9", -3), Also("m\u2126", -3), Also("\u03A9"), Also("\u2126")]);

    public static readonly Quantity Temperature = new(
        "a temperature",
        "-14 C",
        -90,
        100,
        [new("C"), new("F", Scale: Scale.Fahrenheit), Also("°C"), new("°F", Scale: Scale.Fahrenheit) { IsVariant = true }, Also("degC")])
    {
        OftenConfused = ("K", "write degrees Celsius, C, or Fahrenheit, F"),
    };

    public static readonly Quantity Angle = new("an angle", "40 deg", 0, 360, [new("deg"), Also("°")]);

    public static readonly Quantity Latitude = new("a latitude in degrees, north positive", "54.6", -90, 90, [new(""), Also("deg"), Also("°"), Also("N"), Opposite("S")]);

    public static readonly Quantity Longitude = new("a longitude in degrees, east positive", "-3.1", -180, 180, [new(""), Also("deg"), Also("°"), Also("E"), Opposite("W")]);

    public static readonly Quantity Percent = new("a percentage", "95 %", 0, 1, [new("%", -2)]);

    public static readonly Quantity Share = new("a share", "30 %", 0, 1, [new("%", -2), new("")]);

    public static readonly Quantity VoltageSlope = Slope("V/K", "-0.29 %/K", "V");

    public static readonly Quantity CurrentSlope = Slope("A/K", "0.05 %/K", "A");

    public static readonly Quantity PowerSlope = Slope("W/K", "-0.38 %/K", "W");

    private static Unit Also(string symbol, int shift = 0) => new(symbol, shift) { IsVariant = true };

    private static Unit Opposite(string symbol) => new(symbol, Scale: Scale.Opposite) { IsVariant = true };

    /// <summary>A temperature coefficient: a share a kelvin, or the quantity's own unit a kelvin.</summary>
    private static Quantity Slope(string absolute, string example, string unit) => new(
        "a temperature coefficient",
        example,
        -10,
        10,
        [
            new("%/K", -2), Also("%/C", -2), Also("%/°C", -2), Also("%/degC", -2),
            new(absolute) { Basis = Basis.Absolute }, new("m" + absolute, -3) { Basis = Basis.Absolute },
            Of(unit + "/C"), Of(unit + "/°C"), Of("m" + unit + "/C", -3), Of("m" + unit + "/°C", -3),
        ])
    {
        OftenConfused = ("%", "a coefficient is a change a degree; write %/K"),
    };

    private static Unit Of(string symbol, int shift = 0) => new(symbol, shift) { Basis = Basis.Absolute, IsVariant = true };
}
