using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>A weather file read: the weather, or every fault that keeps it from being used.</summary>
/// <param name="Year">The weather; null when there are faults.</param>
/// <param name="Faults">What is wrong, in file order; empty when the weather is usable.</param>
public sealed record WeatherReading(WeatherYear? Year, IReadOnlyList<Fault> Faults)
{
    internal static WeatherReading Refused(IReadOnlyList<Fault> faults) => new(null, faults);
}
