using Arraywright.Climate;
using Arraywright.Files.Weather;
using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>The seven typical years (TMY3, National Renewable Energy Laboratory, NREL/TP-581-43156) beside the repository: read, and the synthetic year held against them.</summary>
public sealed class WeatherFilesAgainstReadme
{
    /// <summary>Horizontal sum in kWh/m² and coldest and hottest hour in °C, from the folder's README.</summary>
    [Theory]
    [InlineData("USA_AK_Anchorage", 892, -25.0, 24.4)]
    [InlineData("USA_VT_Burlington", 1341, -27.8, 37.2)]
    [InlineData("USA_IL_Chicago", 1407, -22.8, 35.0)]
    [InlineData("USA_CO_Denver", 1670, -19.4, 40.0)]
    [InlineData("USA_CA_Los", 1825, 5.6, 32.2)]
    [InlineData("USA_AZ_Tucson", 2062, -3.3, 41.7)]
    [InlineData("USA_HI_Honolulu", 1953, 13.3, 33.3)]
    public void Every_file_is_read_to_its_known_sums(string name, double globalKWh, double coldestC, double hottestC)
    {
        WeatherYear year = Load(name);
        Assert.Equal(8760, year.Steps.Length);
        Assert.Equal(globalKWh, year.GlobalKWhPerM2, 1.0);
        Assert.Equal(coldestC, year.Steps.Min(step => step.AirC), 0.05);
        Assert.Equal(hottestC, year.Steps.Max(step => step.AirC), 0.05);
    }

    /// <summary>
    /// The method that makes hours of monthly means, fed with each file's own monthly means, on a plane facing south: yearly tilted irradiation and output
    /// within 5 %, share of energy above 800 W/m² within 2 points (issue 3). As found in 2026-11: within 2.4 %, 1.8 % and 1.6 points.
    /// </summary>
    [Theory]
    [InlineData("USA_AK_Anchorage")]
    [InlineData("USA_VT_Burlington")]
    [InlineData("USA_IL_Chicago")]
    [InlineData("USA_CO_Denver")]
    [InlineData("USA_CA_Los")]
    [InlineData("USA_AZ_Tucson")]
    [InlineData("USA_HI_Honolulu")]
    public void Hours_made_from_monthly_means_do_what_the_real_hours_do(string name)
    {
        WeatherYear real = Load(name);
        Place place = new(real.Place.LatitudeDeg, real.Place.LongitudeDeg, real.Place.ElevationM, null, null);
        WeatherYear made = SyntheticYear.Of(Means(real), place);
        Mount mount = new(Math.Round(0.8 * place.LatitudeDeg), 180, MountKind.OpenRack);
        (double realKWh, double realOutput, double realStrong) = Sums(real, mount);
        (double madeKWh, double madeOutput, double madeStrong) = Sums(made, mount);
        TestContext.Current.TestOutputHelper?.WriteLine($"{name}: tilted {(madeKWh / realKWh) - 1:P1}, cell-weighted {(madeOutput / realOutput) - 1:P1}, above 800 W/m2 {realStrong:P1} real, {madeStrong:P1} made");
        Assert.Equal(real.GlobalKWhPerM2, made.GlobalKWhPerM2, 0.0005 * real.GlobalKWhPerM2);
        Assert.InRange(madeKWh / realKWh, 0.95, 1.05);
        Assert.InRange(madeOutput / realOutput, 0.95, 1.05);
        Assert.InRange(madeStrong - realStrong, -0.02, 0.02);
    }

