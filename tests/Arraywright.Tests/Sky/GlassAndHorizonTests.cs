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

    /// <summary>De Soto, Klein and Beckman, Solar Energy 80 (2006) 78, worked here from its equations; straight on by the limit ((n − 1)/(n + 1))². At 60° it is 0.9460.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    [InlineData(45)]
    [InlineData(60)]
    [InlineData(75)]
    [InlineData(85)]
    [InlineData(89.9)]
    public void Glass_lets_through_what_the_paper_says(double incidenceDeg)
    {
        double outside = incidenceDeg * Math.PI / 180;
        double inside = Math.Asin(Math.Sin(outside) / 1.526);
        double reflected = 0.5 * (Math.Pow(Math.Sin(inside - outside) / Math.Sin(inside + outside), 2) + Math.Pow(Math.Tan(inside - outside) / Math.Tan(inside + outside), 2));
        double through = Math.Exp(-0.008 / Math.Cos(inside)) * (1 - reflected);
        double straight = Math.Exp(-0.008) * (1 - Math.Pow(0.526 / 2.526, 2));
        Assert.Equal(through / straight, IncidenceLoss.BeamFraction(incidenceDeg), 1e-6);
    }

    [Fact]
    public void Glass_at_sixty_degrees_loses_a_twentieth() => Assert.Equal(0.9460, IncidenceLoss.BeamFraction(60), 0.00005);

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
        Assert.Equal(elevation, new HorizonProfile([new(180, 20), new(90, 10), new(270, 20)]).ElevationDeg(azimuth), 1e-9);

    [Fact]
    public void A_free_horizon_hides_nothing()
    {
        Assert.Equal(0, HorizonProfile.Free.ElevationDeg(123));
        Assert.Equal(1, HorizonProfile.Free.SkyLeftFraction(40, 170));
        Assert.Equal(1, new HorizonProfile([new(0, 0)]).SkyLeftFraction(40, 170), 1e-12);
    }

    /// <summary>By hand, integrating the cosine over the sky above an even ring e: level plane cos²e, upright plane 1 − (2e + sin 2e)/π.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    [InlineData(45)]
    [InlineData(90)]
    public void An_even_ring_of_hills_takes_its_share_of_the_sky(double ringDeg)
    {
        HorizonProfile ring = new([new(0, ringDeg)]);
        double e = ringDeg * Math.PI / 180;
        Assert.Equal(Math.Cos(e) * Math.Cos(e), ring.SkyLeftFraction(0, 180), 1e-9);
        Assert.Equal(1 - (((2 * e) + Math.Sin(2 * e)) / Math.PI), ring.SkyLeftFraction(90, 137), 1e-9);
    }

    [Fact]
    public void Hills_behind_a_panel_take_less_of_its_sky_than_hills_before_it()
    {
        HorizonProfile south = new([new(89, 0), new(91, 25), new(269, 25), new(271, 0)]);
        Assert.InRange(south.SkyLeftFraction(60, 180), 0.5, south.SkyLeftFraction(60, 0) - 0.05);
    }

    public static TheoryData<HorizonPoint[]> Senseless => new()
    {
        new HorizonPoint[] { new(double.NaN, 5) },
        new HorizonPoint[] { new(0, double.NaN) },
        new HorizonPoint[] { new(double.PositiveInfinity, 5) },
        new HorizonPoint[] { new(0, -1) },
        new HorizonPoint[] { new(0, 91) },
        new HorizonPoint[] { new(20, 5), new(20, 6) },
        new HorizonPoint[] { new(0, 5), new(360, 6) },
    };

    [Theory]
    [MemberData(nameof(Senseless))]
    public void A_senseless_horizon_is_refused(HorizonPoint[] points) => Assert.Throws<ArgumentException>(() => new HorizonProfile(points));
}
