using System.Text;
using Arraywright.Climate;
using Arraywright.Files.Weather;

namespace Arraywright.Files.Tests.Weather;

public sealed class WeatherCsvReaderTests
{
    private static WeatherYear Good(string text, Place? plan = null)
    {
        WeatherReading reading = WeatherCsvReader.Read(text, "farm.csv", plan);
        Assert.Empty(reading.Faults);
        return reading.Year!;
    }

    [Fact]
    public void A_plain_table_is_read_as_it_stands()
    {
        WeatherYear year = Good(MadeWeather.Csv(MadeWeather.CsvRows()));
        Assert.Equal(8760, year.Steps.Length);
        Assert.Equal(new WeatherPlace(54.6, -3.1, 210), year.Place);
        Assert.Equal((1, 0), (year.StepH, year.UtcOffsetH));
        DateTime noon = new(2021, 6, 21, 13, 0, 0);
        double sun = MadeWeather.Sun(noon.AddHours(-1));
        Assert.Equal(new WeatherStep(noon, sun, sun / 2, sun / 2, 10.5, 3.5), year.Steps.Single(step => step.Ends == noon));
        Assert.Empty(year.Repairs);
        Assert.Equal("made up for tests (file farm.csv)", year.Source);
    }

    [Fact]
    public void Columns_may_stand_in_any_order_and_units_are_converted()
    {
        IEnumerable<string> rows = MadeWeather.CsvRows().Select(row => row.Split(',')).Select(f => $"36;50.9;{f[0]};{double.Parse(f[1]) / 1000};x");
        WeatherYear year = Good(MadeWeather.Csv(rows, "Wind [km/h];air (F);time;global kW/m2;remark"));
        WeatherStep noon = year.Steps[(171 * 24) + 12];
        Assert.Equal(10, noon.WindMPerS, 1e-9);
        Assert.Equal(10.5, noon.AirC, 1e-9);
        Assert.Equal(MadeWeather.Sun(noon.Ends.AddHours(-1)), noon.GlobalWPerM2, 1e-9);
        Assert.Contains("\"remark\" is not used", string.Join(' ', year.Repairs), StringComparison.Ordinal);
    }

    [Fact]
    public void Kelvin_is_taken_off_where_the_heading_says_so() =>
        Assert.Equal(10.5, Good(MadeWeather.Csv(MadeWeather.CsvRows().Select(row => row.Replace(",10.5,", ",283.65,", StringComparison.Ordinal)), "time,ghi W/m2,dni W/m2,dhi W/m2,air K,wind m/s")).Steps[7].AirC, 1e-9);

    /// <summary>Times of the beginning are the same year as times of the end.</summary>
    [Fact]
    public void Times_that_begin_the_steps_are_named_so()
    {
        IEnumerable<string> rows = MadeWeather.CsvRows().Select(row => $"{DateTime.Parse(row[..16]).AddHours(-1):yyyy-MM-dd HH:mm:ss}{row[16..]}");
        Assert.Equal(Good(MadeWeather.Csv(MadeWeather.CsvRows())).Steps, Good(MadeWeather.Csv(rows, "time begins,ghi W/m2,dni W/m2,dhi W/m2,air C,wind m/s")).Steps);
    }

    /// <summary>Universal time at 123.1 E, where the clock is eight hours ahead: 2021-01-01T00 UTC is 08 h there, and the last eight hours are those before.</summary>
    [Fact]
    public void Universal_time_becomes_the_standard_time_of_the_place()
    {
        string remarks = MadeWeather.Remarks.Replace("-3.1", "123.1", StringComparison.Ordinal).Replace("# utc offset: 0 h\n", "", StringComparison.Ordinal);
        IEnumerable<string> rows = MadeWeather.Hours().Select(hour => $"{hour.Begins.AddHours(1):yyyy-MM-ddTHH:mm}Z,{MadeWeather.Sun(hour.Begins.AddHours(8))},10");
        WeatherYear year = Good(MadeWeather.Csv(rows, "time,ghi W/m2,air C", remarks));
        Assert.Equal(8, year.UtcOffsetH);
        Assert.Equal(Enumerable.Range(1, 8760).Select(hour => new DateTime(2021, 1, 1).AddHours(hour)), year.Steps.Select(step => step.Ends));
        Assert.All(year.Steps, step => Assert.Equal(MadeWeather.Sun(step.Ends.AddHours(-1)), step.GlobalWPerM2, 25.0));
        Assert.Contains("8760 × times moved to the standard time UTC+8", string.Join(' ', year.Repairs), StringComparison.Ordinal);
    }

