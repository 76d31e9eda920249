using Arraywright.Sky;
using CsCheck;

namespace Arraywright.Tests.Sky;

public sealed class SunDayProperties
{
    /// <summary>By the full algorithm, with the days around polar day and night sought out: latitudes beyond 60° half of the time.</summary>
    [Fact]
    public void Wherever_the_sun_rises_or_sets_it_crosses_the_horizon() =>
        Gen.Select(Gen.OneOf(Gen.Double[-90, 90], Gen.Double[60, 90], Gen.Double[-90, -60]), Gen.Double[-180, 180], Gen.Int[2433283, 2488434]).Sample((latitudeDeg, longitudeDeg, dayNumber) =>
        {
            Site site = Site.Of(latitudeDeg, longitudeDeg, 0);
            SunDay day = SunDay.Of(dayNumber - (longitudeDeg / 360), site);
            return day.Daylight != Daylight.RisesAndSets
                || (IsAtHorizonOrEnd(day.RiseJulianDay, day.NoonJulianDay - 0.5) && IsAtHorizonOrEnd(day.SetJulianDay, day.NoonJulianDay + 0.5)
                    && (day.RiseJulianDay > day.NoonJulianDay - 0.5 || day.SetJulianDay < day.NoonJulianDay + 0.5));

            bool IsAtHorizonOrEnd(double julianDay, double end) => julianDay == end || Math.Abs(ElevationDeg(julianDay, site) + 0.8333) < 0.0001;
        }, iter: 20_000);

    [Theory]
    [InlineData(78, 172, Daylight.AllDay)]
    [InlineData(78, 355, Daylight.None)]
    [InlineData(-78, 172, Daylight.None)]
    [InlineData(90, 120, Daylight.AllDay)]
    [InlineData(-90, 120, Daylight.None)]
    [InlineData(0, 172, Daylight.RisesAndSets)]
    public void Polar_day_and_night_are_named(double latitudeDeg, int dayOf2024, Daylight expected) =>
        Assert.Equal(expected, SunDay.Of(2460310 + dayOf2024, Site.Of(latitudeDeg, 0, 0)).Daylight);

    private static double ElevationDeg(double julianDay, Site site)
    {
        SunOfDate sun = SunOfDate.At(julianDay);
        double hourDeg = SunPosition.SiderealDeg(julianDay) + sun.EquinoxesDeg + site.LongitudeDeg - sun.RightAscensionDeg;
        return Angle.Degrees(Math.Asin((Angle.Sin(site.LatitudeDeg) * Angle.Sin(sun.DeclinationDeg)) + (Angle.Cos(site.LatitudeDeg) * Angle.Cos(sun.DeclinationDeg) * Angle.Cos(hourDeg))));
    }
}
