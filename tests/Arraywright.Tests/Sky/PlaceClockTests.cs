using System.Collections.Immutable;
using Arraywright.Sky;

namespace Arraywright.Tests.Sky;

public sealed class PlaceClockTests
{
    private static readonly PlaceZone London = new("Europe/London", [new(Time("2023-10-29T01:00"), 0), new(Time("2024-03-31T01:00"), 1), new(Time("2024-10-27T01:00"), 0)]);

    /// <summary>By hand from the public rule: an hour forward on the last Sunday of March at 1 h universal time, back on the last of October.</summary>
    [Theory]
    [InlineData(0, "2024-03-31T00:59", "2024-03-31T00:59")]
    [InlineData(0, "2024-03-31T01:00", "2024-03-31T02:00")]
    [InlineData(0, "2024-07-01T23:30", "2024-07-02T00:30")]
    [InlineData(1, "2024-07-01T23:30", "2024-07-01T23:30")]
    [InlineData(-10, "2024-07-01T12:00", "2024-07-01T23:00")]
    [InlineData(0, "2024-10-27T01:30", "2024-10-27T01:30")]
    [InlineData(0, "1990-07-01T12:00", "1990-07-01T12:00")]
    [InlineData(0, "2090-07-01T12:00", "2090-07-01T12:00")]
    public void The_clock_on_the_wall_follows_its_zone(double utcOffsetH, string standard, string expected) =>
        Assert.Equal(Time(expected), PlaceClock.At(Time(standard), utcOffsetH, London));

    [Fact]
    public void A_zone_out_of_order_or_empty_is_none()
    {
        Assert.Throws<ArgumentException>(() => new PlaceZone("x", []));
        Assert.Throws<ArgumentException>(() => new PlaceZone("x", [new(Time("2024-03-31T01:00"), 1), new(Time("2024-03-31T01:00"), 0)]));
        Assert.Throws<ArgumentException>(() => new PlaceZone("x", [new(Time("2024-03-31T01:00"), double.NaN)]));
    }

    [Fact]
    public void Without_a_zone_it_shows_standard_time() => Assert.Equal(Time("2024-07-01T12:00"), PlaceClock.At(Time("2024-07-01T12:00"), 3, null));

    /// <summary>By hand.</summary>
    [Theory]
    [InlineData(9, 1, 0)]
    [InlineData(10, 1, 0.4)]
    [InlineData(9.5, 1, 0.2)]
    [InlineData(11.5, 1, 0.2)]
    [InlineData(10.25, 0.25, 0.4)]
    [InlineData(23.5, 1, 0.8)]
    [InlineData(-0.5, 1, 0.8)]
    [InlineData(1, 2, 0.4)]
    [InlineData(0, 24, ((2 * 0.4) + (4 * 0.8)) / 24)]
    public void Shade_for_a_part_of_a_step_counts_in_part(double fromHour, double lengthH, double expected)
    {
        ImmutableArray<ShadeHours> hours = [new(10, 12, 0.4), new(22, 2, 0.8)];
        Assert.Equal(expected, ShadeByTheClock.ShareKeptOff(hours, fromHour, lengthH), 1e-12);
    }

    private static DateTime Time(string text) => DateTime.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