    [Fact]
    public void Summer_time_is_put_back_to_standard_time()
    {
        // The clock goes forward at 1 h on 28 March 2021 and back on 31 October.
        IEnumerable<string> rows = MadeWeather.CsvRows().Select(row =>
        {
            var ends = DateTime.Parse(row[..16]);
            bool summer = ends > new DateTime(2021, 3, 28, 1, 0, 0) && ends <= new DateTime(2021, 10, 31, 1, 0, 0);
            return $"{ends.AddHours(summer ? 1 : 0):yyyy-MM-ddTHH:mm}{(summer ? "+01:00" : "+00:00")}{row[16..]}";
        });
        WeatherYear year = Good(MadeWeather.Csv(rows, remarks: MadeWeather.Remarks.Replace("# utc offset: 0 h\n", "", StringComparison.Ordinal)));
        Assert.Equal(Good(MadeWeather.Csv(MadeWeather.CsvRows())).Steps, year.Steps);
    }

    [Fact]
    public void Where_the_table_names_no_place_the_plans_stands_in()
    {
        Place plan = new(54.6, -3.1, 210, null, "farm.csv");
        Assert.Equal(new WeatherPlace(54.6, -3.1, 210), Good(MadeWeather.Csv(MadeWeather.CsvRows(), remarks: ""), plan).Place);
    }

    [Fact]
    public void Twelve_months_from_July_on_are_turned_to_begin_in_January()
    {
        List<string> rows = [.. MadeWeather.CsvRows(2020).Where(row => string.CompareOrdinal(row[..16], "2020-07-01T00:00") > 0), .. MadeWeather.CsvRows(2021).Where(row => string.CompareOrdinal(row[..16], "2021-07-01T00:00") <= 0)];
        WeatherYear year = Good(MadeWeather.Csv(rows));
        Assert.Equal(8760, year.Steps.Length);
        Assert.Equal(new DateTime(2021, 1, 1, 1, 0, 0), year.Steps[0].Ends);
        Assert.Equal(new DateTime(2021, 1, 1, 0, 0, 0), year.Steps[^1].Ends);
    }

    [Fact]
    public void Minutes_are_read_as_minutes()
    {
        IEnumerable<string> rows = MadeWeather.Hours().SelectMany(hour => Enumerable.Range(1, 60).Select(minute => $"{hour.Begins.AddMinutes(minute):yyyy-MM-ddTHH:mm},{hour.SunWPerM2},0,{hour.SunWPerM2},10,2"));
        WeatherYear year = Good(MadeWeather.Csv(rows));
        Assert.Equal(525_600, year.Steps.Length);
        Assert.Equal(1 / 60.0, year.StepH);
    }

    /// <summary>D. G. Erbs's diffuse share at clearness 0.5 is 0.659150 (reference pack, recomputed there); elsewhere the split only has to keep the whole.</summary>
    [Fact]
    public void Global_sun_alone_is_split_and_told()
    {
        WeatherYear year = Good(MadeWeather.Csv(MadeWeather.CsvRows().Select(row => string.Join(',', row.Split(',')[0], row.Split(',')[1], "10", "2")), "time,ghi W/m2,air C,wind m/s"));
        Assert.All(year.Steps, step =>
        {
            Assert.InRange(step.DiffuseWPerM2, 0, step.GlobalWPerM2);
            Assert.True(step.GlobalWPerM2 == 0 ? step.BeamNormalWPerM2 == 0 : step.DiffuseWPerM2 > 0.1 * step.GlobalWPerM2);
        });
        Assert.Contains(year.Steps, step => step.BeamNormalWPerM2 > 300);
        Assert.Contains("8760 × beam and diffuse sun split from the global after Erbs", string.Join(' ', year.Repairs), StringComparison.Ordinal);
    }

