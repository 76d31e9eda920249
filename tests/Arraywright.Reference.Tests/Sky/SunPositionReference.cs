using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>The worked example and tables of I. Reda and A. Andreas, NREL/TP-560-34302 (2003, revised 2008), and further moments recomputed from its equations.</summary>
public sealed class SunPositionReference
{
    /// <summary>2003-10-17 12:30:30 at UTC−7 (section A.5 of the report).</summary>
    private const double ExampleDay = 2452930.312847222;

    private static readonly Site Example = new(39.742476, -105.1786, 1830.14, 82000, 11);

    [Fact]
    public void The_worked_example_agrees_to_its_printed_digits()
    {
        SunOfDate sun = SunOfDate.At(ExampleDay, 67);
        Assert.Equal(202.22741, sun.RightAscensionDeg, 0.000005);
        Assert.Equal(-9.31434, sun.DeclinationDeg, 0.000005);
        Assert.Equal(0.9965422974, sun.DistanceAu, 1e-9);
        Assert.Equal(14.641503, sun.EquationOfTimeMin, 0.00002);

        SunPosition seen = SunPosition.At(ExampleDay, Example, 67);
        Assert.Equal(39.87204590, seen.GeometricElevationDeg, 1e-6);
        Assert.Equal(50.11162, seen.ZenithDeg, 0.00001);
        Assert.Equal(194.34024, seen.AzimuthDeg, 0.00001);
        Assert.Equal(25.18700, TiltedPlane.IncidenceDeg(seen, 30, 170), 0.00001);
    }

    /// <summary>Recomputed from the report's equations by an independent program (reference pack of the project): sea level, 1013.25 mbar, 15 °C.</summary>
    [Theory]
    [InlineData(2024, 6, 21, 12, 0, 51.4779, 0, 69.2, 23.43685, -1.9184, 1.0162354, 61.95538, 28.03575, 179.06233)]
    [InlineData(2024, 12, 21, 2, 0, -33.8688, 151.2093, 69.2, -23.43800, 1.9191, 0.9837491, 79.46462, 10.53230, 351.49833)]
    [InlineData(2025, 3, 20, 18, 0, 39.742476, -105.1786, 69.2, 0.14758, -7.2825, 0.9959960, 47.47241, 42.51232, 154.37040)]
    [InlineData(2024, 2, 29, 4, 0, 1.3521, 103.8198, 69.2, -7.79910, -12.4545, 0.9906253, 68.69084, 21.30267, 115.72482)]
    [InlineData(2000, 1, 1, 13, 30, 64.1466, -21.9426, 63.8, -23.02751, -3.3114, 0.9833271, 2.82316, 86.94427, 179.75002)]
    public void Further_moments_agree(
        int year, int month, int day, int hour, int minute, double latitude, double longitude, double deltaT,
        double declination, double equation, double distance, double elevation, double zenith, double azimuth)
    {
        double moment = JulianDay(new DateTime(year, month, day, hour, minute, 0, DateTimeKind.Utc));
        SunOfDate sun = SunOfDate.At(moment, deltaT);
        SunPosition seen = SunPosition.At(moment, new Site(latitude, longitude, 0, 101325, 15), deltaT);
        Assert.Equal(declination, sun.DeclinationDeg, 0.00001);
        Assert.Equal(equation, sun.EquationOfTimeMin, 0.0001);
        Assert.Equal(distance, sun.DistanceAu, 1e-7);
        Assert.Equal(elevation, seen.GeometricElevationDeg, 0.00001);
        Assert.Equal(zenith, seen.ZenithDeg, 0.00001);
        Assert.Equal(azimuth, seen.AzimuthDeg, 0.00001);
    }

    /// <summary>Rise, transit and set in hours UT, NaN where not printed: section A.5, Table A2.1 and the recomputed moments. The report interpolates, we solve: within two seconds.</summary>
    [Theory]
    [InlineData(2003, 10, 17, 39.742476, -105.1786, 13.212072, 18.768047, double.NaN)]
    [InlineData(2003, 10, 16, 39.742476, -105.1786, double.NaN, double.NaN, 24.338664)] // sets at 00:20:19 on the 17th by universal time
    [InlineData(1994, 1, 2, 35, 0, 7.136889, double.NaN, 16.998861)]
    [InlineData(1996, 7, 5, -35, 0, 7.137611, double.NaN, 17.017917)]
    [InlineData(2004, 12, 4, -35, 0, 4.649194, double.NaN, 19.034028)]
    [InlineData(2024, 6, 21, 51.4779, 0, 3.713889, 12.031944, 20.349722)]
    [InlineData(2000, 1, 1, 64.1466, -21.9426, 11.335278, 13.518056, 15.705278)]
    public void Rise_transit_and_set_agree(int year, int month, int day, double latitude, double longitude, double rise, double transit, double set)
    {
        double midnight = JulianDay(new DateTime(year, month, day, 0, 0, 0, DateTimeKind.Utc));
        SunDay sun = SunDay.Of(midnight + 0.5 - (longitude / 360), Site.Of(latitude, longitude, 0));
        const double TwoSeconds = 2.5 / 3600;
        Assert.Equal(Daylight.RisesAndSets, sun.Daylight);
        Agrees(rise, sun.RiseJulianDay);
        Agrees(transit, sun.NoonJulianDay);
        Agrees(set, sun.SetJulianDay);

        void Agrees(double published, double moment)
        {
            if (double.IsFinite(published))
            {
                Assert.Equal(published, (moment - midnight) * 24, TwoSeconds);
            }
        }
    }

    [Theory]
    [InlineData(6, Daylight.AllDay)]
    [InlineData(12, Daylight.None)]
    public void Beyond_the_polar_circle_the_sun_stays_up_or_down(int month, Daylight expected) =>
        Assert.Equal(expected, SunDay.Of(JulianDay(new DateTime(2025, month, 21, 12, 0, 0, DateTimeKind.Utc)), Site.Of(78, 0, 0)).Daylight);

    [Fact]
    public void The_interpolated_path_stays_within_a_ten_thousandth_of_a_degree()
    {
        Site site = Site.Of(54.6, -3.1, 200);
        SunPath path = new(site);
        double start = JulianDay(new DateTime(2026, 1, 1, 0, 30, 0, DateTimeKind.Utc));
        for (int hour = 0; hour < 8760; hour += 7)
        {
            double moment = start + (hour / 24.0);
            SunPosition exact = SunPosition.At(moment, site);
            SunPosition quick = path.At(moment);
            Assert.Equal(exact.ElevationDeg, quick.ElevationDeg, 1e-4);
            Assert.Equal(exact.AzimuthDeg, quick.AzimuthDeg, 1e-4 / Math.Cos(Math.Min(exact.GeometricElevationDeg, 80) * Math.PI / 180));
        }
    }

    internal static double JulianDay(DateTime utc) => 2440587.5 + (utc - DateTime.UnixEpoch).TotalDays;
}
