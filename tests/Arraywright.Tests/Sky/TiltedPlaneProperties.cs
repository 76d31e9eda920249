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
}
