using Arraywright.Sky;

namespace Arraywright.Tests.Sky;

public sealed class GlassAndHorizonTests
{
    [Fact]
    public void Glass_lets_all_through_straight_on_and_ever_less_at_an_angle()
    {
        Assert.Equal(1, IncidenceLoss.BeamFraction(0), 1e-6);
        double before = 1;
        for (int angle = 5; angle <= 90; angle += 5)
        {
            double now = IncidenceLoss.BeamFraction(angle);
            Assert.InRange(now, 0, before);
            before = now;
        }

        Assert.Equal(0, before);
    }

    /// <summary>Fresnel at 60°: glass at asin(sin 60/1.526) = 34.58°; (0.1836 + 0.0013)/2 → 0.0925 reflected, against 0.0434 straight on; absorption 0.8 % more path of 21 %: by hand 0.947.</summary>
    [Fact]
    public void Glass_at_sixty_degrees_is_as_by_hand() => Assert.Equal(0.947, IncidenceLoss.BeamFraction(60), 0.002);

    [Fact]
    public void The_sky_and_the_ground_come_in_at_their_effective_angles()
    {
        // Flat: sky at 59.7°, ground at 90° (unseen). Upright: both at about 59.3°.
        Assert.Equal(IncidenceLoss.BeamFraction(59.7), IncidenceLoss.SkyFraction(0), 1e-12);
        Assert.Equal(0, IncidenceLoss.GroundFraction(0));
        Assert.Equal(IncidenceLoss.SkyFraction(90), IncidenceLoss.GroundFraction(90), 0.01);
    }

    [Theory]
    [InlineData(90, 10)]
    [InlineData(135, 15)]
    [InlineData(180, 20)]
    [InlineData(0, 15)] // from 270 at 20 round to 90 at 10
    [InlineData(-90, 20)]
    [InlineData(360, 15)]
    public void The_horizon_runs_straight_between_its_points_and_round_the_circle(double azimuth, double elevation) =>
        Assert.Equal(elevation, new HorizonProfile([(180, 20), (90, 10), (270, 20)]).ElevationDeg(azimuth), 1e-9);

    [Fact]
    public void A_free_horizon_hides_nothing() => Assert.Equal(0, HorizonProfile.Free.ElevationDeg(123));
}
