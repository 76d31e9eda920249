using Arraywright.Energy;

namespace Arraywright.Tests.Energy;

public sealed class WithinStepTests
{
    /// <summary>By hand: half of the clear sun; 0.6 · 0.2/0.7 = 0.1714 of the time at twice the mean, the rest at (0.5 − 0.1714)/(0.8286 · 0.5) = 0.7931 of it.</summary>
    [Fact]
    public void Half_the_clear_sun_is_a_sixth_of_the_hour_in_full_sun()
    {
        (double brightShare, double bright, double clouded) = WithinStep.Of(400, 800)!.Value;
        Assert.Equal(0.17143, brightShare, 1e-5);
        Assert.Equal(2, bright, 1e-12);
        Assert.Equal(0.79310, clouded, 1e-5);
    }

    [Fact]
    public void The_mean_is_kept_and_no_part_is_brighter_than_the_clear_sky_or_darker_than_nothing()
    {
        int mixed = 0;
        for (int percent = 0; percent <= 130; percent++)
        {
            if (WithinStep.Of(9 * percent, 900) is not { } parts)
            {
                continue;
            }

            mixed++;
            Assert.Equal(1, (parts.BrightShare * parts.Bright) + ((1 - parts.BrightShare) * parts.Clouded), 1e-12);
            Assert.InRange(parts.BrightShare, 0, 1);
            Assert.Equal(900, parts.Bright * 9 * percent, 1e-9);
            Assert.InRange(parts.Clouded, 0, 1);
        }

        Assert.Equal(66, mixed); // 31 to 96 percent of the clear sky
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 500)]
    [InlineData(100, 0)] // sun under no clear sky, as by twilight
    [InlineData(120, 500)] // dull throughout
    [InlineData(490, 500)] // clear throughout
    [InlineData(600, 500)] // brighter than the clear sky of usual air
    public void Other_hours_are_of_one_kind(double meanWPerM2, double clearWPerM2) => Assert.Null(WithinStep.Of(meanWPerM2, clearWPerM2));
}
