using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>
/// The sun against Astropy, 1950 to 2100, as seen from the place, without refraction, by the angle between the two directions.
/// Both are given the same universal time (UT1, the turning of the Earth) and the same terrestrial time: what the clock is off
/// the turning Earth, up to 0.9 s or 0.0038°, is nobody's to know years ahead and would otherwise be all that is seen.
/// </summary>
public sealed class SunAgainstAstronomyProgram
{
    /// <summary>Lines of Julian day (UT1), terrestrial less universal time in s, latitude, longitude, height; answers elevation and azimuth.</summary>
    private const string Seen = """
        import sys, warnings
        warnings.filterwarnings('ignore')
        import erfa
        import numpy as np
        import astropy.units as u
        from astropy.utils import iers
        iers.conf.auto_download = False
        from astropy.time import Time
        from astropy.coordinates import AltAz, EarthLocation, get_body

        ut, delta, lat, lon, height = np.loadtxt(sys.stdin, ndmin=2).T

        class Given(iers.IERS):
            def ut1_utc(self, jd1, jd2=0., return_status=False):
                seconds = (erfa.dat(*erfa.jd2cal(jd1, jd2)) + 32.184 - delta) * u.s
                return (seconds, np.zeros(seconds.shape)) if return_status else seconds

            def pm_xy(self, jd1, jd2=0., return_status=False):
                none = np.zeros(ut.shape) * u.arcsec
                return (none, none, np.zeros(ut.shape)) if return_status else (none, none)

        with iers.earth_orientation_table.set(Given()):
            day = np.floor(ut)
            t = Time(day, ut - day + delta / 86400, format='jd', scale='tt')
            place = EarthLocation(lat=lat * u.deg, lon=lon * u.deg, height=height * u.m)
            seen = get_body('sun', t, place).transform_to(AltAz(obstime=t, location=place))
            apart = (t.ut1.jd1 - day) + (t.ut1.jd2 - (ut - day))
            for row in zip(seen.alt.deg, seen.az.deg, apart * 86400):
                print(*(repr(float(x)) for x in row))
        """;

    /// <summary>Lines of Julian day; answers terrestrial less universal time in s by the measured tables that come with Astropy.</summary>
    private const string Measured = """
        import sys, warnings
        warnings.filterwarnings('ignore')
        import numpy as np
        from astropy.utils import iers
        from astropy.time import Time
        with iers.earth_orientation_table.set(iers.IERS_B.open()):
            t = Time(np.loadtxt(sys.stdin, ndmin=1), format='jd', scale='utc')
            for tt, ut in zip(t.tt, t.ut1):
                print(repr(float(((tt.jd1 - ut.jd1) + (tt.jd2 - ut.jd2)) * 86400)))
        """;

    [Fact]
    public void A_thousand_moments_and_places_agree_to_three_ten_thousandths_of_a_degree()
    {
        Random random = new(19);
        (double Moment, Site Site)[] asked = [.. Enumerable.Range(0, 1000).Select(i => (MomentOf(random), SiteOf(random, i)))];
        double[][] theirs = AstronomyProgram.Ask(Seen, asked.Select(one => FormattableString.Invariant(
            $"{one.Moment:R} {DeltaT.Seconds(Year(one.Moment)):R} {one.Site.LatitudeDeg:R} {one.Site.LongitudeDeg:R} {one.Site.ElevationM:R}")));
        Assert.Equal(asked.Length, theirs.Length);
        double[] apartDeg = new double[asked.Length];
        for (int i = 0; i < asked.Length; i++)
        {
            // Astropy took the universal time it was meant to: on the way it passes through clock time, with its leap seconds.
            Assert.Equal(0, theirs[i][2], 0.01);
            SunPosition ours = SunPosition.At(asked[i].Moment, asked[i].Site);
            apartDeg[i] = Separation(ours.GeometricElevationDeg, ours.AzimuthDeg, theirs[i][0], theirs[i][1]);
        }

        Array.Sort(apartDeg);
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
            $"separation in degrees: median {apartDeg[500]:e1}, 99 in 100 under {apartDeg[989]:e1}, largest {apartDeg[^1]:e1}"));
        Assert.InRange(apartDeg[^1], 0, 0.0003);
    }

    /// <summary>A second of it moves the sun by 0.00001° among the stars; ten seconds stay far below the bound.</summary>
    [Fact]
    public void Terrestrial_less_universal_time_is_within_seconds_of_what_was_measured()
    {
        double[] days = [.. Enumerable.Range(0, 60).Select(year => 2437700.5 + (year * 365.25))];
        double[][] measured = AstronomyProgram.Ask(Measured, days.Select(day => FormattableString.Invariant($"{day:R}")));
        Assert.Equal(days.Length, measured.Length);
        double worst = days.Select((day, i) => Math.Abs(DeltaT.Seconds(Year(day)) - measured[i][0])).Max();
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"at most {worst:0.00} s off, 1962 to 2021"));
        Assert.InRange(worst, 0, 3);
    }

    /// <summary>From 1950 to 2100.</summary>
    private static double MomentOf(Random random) => 2433282.5 + (random.NextDouble() * 55152);

    /// <summary>Even over the globe; every tenth place at a pole, on a tropic or on the date line.</summary>
    private static Site SiteOf(Random random, int i)
    {
        double longitudeDeg = (random.NextDouble() * 360) - 180;
        double latitudeDeg = Math.Asin((2 * random.NextDouble()) - 1) * 180 / Math.PI;
        if (i % 10 == 0)
        {
            (latitudeDeg, longitudeDeg) = random.Next(6) switch
            {
                0 => (90.0, longitudeDeg),
                1 => (-90.0, longitudeDeg),
                2 => (23.43, longitudeDeg),
                3 => (-23.43, longitudeDeg),
                4 => (latitudeDeg, 180.0),
                _ => (latitudeDeg, -180.0),
            };
        }

        return Site.Of(latitudeDeg, longitudeDeg, random.Next(0, 4000));
    }

    private static double Year(double julianDay) => 2000 + ((julianDay - 2451545) / 365.25);

    /// <summary>Angle between two directions, degrees.</summary>
    private static double Separation(double elevation1, double azimuth1, double elevation2, double azimuth2)
    {
        const double Rad = Math.PI / 180;
        double up = Math.Pow(Math.Sin((elevation1 - elevation2) * Rad / 2), 2);
        double round = Math.Cos(elevation1 * Rad) * Math.Cos(elevation2 * Rad) * Math.Pow(Math.Sin((azimuth1 - azimuth2) * Rad / 2), 2);
        return 2 * Math.Asin(Math.Sqrt(up + round)) / Rad;
    }
}
