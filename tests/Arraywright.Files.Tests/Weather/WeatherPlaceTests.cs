using System.Globalization;
using Arraywright.Climate;
using Arraywright.Files.Weather;

namespace Arraywright.Files.Tests.Weather;

/// <summary>Places where a day is not like other days, and files of another place than the plan's.</summary>
public sealed class WeatherPlaceTests
{
    /// <summary>
    /// Hours of a clear sun anywhere: 900 W/m² times the sine of its elevation in the middle of the hour, declination by P. I. Cooper, Solar Energy 12 (1969)
    /// 333, the equation of time left out (it stays within 17 minutes).
    /// </summary>
    private static List<string> Rows(double latitudeDeg, double longitudeDeg, double utcOffsetH)
    {
        List<string> rows = [];
        for (DateTime begins = new(2021, 1, 1); begins.Year == 2021; begins = begins.AddHours(1))
        {
            double declination = 23.45 * Math.PI / 180 * Math.Sin(2 * Math.PI * (284 + begins.DayOfYear) / 365);
            double hourAngle = (begins.Hour + 0.5 - utcOffsetH + (longitudeDeg / 15) - 12) * Math.PI / 12;
            double latitude = latitudeDeg * Math.PI / 180;
            double sine = (Math.Sin(latitude) * Math.Sin(declination)) + (Math.Cos(latitude) * Math.Cos(declination) * Math.Cos(hourAngle));
            rows.Add(string.Create(CultureInfo.InvariantCulture, $"{begins.AddHours(1):yyyy-MM-ddTHH:mm},{900 * Math.Max(0, sine):0.0},5"));
        }

        return rows;
    }

    private static WeatherReading Read(double latitudeDeg, double longitudeDeg, double utcOffsetH, Place? plan = null, Func<List<string>, IEnumerable<string>>? change = null) => WeatherCsvReader.Read(
        MadeWeather.Csv(
            (change ?? (rows => rows))(Rows(latitudeDeg, longitudeDeg, utcOffsetH)),
            "time,ghi W/m2,air C",
            string.Create(CultureInfo.InvariantCulture, $"# latitude: {latitudeDeg}\n# longitude: {longitudeDeg}\n# elevation: 100 m\n# utc offset: {utcOffsetH} h\n")),
        "there.csv",
        plan);

    [Theory]
    [InlineData(0, 36.8, 3)]
    [InlineData(-0.2, -78.5, -5)]
    [InlineData(-33.9, 18.4, 2)]
    [InlineData(-54.8, -68.3, -4)]
    [InlineData(69.7, 19, 1)]
    [InlineData(78.2, 15.6, 1)]
    [InlineData(-77.8, 166.7, 12)]
    [InlineData(90, 0, 0)]
    [InlineData(-17.8, 178, 12)]
    [InlineData(66.2, -179.9, 12)]
    [InlineData(-13.8, -171.8, -11)]
    [InlineData(52, 180, 12)]
    public void A_right_clock_is_believed_everywhere(double latitudeDeg, double longitudeDeg, double utcOffsetH)
    {
        WeatherReading reading = Read(latitudeDeg, longitudeDeg, utcOffsetH);
        Assert.Empty(reading.Faults);
        Assert.DoesNotContain("sun of", string.Join(' ', reading.Year!.Repairs), StringComparison.Ordinal);
        Assert.Equal(8760, reading.Year.Steps.Length);
        Assert.All(reading.Year.Steps, step => Assert.InRange(step.DiffuseWPerM2, 0, step.GlobalWPerM2));
    }

    /// <summary>From 21 November to 21 January the sun stays down at 78 degrees north, and from 21 May to 21 July it stays up.</summary>
    [Fact]
    public void Polar_night_is_dark_and_polar_day_is_not()
    {
        WeatherYear year = Read(78.2, 15.6, 1).Year!;
        Assert.All(year.Steps.Where(step => step.Ends.Month == 12), step => Assert.Equal(0, step.GlobalWPerM2 + step.BeamNormalWPerM2 + step.DiffuseWPerM2));
        Assert.All(year.Steps.Where(step => step.Ends.Month == 6), step => Assert.True(step.GlobalWPerM2 > 0));
    }

