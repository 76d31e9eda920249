using System.Globalization;
using System.Text;
using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>The sun against Astropy, a general astronomy library (Debian package python3-astropy), which has its own ephemeris, precession and nutation.</summary>
public sealed class SunAgainstAstronomyProgram
{
    private const string Program = """
        import sys, warnings
        warnings.filterwarnings('ignore')
        import astropy.units as u
        from astropy.utils import iers
        iers.conf.auto_download = False
        iers.conf.iers_degraded_accuracy = 'ignore'
        from astropy.time import Time
        from astropy.coordinates import AltAz, EarthLocation, get_body
        for line in sys.stdin:
            moment, lat, lon, height = [float(x) for x in line.split()]
            t = Time(moment, format='jd', scale='utc')
            t.delta_ut1_utc = 0.0
            place = EarthLocation(lat=lat * u.deg, lon=lon * u.deg, height=height * u.m)
            seen = get_body('sun', t, place).transform_to(AltAz(obstime=t, location=place))
            print(repr(float(seen.alt.deg)), repr(float(seen.az.deg)))
        """;

    [Fact]
    public void A_thousand_moments_and_places_agree_to_half_a_thousandth_of_a_degree()
    {
        Python.SkipUnlessInstalled("astropy", "the sun is not checked against another program");
        Random random = new(19);
        StringBuilder questions = new();
        List<(double Moment, Site Site)> asked = [];
        for (int i = 0; i < 1000; i++)
        {
            // 1972 to 2025: before, astropy needs tables of UTC that it would fetch. Every tenth place is at a pole or on a tropic.
            double moment = Moment(random);
            double latitude = i % 10 == 0 ? new[] { 90.0, -90, 23.43, -23.43 }[random.Next(4)] : Math.Asin((2 * random.NextDouble()) - 1) * 180 / Math.PI;
            Site site = Site.Of(latitude, (random.NextDouble() * 360) - 180, random.Next(0, 4000));
            asked.Add((moment, site));
            questions.AppendLine(CultureInfo.InvariantCulture, $"{moment:R} {site.LatitudeDeg:R} {site.LongitudeDeg:R} {site.ElevationM:R}");
        }

        string[] lines = Python.Lines(Program, questions.ToString());
        Assert.Equal(asked.Count, lines.Length);
        double[] apartDeg = new double[lines.Length];
        for (int i = 0; i < lines.Length; i++)
        {
            double[] theirs = [.. lines[i].Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
            SunPosition ours = SunPosition.At(asked[i].Moment, asked[i].Site);
            apartDeg[i] = Separation(ours.GeometricElevationDeg, ours.AzimuthDeg, theirs[0], theirs[1]);
        }

        Array.Sort(apartDeg);
        TestContext.Current.TestOutputHelper?.WriteLine($"separation in degrees: median {apartDeg[500]:e1}, 99 in 100 under {apartDeg[989]:e1}, largest {apartDeg[^1]:e1}");
        Assert.InRange(apartDeg[989], 0, 0.0005);

        // Universal time is taken as given; astropy now and then brings in what the clock was off the turning Earth, up to 0.9 s, which is 0.0038 degrees.
        Assert.InRange(apartDeg[^1], 0, 0.0038);
    }

    /// <summary>A random moment, but on no day that ends in a leap second: there a Julian day in UTC is not the same to all programs.</summary>
    private static double Moment(Random random)
    {
        while (true)
        {
            double moment = 2441317.5 + (random.NextDouble() * 19700);
            DateTime date = DateTime.UnixEpoch.AddDays(moment - 2440587.5);
            if ((date.Month, date.Day) is not ((6, 30) or (12, 31)))
            {
                return moment;
            }
        }
    }

    /// <summary>Angle between two directions, degrees.</summary>
    private static double Separation(double elevation1, double azimuth1, double elevation2, double azimuth2)
    {
        const double Rad = Math.PI / 180;
        double up = Math.Pow(Math.Sin((elevation1 - elevation2) * Rad / 2), 2);
        double round = Math.Cos(elevation1 * Rad) * Math.Cos(elevation2 * Rad) * Math.Pow(Math.Sin((azimuth1 - azimuth2) * Rad / 2), 2);
        return 2 * Math.Asin(Math.Sqrt(up + round)) / Rad;
    }
}