    /// <summary>
    /// How far the clear and dull days of a made year are from a real one's: the largest difference between the two distributions of daily clearness (sun on the flat
    /// over that outside the air), as Kolmogorov's statistic has it. As found in 2026-11, not tuned: 0.05 to 0.10 at the three dull places,
    /// 0.10 to 0.15 at the four sunny ones, whose real days crowd together.
    /// </summary>
    [Theory]
    [InlineData("USA_AK_Anchorage", 0.10)]
    [InlineData("USA_VT_Burlington", 0.06)]
    [InlineData("USA_IL_Chicago", 0.08)]
    [InlineData("USA_CO_Denver", 0.15)]
    [InlineData("USA_CA_Los", 0.15)]
    [InlineData("USA_AZ_Tucson", 0.11)]
    [InlineData("USA_HI_Honolulu", 0.12)]
    public void Clear_and_dull_days_are_spread_as_in_the_real_year(string name, double within)
    {
        WeatherYear real = Load(name);
        Place place = new(real.Place.LatitudeDeg, real.Place.LongitudeDeg, real.Place.ElevationM, null, null);
        double[] realDays = Clearness(real), madeDays = Clearness(SyntheticYear.Of(Means(real), place));
        double apart = realDays.Concat(madeDays).Max(k => Math.Abs(realDays.Count(day => day <= k) - madeDays.Count(day => day <= k)) / 365.0);
        TestContext.Current.TestOutputHelper?.WriteLine($"{name}: {apart:0.000} apart");
        Assert.InRange(apart, 0, within);
    }

    private static double[] Clearness(WeatherYear year) =>
        [.. year.Steps.Chunk(24).Select((hours, day) => hours.Sum(hour => hour.GlobalWPerM2) / 1000 / ExtraterrestrialDay.HorizontalKWhPerM2(year.Place.LatitudeDeg, day + 1))];

    /// <summary>
    /// Strong sun on the flat and tilted, the mean of nine made years for the hundredths of a degree beside the place: what is left when the chance of one made year is taken out.
    /// One year lies within 0.4 points of it two times in three. As found in 2026-11: within 1.9 points, the most at Los Angeles on the flat, whose dull mornings turn into cloudless afternoons.
    /// </summary>
    [Theory]
    [InlineData("USA_AK_Anchorage")]
    [InlineData("USA_VT_Burlington")]
    [InlineData("USA_IL_Chicago")]
    [InlineData("USA_CO_Denver")]
    [InlineData("USA_CA_Los")]
    [InlineData("USA_AZ_Tucson")]
    [InlineData("USA_HI_Honolulu")]
    public void Strong_sun_is_as_frequent_as_it_is(string name)
    {
        WeatherYear real = Load(name);
        Mount mount = new(Math.Round(0.8 * real.Place.LatitudeDeg), 180, MountKind.OpenRack);
        WeatherYear[] made = [.. Enumerable.Range(0, 9).Select(i => SyntheticYear.Of(Means(real), new Place(real.Place.LatitudeDeg, real.Place.LongitudeDeg + (0.01 * i), real.Place.ElevationM, null, null)))];
        double flat = made.Average(StrongOnTheFlat) - StrongOnTheFlat(real);
        double tilted = made.Average(year => Sums(year, mount).StrongShare) - Sums(real, mount).StrongShare;
        TestContext.Current.TestOutputHelper?.WriteLine($"{name}: {100 * flat:0.0} points on the flat, {100 * tilted:0.0} tilted");
        Assert.InRange(flat, -0.02, 0.02);
        Assert.InRange(tilted, -0.02, 0.02);
        Assert.InRange(StrongOnTheFlat(made[0]) - StrongOnTheFlat(real), -0.02, 0.02);
    }

    /// <summary>
    /// A fault of one file, so that nobody mends the reader or the sky for it: in Honolulu the sun of the nine months taken from years before 1991 stands an hour early.
    /// Global = beam · sine of elevation + diffuse holds there only with the sun an hour later; in all other months and files with the sun as it is.
    /// What faces east or west is a few % off in that file; what faces south hardly.
    /// </summary>
    [Theory]
    [InlineData("USA_HI_Honolulu", 9)]
    [InlineData("USA_AK_Anchorage", 0)]
    [InlineData("USA_VT_Burlington", 0)]
    [InlineData("USA_IL_Chicago", 0)]
    [InlineData("USA_CO_Denver", 0)]
    [InlineData("USA_CA_Los", 0)]
    [InlineData("USA_AZ_Tucson", 0)]
    public void Months_whose_sun_stands_an_hour_early_are_known(string name, int months)
    {
        WeatherYear real = Load(name);
        int early = 0;
        foreach (IGrouping<int, WeatherStep> month in real.Steps.GroupBy(step => step.Ends.AddHours(-0.5).Month))
        {
            bool isEarly = Misfit(real, month, 1) < 0.25 * Misfit(real, month, 0);
            Assert.True(isEarly || Misfit(real, month, 0) < 15);
            Assert.True(!isEarly || month.All(step => step.Ends.AddHours(-0.5).Year < 1991));
            early += isEarly ? 1 : 0;
        }

        Assert.Equal(months, early);
    }

