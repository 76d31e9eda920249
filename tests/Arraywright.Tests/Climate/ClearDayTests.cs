using Arraywright.Climate;

namespace Arraywright.Tests.Climate;

/// <summary>By hand: the share of a half sine from 6 to 18 h up to hour t is (1 − cos(π(t − 6)/12))/2.</summary>
public class ClearDayTests
{
    [Theory]
    [InlineData(6, 12, 1, 0.5)]
    [InlineData(0, 24, 0.4, 0.4)]
    [InlineData(9, 15, 1, 0.70710678)]
    [InlineData(6, 9, 0.5, 0.07322330)]
    [InlineData(18, 6, 1, 0)]
    [InlineData(15, 9, 1, 0.29289322)]
    public void Shade_counts_by_the_sun_it_keeps_off(double fromHour, double toHour, double fraction, double share) =>
        Assert.Equal(share, ClearDay.ShareKeptOff([new ShadeHours(fromHour, toHour, fraction)]), 1e-8);

    [Fact]
    public void Overlapping_shades_add_up_to_the_whole_day() =>
        Assert.Equal(1, ClearDay.ShareKeptOff([new ShadeHours(6, 18, 0.7), new ShadeHours(6, 18, 0.6)]));

    [Fact]
    public void No_shade_keeps_nothing_off() => Assert.Equal(0, ClearDay.ShareKeptOff([]));
}