    [Theory]
    [InlineData(54.6, -3.1, 3, 3.2)]
    [InlineData(54.6, -3.1, -2, -1.8)]
    [InlineData(-33.9, 18.4, -6, -7.2)]
    [InlineData(0, 36.8, 0, -2.5)]
    public void A_time_zone_of_another_place_is_refused_in_the_line_of_the_place(double latitudeDeg, double longitudeDeg, double utcOffsetH, double wrongH)
    {
        WeatherReading reading = Read(latitudeDeg, longitudeDeg, utcOffsetH, change: _ => Rows(latitudeDeg, longitudeDeg, utcOffsetH - wrongH));
        Fault fault = Assert.Single(reading.Faults);
        Assert.Equal(1, fault.Line);
        Assert.Contains($"the middle of the sunshine {Math.Abs(wrongH):0.0} h {(wrongH > 0 ? "early" : "late")}", fault.Found, StringComparison.Ordinal);
    }

    /// <summary>Four months stamped by the beginnings of their hours, as in typical years put together from different sources. May begins in line 5 + 1 + 120 × 24.</summary>
    [Fact]
    public void Months_that_are_an_hour_early_are_named_with_their_first_line_and_taken_as_they_stand()
    {
        List<string> late = Rows(21.3, -157.9, -10), early = Rows(21.3, -157.9, -11);
        WeatherReading reading = Read(21.3, -157.9, -10, change: _ => late.Select((row, i) => row[5..7] is "05" or "06" or "07" or "10" ? early[i] : row));
        string told = Assert.Single(reading.Year!.Repairs, repair => repair.StartsWith("The sun of May, June, July, October is ", StringComparison.Ordinal));
        Assert.EndsWith(" minutes early (first in line 2886), as where stamps are the beginnings of steps; it was taken as it stands.", told, StringComparison.Ordinal);
        Assert.Equal(late[2000].Split(',')[1], reading.Year.Steps[2000].GlobalWPerM2.ToString("0.0", CultureInfo.InvariantCulture));
    }

    /// <summary>Mornings without clouds and grey afternoons, as under a mountain: one day in five is clear, and by it the clock is known.</summary>
    [Fact]
    public void Clouds_of_the_afternoon_are_not_taken_for_a_wrong_clock()
    {
        WeatherReading reading = Read(21.3, -157.9, -10, change: rows => rows.Select((row, i) => (i / 24) % 5 > 0 && i % 24 >= 12 && row.Split(',') is var f ? $"{f[0]},{double.Parse(f[1], CultureInfo.InvariantCulture) * 0.3:0.0},{f[2]}" : row));
        Assert.DoesNotContain("sun of", string.Join(' ', reading.Year!.Repairs), StringComparison.Ordinal);
        Assert.Equal(8760, reading.Year.Steps.Length);
    }

    /// <summary>2 March begins in line 5 + 1 + 60 × 24.</summary>
    [Fact]
    public void A_day_without_any_sun_is_refused_with_its_line()
    {
        Fault fault = Assert.Single(Read(54.6, -3.1, 0, change: rows => rows.Select(row => row.StartsWith("2021-03-02", StringComparison.Ordinal) ? row[..16] + ",0,5" : row)).Faults);
        Assert.Equal((1446, "no sun on 03-02"), (fault.Line, fault.Found));
    }

    [Fact]
    public void A_file_of_another_half_of_the_earth_than_the_plan_is_refused() =>
        Assert.Contains("km from the plan's place", Assert.Single(Read(0.5, 36.8, 3, new Place(-33.9, 36.8, 100, null, "there.csv")).Faults).Found, StringComparison.Ordinal);

    /// <summary>6.2 degrees of longitude at 54.6 N: by hand 6.2 × 111.2 km × cos 54.6° = 399 km along the parallel, the great circle a little less.</summary>
    [Theory]
    [InlineData(3.1, "It is 399 km from the plan's place.")]
    [InlineData(-3.2, "")]
    public void A_file_from_farther_off_is_told_of(double planLongitudeDeg, string says)
    {
        string told = string.Join(' ', Read(54.6, -3.1, 0, new Place(54.6, planLongitudeDeg, 100, null, "there.csv")).Year!.Repairs);
        Assert.True(says.Length == 0 ? !told.Contains("plan's place", StringComparison.Ordinal) : told.Contains(says, StringComparison.Ordinal), told);
    }

    [Fact]
    public void A_plan_that_lies_much_higher_is_told_so_unless_its_height_is_only_assumed()
    {
        Place plan = new(54.6, -3.1, 900, null, "there.csv");
        Assert.Contains("800 m higher", string.Join(' ', Read(54.6, -3.1, 0, plan).Year!.Repairs), StringComparison.Ordinal);
        Assert.DoesNotContain("higher", string.Join(' ', Read(54.6, -3.1, 0, plan with { IsElevationAssumed = true }).Year!.Repairs), StringComparison.Ordinal);
    }
}