    [Fact]
    public void Beam_and_diffuse_without_global_make_it()
    {
        WeatherYear year = Good(MadeWeather.Csv(MadeWeather.CsvRows().Select(row => string.Join(',', row.Split(',')[0], "0", row.Split(',')[1], "10")), "time,dni W/m2,dhi W/m2,air C"));
        Assert.All(year.Steps, step => Assert.Equal(step.DiffuseWPerM2, step.GlobalWPerM2, 1e-9));
        Assert.Contains("missing wind taken as 1 m/s", string.Join(' ', year.Repairs), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_written_is_read_back()
    {
        WeatherYear year = Good(MadeWeather.Csv(MadeWeather.CsvRows(2020).Where((_, i) => i != 3000), remarks: MadeWeather.Remarks + "# coldest: -19.5 C\n"));
        WeatherYear again = Good(WeatherCsvWriter.Write(year));
        Assert.Equal(year.Steps, again.Steps);
        Assert.NotEmpty(year.Repairs);
        Assert.Equal(year.Repairs, again.Repairs);
        Assert.Equal((year.Place, year.UtcOffsetH, year.StepH, year.ColdestAirC), (again.Place, again.UtcOffsetH, again.StepH, again.ColdestAirC));
        Assert.Equal(-19.5, again.ColdestAirC);
    }

    private static readonly List<string> Rows = MadeWeather.CsvRows();

    /// <summary>What to change, the row it is changed in (null: the whole text), and what is mended.</summary>
    public static TheoryData<int, string, string, string> Mended => new()
    {
        { 12, ",10.5,", ",,", "1 × missing air temperature drawn straight" },
        { 12, ",10.5,", ",-999,", "1 × missing air temperature drawn straight" },
        { 12, ",10.5,", ",NaN,", "1 × missing air temperature drawn straight" },
        { 12, ",3.5", ",", "1 × missing wind drawn straight" },
        { 2, "T03:00,0,", "T03:00,-4,", "1 × global irradiance a little under zero taken as zero (first in line 9)" },
        { 2, "T03:00,0,0,0", "T03:00,0,-1,-2", "1 × beam irradiance a little under zero" },
        { 2, "T03:00,0,0,0", "T03:00,0,,", "1 × beam and diffuse sun split" },
        { 2, "T03:00,0,0,0", "T03:00,,0,0", "1 × one of global, beam and diffuse sun worked out" },
        { 2, "T03:00,0,0,0", "T03:00,0,,0", "1 × one of global, beam and diffuse sun worked out" },
        { 2, "2021-01-01T03:00,0,0,0,10.5,3.5", "", "1 × rows that are not in the file added" },
        { 0, "2021-01-01T01:00,0,0,0,10.5,3.5", "", "1 × rows that are not in the file added" },
        { 2, "2021-01-01T03:00,0,0,0,10.5,3.5", "2021-01-01T03:00,0,0,0,10.5,3.5\n2021-01-01T03:00,0,0,0,10.5,3.5", "1 × rows with the time of the row before left out (first in line 10)" },
    };

    [Theory]
    [MemberData(nameof(Mended))]
    public void What_a_rule_allows_is_mended_and_told(int row, string old, string changed, string told)
    {
        Assert.Contains(old, Rows[row], StringComparison.Ordinal);
        WeatherYear year = Good(MadeWeather.Csv(Rows.Select((text, i) => i == row ? text.Replace(old, changed, StringComparison.Ordinal) : text)));
        Assert.Equal(8760, year.Steps.Length);
        Assert.Contains(told, string.Join(' ', year.Repairs), StringComparison.Ordinal);
        Assert.Equal(year.Steps.Select(step => step.Ends).Order(), year.Steps.Select(step => step.Ends));
    }

    public static TheoryData<string, int, string> Refused
    {
        get
        {
            const string Heading = "time,ghi W/m2,dni W/m2,dhi W/m2,air C,wind m/s";
            string At(int row, string old, string changed) => MadeWeather.Csv(Rows.Select((text, i) => i == row ? text.Replace(old, changed, StringComparison.Ordinal) : text));
            string All(Func<string, string> change) => MadeWeather.Csv(Rows.Select(change));
            string Head(string heading) => MadeWeather.Csv(Rows, heading);
            string Remark(string old, string changed) => MadeWeather.Csv(Rows, Heading, MadeWeather.Remarks.Replace(old, changed, StringComparison.Ordinal));
            return new TheoryData<string, int, string>
            {
                { "", 1, "no heading" },
                { "\n\n# only a remark\n", 1, "no heading" },
                { MadeWeather.Csv([]), 1, "no rows of weather" },
                { "nonsense", 1, "no column \"time\"" },
                { Head("time,gih W/m2,dni W/m2,sky W/m2,air C,wind m/s"), 6, "did you mean that by \"gih W/m2\"" },
                { Head("time,ghi,dni W/m2,dhi W/m2,air C,wind m/s"), 6, "\"ghi\" without a unit" },
                { Head("time,ghi J/m2,dni W/m2,dhi W/m2,air C,wind m/s"), 6, "the unit \"J/m2\"" },
                { Head("time,ghi W/m2,dni W/m2,dhi W/m2,air R,wind m/s"), 6, "the unit \"R\"" },
                { Head("time,ghi W/m2,ghi W/m2,dhi W/m2,air C,wind m/s"), 6, "twice" },
                { Head("time,ghi W/m2,dni W/m2,dhi W/m2,wet bulb C,wind m/s"), 6, "no column \"air C\"" },
                { Head("ends at,ghi W/m2,dni W/m2,dhi W/m2,air C,wind m/s"), 6, "no column \"time\"" },
                { Remark("# latitude: 54.6\n", ""), 1, "no place" },
                { Remark("54.6", "154.6"), 2, "latitude \"154.6\"" },
                { Remark("-3.1", "west"), 3, "longitude \"west\"" },
                { Remark("0 h", "15 h"), 5, "utc offset \"15 h\"" },
                { Remark("54.6", "-54.6"), 2, "most sun in the months May to July" },
                { Remark("-3.1", "123.1"), 2, "the middle of the sunshine" },
                { Remark("offset: 0 h", "offset: -5 h"), 2, "the middle of the sunshine" },
                { Remark("offset: 0 h", "offset: 12 h"), 2, "the middle of the sunshine" },
                { At(20, "2021-01-01T21:00", "1 January 9 pm"), 27, "the time \"1 January 9 pm\"" },
                { At(20, "2021-01-01T21:00", "2021-02-30T21:00"), 27, "the time" },
                { At(20, "2021-01-01T21:00", "2021-01-01T25:00"), 27, "the time" },
                { At(20, "2021-01-01T21:00", "2021-01-01T21:00+99"), 27, "the time" },
                { At(20, "2021-01-01T21:00", "2021-01-01T21:07"), 27, "times 60 minutes apart" },
                { At(20, ",10.5,", ",10.5.5,"), 27, "found \"10.5.5\"" },
                { At(20, ",10.5,", ",1e999,"), 27, "a number" },
                { At(20, ",10.5,3.5", ""), 27, "4 fields" },
                { At(20, ",10.5,", ",283.65,"), 27, "kelvin" },
                { At(20, ",10.5,", ",88,"), 27, "Fahrenheit" },
                { At(20, ",3.5", ",-3.5"), 27, "wind -3.5" },
                { At(20, "T21:00,0,", "T21:00,-400,"), 27, "global irradiance -400" },
                { At(20, "T21:00,0,", "T21:00,4000,"), 27, "global irradiance 4000" },
                { At(20, "2021-01-01T21:00", "2021-01-01T11:00"), 27, "rows in order of time" },
                { All(row => string.Join(',', row.Split(',')[..4]) + ",,3.5"), 7, "no air temperature in the whole file" },
                { All(row => row[..16] + ",0,0,0,10,2"), 7, "no sun in the whole year" },
                { All(row => row[..16] + $",{int.Parse(row.Split(',')[1]) / 10.0},0,0,10,2"), 7, "kWh/m² of sun in the year" },
                { MadeWeather.Csv(Rows.Take(5000)), 5006, "weather of 5000 hours" },
                { MadeWeather.Csv(Rows.Take(100)) + "2021-01-05T0", 107, "the time" },
                { MadeWeather.Csv([.. Rows.Take(100), .. Rows.Skip(110)]), 107, "10 rows missing" },
                { MadeWeather.Csv([.. Rows.Skip(100).Take(100), .. Rows.Take(100), .. Rows.Skip(200)]), 107, "rows in order of time" },
                { MadeWeather.Csv([.. Rows, .. MadeWeather.CsvRows(2022)]), 17526, "weather of 17520 hours" },
                { MadeWeather.Csv(Rows.Select((row, i) => i is >= 300 and < 310 ? row.Replace(",10.5,", ",,", StringComparison.Ordinal) : row)), 307, "10 rows without air temperature" },
            };
        }
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_cannot_be_trusted_is_refused_with_its_line(string text, int line, string says)
    {
        WeatherReading reading = WeatherCsvReader.Read(text, "farm.csv");
        Assert.Null(reading.Year);
        Assert.Contains(says, string.Join('\n', reading.Faults), StringComparison.Ordinal);
        Assert.Equal(line, reading.Faults[0].Line);
    }

    [Fact]
    public void A_decimal_comma_is_told_of() =>
        Assert.Contains(
            "decimal point, not a comma",
            WeatherCsvReader.Read(MadeWeather.Csv(Rows.Select(row => row.Replace(',', ';').Replace('.', ',')), "time;ghi W/m2;dni W/m2;dhi W/m2;air C;wind m/s"), "farm.csv").Faults[0].Hint,
            StringComparison.Ordinal);

    [Fact]
    public void Stamps_of_the_beginning_that_are_not_named_so_are_pointed_out() =>
        Assert.Contains(
            "The sun of every month is 60 minutes early (first in line 7), as where stamps are the beginnings of steps",
            string.Join(' ', Good(MadeWeather.Csv(Rows, remarks: MadeWeather.Remarks.Replace("-3.1", "-15", StringComparison.Ordinal))).Repairs),
            StringComparison.Ordinal);

    [Fact]
    public void Random_changes_give_faults_or_sound_weather()
    {
        Random random = new(23);
        string good = MadeWeather.Csv(Rows);
        for (int round = 0; round < 150; round++)
        {
            StringBuilder changed = new(good);
            for (int i = 0; i < 1 + random.Next(6); i++)
            {
                int at = random.Next(2) == 0 ? random.Next(400) : random.Next(changed.Length);
                switch (random.Next(4))
                {
                    case 0: changed[at] = (char)random.Next(32, 127); break;
                    case 1: changed.Remove(at, Math.Min(random.Next(1, 200), changed.Length - at)); break;
                    case 2: changed.Insert(at, "9,-\n,"); break;
                    default: changed.Insert(at, changed.ToString(random.Next(changed.Length - 300), random.Next(300))); break;
                }
            }

            WeatherReading reading = WeatherFile.ReadBytes(Encoding.UTF8.GetBytes(changed.ToString()), "farm.csv");
            Assert.Equal(reading.Year is null, reading.Faults.Count > 0);
            Assert.All(reading.Faults, fault => Assert.True(fault is { Line: > 0, Column: > 0, Found.Length: > 0, Expected.Length: > 0 }));
            Assert.True(reading.Year is null || reading.Year.Steps.Length is 8760 or 8784 || reading.Year.StepH < 1);
        }
    }
}