    /// <summary>Root mean square of beam · sine of elevation + diffuse − global with the sun so many hours later, W/m².</summary>
    private static double Misfit(WeatherYear year, IEnumerable<WeatherStep> steps, double laterH)
    {
        SunPath path = new(Site.Of(year.Place.LatitudeDeg, year.Place.LongitudeDeg, year.Place.ElevationM));
        return Math.Sqrt(steps.Where(step => step.BeamNormalWPerM2 > 150).Average(step =>
        {
            SunPosition sun = path.At(SunClock.JulianDay(step.Ends.AddHours(laterH - 0.5)) - (year.UtcOffsetH / 24));
            double misfit = (step.BeamNormalWPerM2 * Math.Sin(sun.ElevationDeg * Math.PI / 180)) + step.DiffuseWPerM2 - step.GlobalWPerM2;
            return misfit * misfit;
        }));
    }

    private static double StrongOnTheFlat(WeatherYear year) =>
        year.Steps.Where(step => step.GlobalWPerM2 > 800).Sum(step => step.GlobalWPerM2) / year.Steps.Sum(step => step.GlobalWPerM2);

    private static (double KWh, double Output, double StrongShare) Sums(WeatherYear year, Mount mount)
    {
        SunPath path = new(Site.Of(year.Place.LatitudeDeg, year.Place.LongitudeDeg, year.Place.ElevationM));
        double sum = 0;
        double output = 0;
        double strong = 0;
        foreach (WeatherStep step in year.Steps)
        {
            SunPosition sun = path.At(SunClock.JulianDay(step.Ends.AddHours(-0.5)) - (year.UtcOffsetH / 24));
            SkyLight light = new(step.GlobalWPerM2, step.BeamNormalWPerM2, step.DiffuseWPerM2, 1361 / (sun.DistanceAu * sun.DistanceAu));
            double plane = TiltedPlane.Of(sun, light, mount.TiltDeg, TiltedPlane.IncidenceDeg(sun, mount.TiltDeg, mount.AzimuthDeg), 0.2, SkyModel.Perez).TotalWPerM2;
            sum += plane;
            strong += plane > 800 ? plane : 0;
            output += plane * (1 - (0.0038 * (CellTemperature.At(step.AirC, plane, step.WindMPerS, mount.Kind, null) - 25)));
        }

        return (sum / 1000, output / 1000, strong / sum);
    }

    /// <summary>A file's own monthly means.</summary>
    private static MonthlyClimate Means(WeatherYear year) => new(
    [
        .. year.Steps.GroupBy(step => step.Ends.AddHours(-0.5).Month).OrderBy(month => month.Key).Select(month =>
        {
            IGrouping<int, WeatherStep>[] days = [.. month.GroupBy(step => step.Ends.AddHours(-0.5).Day)];
            return new ClimateMonth(
                month.Key,
                month.Average(step => step.AirC),
                days.Average(day => day.Max(step => step.AirC) - day.Min(step => step.AirC)),
                50,
                month.Sum(step => step.GlobalWPerM2) / 1000 / days.Length);
        }),
    ]);

    private static WeatherYear Load(string name)
    {
        WeatherReading reading = WeatherFile.Load(Directory.GetFiles(SharedFiles.PathOrSkip("weather"), name + "*.epw").Single());
        Assert.Empty(reading.Faults);
        return reading.Year!;
    }
}
