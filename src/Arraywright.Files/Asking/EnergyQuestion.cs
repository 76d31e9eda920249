using Arraywright.Climate;
using Arraywright.Energy;

namespace Arraywright.Files.Asking;

/// <summary>How a year or a day is to be run.</summary>
/// <param name="StepMinutes">Length of a step, whole minutes that divide an hour; null for the weather's own.</param>
/// <param name="IsHourly">True to take each hour at its mean, without its bright and clouded minutes.</param>
public readonly record struct EnergyQuestion(int? StepMinutes, bool IsHourly)
{
    /// <summary>The same as the library takes it.</summary>
    internal EnergyOptions Options => new() { SpreadWithinStep = !IsHourly, StepH = StepH };

    private double? StepH => StepMinutes / 60.0;

    /// <summary>Whether the weather's steps can be cut so.</summary>
    internal bool Fits(WeatherYear weather) => StepH is not { } stepH || stepH >= weather.StepH || FinerWeather.Divides(weather, stepH);
}
