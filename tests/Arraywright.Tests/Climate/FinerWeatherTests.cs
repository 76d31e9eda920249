using Arraywright.Climate;

namespace Arraywright.Tests.Climate;

public sealed class FinerWeatherTests
{
    private static readonly WeatherPlace Hill = new(54.6, -3.1, 210);

    private static WeatherYear Hours(params (double GlobalWPerM2, double BeamWPerM2, double DiffuseWPerM2)[] fromFour) => new(
        Hill,
        [.. fromFour.Select((light, hour) => new WeatherStep(new DateTime(2025, 6, 21, 5 + hour, 0, 0), light.GlobalWPerM2, light.BeamWPerM2, light.DiffuseWPerM2, 10 + hour, 2))],
        1,
        0,
        "made",
        []);

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(60)]
    public void The_parts_of_a_step_have_its_light(int parts)
    {
        WeatherYear hours = Hours((40, 90, 30), (130, 260, 70), (260, 400, 110), (300, 200, 200));
        WeatherYear finer = FinerWeather.Of(hours, parts);
        Assert.Equal(4 * parts, finer.Steps.Length);
        Assert.Equal(1.0 / parts, finer.StepH);
        Assert.Equal(1, finer.AveragedOverH);
        for (int hour = 0; hour < 4; hour++)
        {
            WeatherStep[] of = [.. finer.Steps.Skip(hour * parts).Take(parts)];
            Assert.Equal(hours.Steps[hour].GlobalWPerM2, of.Average(step => step.GlobalWPerM2), 1e-9);
            Assert.Equal(hours.Steps[hour].DiffuseWPerM2, of.Average(step => step.DiffuseWPerM2), 1e-9);
            Assert.Equal(hours.Steps[hour].BeamNormalWPerM2, of.Average(step => step.BeamNormalWPerM2), 1e-9);
            Assert.Equal(hours.Steps[hour].Ends, of[^1].Ends);
            Assert.True(of[^1].GlobalWPerM2 > of[0].GlobalWPerM2, "in the morning the sun rises within the hour too");
        }
    }

    [Fact]
    public void Before_sunrise_it_is_dark_within_the_hour_too()
    {
        // By hand, from declination 23.44 and the equation of time -1.9 min: cos w = -tan 54.6 tan 23.44, w = 127.6 degrees or 8.51 h before the noon of
        // 12:14 UTC at 3.1 W: the sun's middle stands on the horizon at 3:44, and is seen there some 4 minutes earlier for refraction.
        WeatherYear hour = new(Hill, [new WeatherStep(new DateTime(2025, 6, 21, 4, 0, 0), 4, 10, 3, 8, 1)], 1, 0, "made", []);
        WeatherYear minutes = FinerWeather.Of(hour, 60);
        Assert.Equal(0, minutes.Steps[29].GlobalWPerM2);
        Assert.Equal(0, minutes.Steps[29].BeamNormalWPerM2);
        Assert.True(minutes.Steps[50].GlobalWPerM2 > 4);
    }

    [Fact]
    public void Light_that_cannot_be_is_spread_evenly()
    {
        WeatherYear night = new(Hill, [new WeatherStep(new DateTime(2025, 6, 21, 2, 0, 0), 30, 0, 30, 8, 1)], 1, 0, "made", []);
        Assert.All(FinerWeather.Of(night, 6).Steps, step => Assert.Equal(30, step.GlobalWPerM2));
    }

    [Fact]
    public void Air_runs_straight_between_the_middles_of_steps()
    {
        WeatherYear finer = FinerWeather.Of(Hours((40, 90, 30), (130, 260, 70), (260, 400, 110)), 2);
        Assert.Equal([10, 10.25, 10.75, 11.25, 11.75, 12], finer.Steps.Select(step => step.AirC));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(61)]
    public void No_part_is_shorter_than_a_minute(int parts) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FinerWeather.Of(Hours((40, 90, 30)), parts));
}
