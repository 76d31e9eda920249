using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>Irradiance models against handbook examples and values recomputed from the published equations (reference pack of the project).</summary>
public sealed class TiltedPlaneReference
{
    /// <summary>A sun at a zenith angle, wherever it stands round the compass.</summary>
    private static SunPosition SunAt(double zenithDeg) => new(90 - zenithDeg, 90 - zenithDeg, 180, 1);

    /// <summary>Erbs, Klein and Duffie, Solar Energy 28 (1982) 293; recomputed.</summary>
    [Theory]
    [InlineData(0.1, 0.9910)]
    [InlineData(0.22, 0.9802)]
    [InlineData(0.3, 0.948596)]
    [InlineData(0.4, 0.839990)]
    [InlineData(0.5, 0.659150)]
    [InlineData(0.6, 0.439478)]
    [InlineData(0.7, 0.243980)]
    [InlineData(0.8, 0.165270)]
    [InlineData(0.9, 0.165)]
    public void The_diffuse_share_of_an_hour_agrees(double clearness, double share) =>
        Assert.Equal(share, BeamDiffuseSplit.DiffuseShare(clearness), 1e-6);

    /// <summary>Kasten and Young, Applied Optics 28 (1989) 4735; recomputed.</summary>
    [Theory]
    [InlineData(0, 0.999712)]
    [InlineData(30, 1.153992)]
    [InlineData(60, 1.994293)]
    [InlineData(75, 3.812912)]
    [InlineData(85, 10.305791)]
    [InlineData(90, 37.919608)]
    public void The_air_mass_agrees(double zenith, double airMass) => Assert.Equal(airMass, AirMass.Relative(zenith), 1e-6 * airMass);

    /// <summary>DHI 120, DNI 700, G0n 1388.22 W/m², zenith 50, incidence 25, slope 35, albedo 0.2; recomputed from the models' papers.</summary>
    [Fact]
    public void The_three_models_agree_on_a_bright_sky()
    {
        SkyLight light = new(569.9513, 700, 120, 1388.22);
        TiltedPlane Plane(SkyModel model) => TiltedPlane.Of(SunAt(50), light, 35, 25, 0.2, model);
        double Sky(TiltedPlane plane) => plane.CircumsolarWPerM2 + plane.SkyWPerM2 + plane.HorizonWPerM2;

        Assert.Equal(634.4155, Plane(SkyModel.Perez).BeamWPerM2, 1e-3);
        Assert.Equal(10.3075, Plane(SkyModel.Perez).GroundWPerM2, 1e-3);
        Assert.Equal(109.1491, Sky(Plane(SkyModel.Isotropic)), 1e-3);
        Assert.Equal(139.4272, Sky(Plane(SkyModel.HayDavies)), 1e-3);
        Assert.Equal(42.8809, Plane(SkyModel.Perez).SkyWPerM2, 1e-3);
        Assert.Equal(102.7246, Plane(SkyModel.Perez).CircumsolarWPerM2, 1e-3);
        Assert.Equal(15.5565, Plane(SkyModel.Perez).HorizonWPerM2, 1e-3);
    }

    [Fact]
    public void Perez_agrees_on_an_overcast_sky()
    {
        TiltedPlane plane = TiltedPlane.Of(SunAt(50), new SkyLight(200, 0, 200, 1388.22), 35, 25, 0.2, SkyModel.Perez);
        Assert.Equal(181.6366, plane.CircumsolarWPerM2 + plane.SkyWPerM2 + plane.HorizonWPerM2, 1e-3);
    }

    /// <summary>J. A. Duffie and W. A. Beckman, Solar Engineering of Thermal Processes, examples 2.15.1 (isotropic, 1.17 MJ/m²) and 2.16.2 (Perez, 1.37 MJ/m²): 40° N, 20 February, 9 to 10 h, slope 60° to the south, albedo 0.6.</summary>
    [Theory]
    [InlineData(SkyModel.Isotropic, 1.17)]
    [InlineData(SkyModel.Perez, 1.37)]
    public void The_handbook_hour_agrees(SkyModel model, double expectedMJPerM2)
    {
        // Id 0.7961 and Ib 0.2439 MJ/m² on the flat; cos z = 0.46636, Rb = 1.7133, so cos of incidence 0.79901. G0n·cos z·1 h = I0 = 2.3349 MJ/m².
        const double PerHour = 3600e-6;
        const double CosZenith = 0.46636;
        double incidence = Math.Acos(1.7133 * CosZenith) * 180 / Math.PI;
        SkyLight light = new(1.04 / PerHour, 0.2439 / PerHour / CosZenith, 0.7961 / PerHour, 2.3349 / PerHour / CosZenith);
        TiltedPlane plane = TiltedPlane.Of(SunAt(Math.Acos(CosZenith) * 180 / Math.PI), light, 60, incidence, 0.6, model);
        Assert.Equal(expectedMJPerM2, plane.TotalWPerM2 * PerHour, 0.005);
    }

    /// <summary>Duffie and Beckman, example 1.6.1: declination −14, latitude 43, slope 45, azimuth 15 (west of south), hour angle −22.5: cos θ = 0.817.</summary>
    [Fact]
    public void The_handbook_angle_of_incidence_agrees()
    {
        const double Rad = Math.PI / 180;
        double sinElevation = (Math.Sin(-14 * Rad) * Math.Sin(43 * Rad)) + (Math.Cos(-14 * Rad) * Math.Cos(43 * Rad) * Math.Cos(22.5 * Rad));
        double elevation = Math.Asin(sinElevation) / Rad;
        double fromSouth = Math.Acos(((sinElevation * Math.Sin(43 * Rad)) - Math.Sin(-14 * Rad)) / (Math.Cos(elevation * Rad) * Math.Cos(43 * Rad))) / Rad;
        double incidence = TiltedPlane.IncidenceDeg(new SunPosition(elevation, elevation, 180 - fromSouth, 1), 45, 180 + 15);
        Assert.Equal(0.817, Math.Cos(incidence * Rad), 0.0005);
    }

    /// <summary>Ineichen and Perez 2002: I0 1361 W/m², sea level, Linke turbidity 3; recomputed.</summary>
    [Theory]
    [InlineData(30, 0, 894.793, 914.434)]
    [InlineData(60, 0, 468.589, 786.075)]
    public void The_clear_sky_agrees(double zenith, double elevation, double global, double beam)
    {
        SkyLight light = ClearSky.Of(SunAt(zenith), elevation, 1361);
        Assert.Equal(global, light.GlobalWPerM2, 0.01);
        Assert.Equal(beam, light.BeamNormalWPerM2, 0.01);
    }
}
