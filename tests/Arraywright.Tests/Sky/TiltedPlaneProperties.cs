using Arraywright.Sky;
using CsCheck;

namespace Arraywright.Tests.Sky;

public sealed class TiltedPlaneProperties
{
    private static readonly Gen<SkyModel> Models = Gen.Int[0, 2].Select(model => (SkyModel)model);

    /// <summary>A dull plane sees at most the sky's and the ground's light: with no sun in the sky no model may add to it.</summary>
    [Fact]
    public void With_the_sun_down_a_plane_gets_no_more_than_there_is() =>
        Gen.Select(Gen.Double[-20, -0.01], Gen.Double[0, 360], Gen.Double[0, 90], Gen.Double[0, 360], Gen.Double[0, 40], Models).Sample((elevation, azimuth, tilt, facing, diffuse, model) =>
        {
            var sun = new SunPosition(elevation, elevation, azimuth, 1);
            TiltedPlane plane = TiltedPlane.Of(sun, new SkyLight(diffuse, 0, diffuse, 1361), tilt, TiltedPlane.IncidenceDeg(sun, tilt, facing), 0.2, model);
            return plane.TotalWPerM2 >= 0 && plane.TotalWPerM2 <= diffuse + 1e-9;
        });

    /// <summary>Sun above 5°, under which Perez and others count it as no lower.</summary>
    [Fact]
    public void A_level_plane_gets_the_global_light_by_any_model() =>
        Gen.Select(Gen.Double[5.01, 90], Gen.Double[0, 360], Gen.Double[0, 1000], Gen.Double[0.1, 600], Models).Sample((elevation, azimuth, beam, diffuse, model) =>
        {
            var sun = new SunPosition(elevation, elevation, azimuth, 1);
            double global = (beam * Angle.Sin(elevation)) + diffuse;
            return Math.Abs(TiltedPlane.Of(sun, new SkyLight(global, beam, diffuse, 1361), 0, TiltedPlane.IncidenceDeg(sun, 0, 180), 0.2, model).TotalWPerM2 - global) < 1e-6;
        });

    /// <summary>Diffuse light with no sun outside the air divided zero by zero.</summary>
    [Theory]
    [InlineData(300, 100, 200, 0, 0.2)]
    [InlineData(0, 0, 0, 0, 0.2)]
    [InlineData(300, 100, 200, -1361, 0.2)]
    [InlineData(300, 100, 200, double.NaN, 0.2)]
    [InlineData(300, 100, 200, double.PositiveInfinity, 0.2)]
    [InlineData(double.NaN, 100, 200, 1361, 0.2)]
    [InlineData(300, -1, 200, 1361, 0.2)]
    [InlineData(300, 100, double.PositiveInfinity, 1361, 0.2)]
    [InlineData(300, 100, 200, 1361, 1.1)]
    [InlineData(300, 100, 200, 1361, double.NaN)]
    public void Light_that_cannot_be_is_refused_by_every_model(double global, double beam, double diffuse, double outside, double albedo)
    {
        foreach (SkyModel model in Enum.GetValues<SkyModel>())
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => TiltedPlane.Of(new SunPosition(30, 30, 180, 1), new SkyLight(global, beam, diffuse, outside), 40, 20, albedo, model));
        }
    }

    [Theory]
    [InlineData(double.NaN, 1361, 3)]
    [InlineData(0, double.NaN, 3)]
    [InlineData(0, -1, 3)]
    [InlineData(0, 1361, 0.9)]
    [InlineData(0, 1361, double.NaN)]
    public void A_clear_sky_that_cannot_be_is_refused(double elevationM, double outside, double turbidity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ClearSky.Of(new SunPosition(30, 30, 180, 1), elevationM, outside, turbidity));

    /// <summary>Sun low or high, air thick or thin: a clear sky is a sky, and any plane under it has a figure.</summary>
    [Fact]
    public void A_clear_sky_is_finite_and_no_brighter_than_the_sun_outside() =>
        Gen.Select(Gen.Double[-1, 90], Gen.Double[-400, 6000], Gen.Double[1, 8], Gen.Double[0, 90], Gen.Double[0, 360], Models).Sample((elevation, heightM, turbidity, tilt, facing, model) =>
        {
            var sun = new SunPosition(elevation, elevation, 180, 1);
            SkyLight light = ClearSky.Of(sun, heightM, 1361, turbidity);
            double onPlane = TiltedPlane.Of(sun, light, tilt, TiltedPlane.IncidenceDeg(sun, tilt, facing), 0.2, model).TotalWPerM2;
            return light.GlobalWPerM2 >= 0 && light.GlobalWPerM2 <= (1361 * Math.Max(0, Angle.Sin(elevation))) + 1e-9 && light.BeamNormalWPerM2 is >= 0 and < 1361 && light.DiffuseWPerM2 >= 0
                && Math.Abs((light.BeamNormalWPerM2 * Math.Max(0, Angle.Sin(elevation))) + light.DiffuseWPerM2 - light.GlobalWPerM2) < 1e-9
                && onPlane is >= 0 and < 2000;
        }, iter: 20_000);
}
