using System.Globalization;
using Arraywright.Files.Quantities;
using Arraywright.Growing;

namespace Arraywright.Files.Asking;

/// <summary>The options with a value that questions about a plan take: one table for the command and for the JSON interface.</summary>
public static class AskedOptions
{
    private const int MostOfAll = 100;

    /// <summary>Irradiance in the plane of the panels, W/m².</summary>
    public static AskedOption<double> Irradiance { get; } = Condition("irradiance", "W/m2", 0, 1500, "sun in the plane of the panels, 0 to 1500 W/m2");

    /// <summary>Temperature of the cells, °C.</summary>
    public static AskedOption<double> Cell { get; } = Condition("cell", "C", -60, 110, "temperature of the cells, -60 to 110 C");

    /// <summary>Temperature of the air, °C; not together with <see cref="Cell"/>.</summary>
    public static AskedOption<double> Air { get; } = Condition("air", "C", -60, 60, "temperature of the air instead, -60 to 60 C");

    /// <summary>Wind, m/s; only with <see cref="Air"/>.</summary>
    public static AskedOption<double> Wind { get; } = Condition("wind", "m/s", 0, 60, "wind at the panels, 0 to 60 m/s, beside --air");

    /// <summary>A day of the year.</summary>
    public static AskedOption<DateOnly> Date { get; } = new(
        "date",
        "[YYYY-]MM-DD",
        "the day: month and day, with or without a year before them",
        "a day such as 06-21 or 2026-06-21",
        text => DayText.TryRead(text, out DateOnly date) ? date : null);

    /// <summary>Length of a step, whole minutes that divide an hour.</summary>
    public static AskedOption<int> Step { get; } = new(
        "step",
        "MINUTES",
        "length of a step: 1 to 60 minutes; the sun moves on within the weather's hours",
        "whole minutes that divide an hour, such as 1, 5, 15 or 30",
        text => WholeNumber(text) is { } minutes and >= 1 and <= 60 && 60 % minutes == 0 ? minutes : null);

    /// <summary>How many more panels to look at.</summary>
    public static AskedOption<int> Most { get; } = new(
        "most",
        "N",
        $"look at exactly so many more, 1 to {MostOfAll} (else until no string more is worth it, at most {GrowthOptions.UsualMost})",
        $"a whole number from 1 to {MostOfAll}",
        text => WholeNumber(text) is { } most and >= 1 and <= MostOfAll ? most : null);

    /// <summary>The share of what the first panel adds that another has to add, a fraction; written in percent.</summary>
    public static AskedOption<double> Worth { get; } = new(
        "worth",
        "PERCENT",
        "a panel is worth it while it adds this share of what the first of its kind adds, 1 % to 100 % (else 25 %)",
        "a share from 1 % to 100 %, such as 25%",
        text => Number(text.TrimEnd('%').TrimEnd(), NumberStyles.AllowDecimalPoint) is { } percent and >= 1 and <= 100 ? percent / 100 : null);

    private static AskedOption<double> Condition(string name, string unit, double least, double most, string about) => new(
        name,
        unit,
        about,
        string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most}, in {unit}, without its unit"),
        text => Number(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint) is { } value && value >= least && value <= most ? value : null);

    private static double? Number(string text, NumberStyles style) =>
        double.TryParse(text, style, CultureInfo.InvariantCulture, out double value) ? value : null;

    private static int? WholeNumber(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : null;
}
