using Arraywright.Climate;
using Arraywright.Files.Weather;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>
/// What the check of a weather file's clock rests on: in real years (TMY3) the middle of the sunshine is near the sun's own noon. As found in 2026-11:
/// within 11 minutes at six of seven places; 45 minutes early in Honolulu, where clouds of the trade wind come in the afternoon.
/// </summary>
public sealed class SunshineMiddle
{
    [Fact]
    public void The_middle_of_a_real_years_sunshine_is_nearer_to_noon_than_an_hour_of_clock() =>
        Assert.All(Directory.GetFiles(SharedFiles.PathOrSkip("weather"), "*.epw"), path =>
        {
            WeatherYear year = WeatherFile.Load(path).Year!;
            double sum = year.Steps.Sum(step => step.GlobalWPerM2);
            double middleH = year.Steps.Sum(step => step.GlobalWPerM2 * ((step.Ends.TimeOfDay.TotalHours + 23.5) % 24)) / sum;
            double offMin = 60 * (middleH - (12 + year.UtcOffsetH - (year.Place.LongitudeDeg / 15)));
            TestContext.Current.TestOutputHelper?.WriteLine($"{Path.GetFileName(path)}: {offMin:0.0} min, repairs: {string.Join(" ", year.Repairs)}");
            double most = path.Contains("Honolulu", StringComparison.Ordinal) ? 46 : 11;
            Assert.InRange(offMin, -most, most);
            Assert.Empty(year.Repairs);
        });
}
