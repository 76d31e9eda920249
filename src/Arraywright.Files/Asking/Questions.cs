using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Growing;
using Arraywright.Planning;

namespace Arraywright.Files.Asking;

/// <summary>What may be asked of a plan: what the plan must have for it, and then the study. The command and the JSON interface ask through here.</summary>
public static class Questions
{
    /// <summary>Judges the stated wiring.</summary>
    public static Asked<PlanResult> Check(Plan plan, PlannerOptions options) =>
        plan.Inputs.All(input => input.StatedWiring is null) ? Refusals.NoWiring : Planner.Check(plan, options);

    /// <summary>The curve of the stated or best wiring.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="input">Name of the input; null for the first that has a wiring.</param>
    /// <param name="options">Conditions.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="stop">Ends a search early.</param>
    public static Asked<CurveResult> Curve(Plan plan, string? input, PlannerOptions options, IProgress<double>? progress, CancellationToken stop)
    {
        if (input is not null && !plan.Inputs.Any(planned => planned.Input.Name == input))
        {
            return Refusals.NoInput(plan, input);
        }

        return CurveStudy.Run(plan, input, options, progress, stop);
    }

    /// <summary>One day of the stated or best wiring.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="date">The day.</param>
    /// <param name="isClear">True for a sky without a cloud.</param>
    /// <param name="energy">How the day is run.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="stop">Ends a search early.</param>
    public static Asked<DayResult> Day(Plan plan, DateOnly date, bool isClear, EnergyQuestion energy, IProgress<double>? progress, CancellationToken stop)
    {
        if (Weather(plan) is not { } weather)
        {
            return Refusals.NoWeather(plan);
        }

        return !DayStudy.Has(weather, date) ? Refusals.NoDay(date)
            : !energy.Fits(weather) ? Refusals.Uncut(weather, energy)
            : DayStudy.Run(plan, weather, date, isClear, energy.Options, progress, stop);
    }

    /// <summary>A year of the stated or best wiring.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="energy">How the year is run.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="stop">Ends a search early.</param>
    public static Asked<YearResult> Year(Plan plan, EnergyQuestion energy, IProgress<double>? progress, CancellationToken stop)
    {
        if (Weather(plan) is not { } weather)
        {
            return Refusals.NoWeather(plan);
        }

        return energy.Fits(weather) ? YearStudy.Run(plan, weather, energy.Options, progress, stop) : Refusals.Uncut(weather, energy);
    }

    /// <summary>What more panels would bring.</summary>
    public static Asked<GrowthResult> Grow(Plan plan, GrowthOptions asked, IProgress<double>? progress, CancellationToken stop)
    {
        if (GrowthStudy.Kinds(plan, asked).IsEmpty)
        {
            return Refusals.NoKind(plan, asked.Of!);
        }

        return Weather(plan) is { } weather ? GrowthStudy.Run(plan, weather, asked, progress, stop) : Refusals.NoWeather(plan);
    }

    /// <summary>How the panels should face.</summary>
    public static Asked<TiltResult> Tilt(Plan plan, DateOnly? date, IProgress<double>? progress, CancellationToken stop)
    {
        if (!TiltStudy.Turns(plan))
        {
            return Refusals.NothingTurns;
        }

        return Weather(plan) is { } weather ? TiltStudy.Run(plan, weather, date, EnergyOptions.Default, progress, stop) : Refusals.NoWeather(plan);
    }

    /// <summary>The weather of the plan's file, or the built-in one.</summary>
    private static WeatherYear? Weather(Plan plan) => plan.WeatherYear ?? SyntheticYear.For(plan);
}
