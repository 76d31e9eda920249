using System.Globalization;
using Arraywright.Climate;
using Arraywright.Files.Keys;

namespace Arraywright.Files.Asking;

/// <summary>The words of every refusal.</summary>
internal static class Refusals
{
    public static Refusal NoWiring { get; } =
        new(null, "no input states a wiring; expected \"wiring:\" at an input, such as \"wiring: a + b\"; to let the tool find one: arraywright plan");

    public static Refusal NothingTurns { get; } =
        new(null, "every panel has a tilt or direction of its own, so there is nothing to turn together; expected a panel without \"tilt:\" and \"azimuth:\" among \"panels:\"");

    public static Refusal NoInput(Plan plan, string name) =>
        new("input", $"the plan has no input \"{name}\"; {Meant(name, [.. plan.Inputs.Select(input => input.Input.Name)])}");

    public static Refusal NoKind(Plan plan, string name) =>
        new("of", $"the plan has no panel \"{name}\"; {Meant(name, [.. plan.Panels.Concat(plan.Candidates).Select(stock => stock.Panel.Name)])}");

    public static Refusal NoWeather(Plan plan) =>
        new(null, $"{(plan.Place is null ? "the plan names no place" : "the built-in climate does not know this place, it is over open sea")}; expected \"place:\" with a latitude and a longitude on land, or with a weather file");

    public static Refusal NoDay(DateOnly day) =>
        new("date", $"the weather has no {day.ToString("MMMM d", CultureInfo.InvariantCulture)}; expected a day of its year");

    public static Refusal Uncut(WeatherYear weather, EnergyQuestion asked) =>
        new("step", string.Create(CultureInfo.InvariantCulture, $"the weather's steps of {weather.StepH * 60:0.##} minutes cannot be cut into steps of {asked.StepMinutes} minutes; expected a whole part of them"));

    private static string Meant(string typed, string[] names) =>
        Nearest.Of(typed, names) is { } near ? $"did you mean \"{near}\"?" : $"the plan has {string.Join(", ", names)}";
}
