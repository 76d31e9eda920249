using Arraywright.Sky;
using CsCheck;

namespace Arraywright.Tests.Sky;

public sealed class SunPathProperties
{
    private static readonly Gen<double> Moments = Gen.Double[2433282.5, 2488434.5];

    /// <summary>Half of the places at the poles, on the date line or both.</summary>
    private static readonly Gen<Site> Places = Gen.Select(
        Gen.OneOf(Gen.Double[-90, 90], Gen.OneOf(Gen.Const(90.0), Gen.Const(-90.0))),
        Gen.OneOf(Gen.Double[-180, 180], Gen.OneOf(Gen.Const(180.0), Gen.Const(-180.0))),
        Gen.Double[-400, 6000]).Select((latitudeDeg, longitudeDeg, elevationM) => Site.Of(latitudeDeg, longitudeDeg, elevationM));

    [Fact]
    public void Every_moment_and_place_has_a_sun_within_the_sky() => Gen.Select(Places, Moments).Sample((site, moment) =>
    {
        SunPosition sun = SunPosition.At(moment, site);
        return sun.GeometricElevationDeg is >= -90 and <= 90 && sun.AzimuthDeg is >= 0 and < 360
            && sun.ElevationDeg >= sun.GeometricElevationDeg - 0.002 && sun.ElevationDeg - sun.GeometricElevationDeg < 0.8
            && sun.DistanceAu is > 0.98 and < 1.02;
    });

    /// <summary>The full algorithm is the measure; directions compared by their angle, which an azimuth near the zenith or at a pole would not be.</summary>
    [Fact]
    public void The_interpolated_path_stays_within_a_ten_thousandth_of_a_degree_anywhere() => Gen.Select(Places, Moments, Gen.Double[0, 3]).Sample((site, moment, laterDays) =>
    {
        SunPath path = new(site);
        path.At(moment);
        SunPosition quick = path.At(moment + laterDays);
        SunPosition exact = SunPosition.At(moment + laterDays, site);
        return ApartDeg(quick, exact) < 1e-4 && Math.Abs(quick.DistanceAu - exact.DistanceAu) < 1e-5;
    });

    [Fact]
    public void The_date_line_is_one_meridian() => Gen.Select(Gen.Double[-90, 90], Moments).Sample((latitudeDeg, moment) =>
        ApartDeg(SunPosition.At(moment, Site.Of(latitudeDeg, 180, 0)), SunPosition.At(moment, Site.Of(latitudeDeg, -180, 0))) < 1e-9);

    /// <summary>At a pole the sun stands as high as its declination, less the parallax of 8.8″ at most, all day and whatever the meridian.</summary>
    [Fact]
    public void At_the_poles_the_sun_goes_round_level() => Gen.Select(Gen.OneOf(Gen.Const(90.0), Gen.Const(-90.0)), Gen.Double[-180, 180], Moments).Sample((latitudeDeg, longitudeDeg, moment) =>
    {
        double heightDeg = Math.Sign(latitudeDeg) * SunOfDate.At(moment).DeclinationDeg;
        double seenDeg = SunPosition.At(moment, Site.Of(latitudeDeg, longitudeDeg, 0)).GeometricElevationDeg;
        return seenDeg <= heightDeg + 1e-9 && heightDeg - seenDeg < 0.0025;
    });

    /// <summary>A step over midnight at either side of the date line is a step like any other.</summary>
    [Theory]
    [InlineData(180)]
    [InlineData(-180)]
    [InlineData(0)]
    public void Nothing_jumps_at_midnight(double longitudeDeg)
    {
        SunPath path = new(Site.Of(-17, longitudeDeg, 0));
        SunPosition before = path.At(2460310.5 - 1e-6);
        SunPosition after = path.At(2460310.5 + 1e-6);
        Assert.InRange(ApartDeg(before, after), 0, 360 * 2e-6 * 1.01);
    }

    [Theory]
    [InlineData(90.1, 0, 0)]
    [InlineData(double.NaN, 0, 0)]
    [InlineData(0, -181, 0)]
    [InlineData(0, double.PositiveInfinity, 0)]
    [InlineData(0, 0, 9001)]
    [InlineData(0, 0, double.NaN)]
    public void There_is_no_such_place(double latitudeDeg, double longitudeDeg, double elevationM) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Site.Of(latitudeDeg, longitudeDeg, elevationM));

    [Fact]
    public void There_is_no_such_moment()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SunPosition.At(double.NaN, Site.Of(0, 0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SunPath(Site.Of(0, 0, 0)).At(double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => SunPosition.At(2460310.5, Site.Of(0, 0, 0), double.NaN));
    }

    /// <summary>Angle between two directions, degrees.</summary>
    private static double ApartDeg(SunPosition one, SunPosition other)
    {
        double up = Math.Pow(Angle.Sin((one.GeometricElevationDeg - other.GeometricElevationDeg) / 2), 2);
        double round = Angle.Cos(one.GeometricElevationDeg) * Angle.Cos(other.GeometricElevationDeg) * Math.Pow(Angle.Sin((one.AzimuthDeg - other.AzimuthDeg) / 2), 2);
        return Angle.Degrees(2 * Math.Asin(Math.Sqrt(up + round)));
    }
}
