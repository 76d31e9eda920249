using System.Globalization;
using System.Text;
using Arraywright.Climate;
using Arraywright.Files.Weather;

namespace Arraywright.Files.Tests.Weather;

public sealed class EpwReaderTests
{
    private const string Header = "LOCATION,Hill Farm,-,-,made up for tests,000000,54.6,-3.1,0.0,210.0\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,made up\nCOMMENTS 2,\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n";

    /// <summary>A plain made-up year: a half sine of sun from 6 to 18 h, stronger in summer.</summary>
    private static List<string> Rows(int year = 2021)
    {
        List<string> rows = [];
        for (DateTime day = new(year, 1, 1); day.Year == year; day = day.AddDays(1))
        {
            for (int hour = 1; hour <= 24; hour++)
            {
                double strength = 400 - (300 * Math.Cos(2 * Math.PI * (day.DayOfYear + 10) / 365));
                double sun = Math.Max(0, strength * Math.Sin(Math.PI * (hour - 6.5) / 12));
                rows.Add(Row(day, hour, 60, 10, sun));
            }
        }

        return rows;
    }

    private static string Row(DateTime day, int hour, int minute, double air, double sun) => string.Create(
        CultureInfo.InvariantCulture,
        $"{day.Year},{day.Month},{day.Day},{hour},{minute},?9?9,{air:0.0},2.0,60,98800,0,0,300,{sun:0},{sun / 2:0},{sun / 2:0},0,0,0,0,180,3.5,0,0,0,0,0,0,0,0,0,0,0,0,0");

    private static string Text(IEnumerable<string> rows) => Header + string.Join('\n', rows) + "\n";

    private static WeatherYear Good(string text)
    {
        WeatherReading reading = EpwReader.Read(text, "farm.epw");
        Assert.Empty(reading.Faults);
        return reading.Year!;
    }

    [Fact]
    public void A_plain_year_is_read_as_it_stands()
    {
        WeatherYear year = Good(Text(Rows()));
        Assert.Equal(8760, year.Steps.Length);
        Assert.Equal(new WeatherPlace(54.6, -3.1, 210), year.Place);
        Assert.Equal(new DateTime(2021, 1, 1, 1, 0, 0), year.Steps[0].Ends);
        Assert.Equal(new DateTime(2022, 1, 1, 0, 0, 0), year.Steps[^1].Ends);
        Assert.Equal(3.5, year.Steps[5].WindMPerS);
        Assert.Empty(year.Repairs);
        Assert.Contains("Hill Farm", year.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Windows_line_ends_a_byte_order_mark_and_a_leap_day_are_simply_read()
    {
        Assert.Equal(8760, Good("\uFEFF" + Text(Rows()).Replace("\n", "\r\n", StringComparison.Ordinal)).Steps.Length);
        Assert.Equal(8784, Good(Text(Rows(2020))).Steps.Length);
    }

    [Fact]
    public void Records_within_the_hour_are_shorter_steps()
    {
        IEnumerable<string> halves = Rows().SelectMany(row => new[] { row.Replace(",60,?9", ",30,?9", StringComparison.Ordinal), row });
        WeatherYear year = Good(Text(halves).Replace("DATA PERIODS,1,1", "DATA PERIODS,1,2", StringComparison.Ordinal));
        Assert.Equal(0.5, year.StepH);
        Assert.Equal(new DateTime(2021, 1, 1, 0, 30, 0), year.Steps[0].Ends);
        Assert.Equal(17520, year.Steps.Length);
    }

    [Fact]
    public void Months_of_different_years_follow_each_other_in_a_typical_year()
    {
        List<string> rows = Rows();
        Assert.Equal(8760, Good(Text(rows.Select((row, i) => i >= 744 && i < 1416 ? row.Replace("2021,", "1998,", StringComparison.Ordinal) : row))).Steps.Length);
    }

    [Fact]
    public void What_a_rule_allows_is_mended_and_told()
    {
        List<string> rows = Rows();
        rows[12] = Row(new(2021, 1, 1), 13, 60, 99.9, 0).Replace(",300,0,0,0", ",300,9999,9999,9999", StringComparison.Ordinal);
        rows[100] = rows[100].Replace(",300,0,0,0", ",300,-3,0,0", StringComparison.Ordinal);
        rows.Insert(200, rows[199]);
        WeatherYear year = Good(Text(rows));

        Assert.Equal(8760, year.Steps.Length);
        Assert.Equal((year.Steps[11].GlobalWPerM2 + year.Steps[13].GlobalWPerM2) / 2, year.Steps[12].GlobalWPerM2, 1e-9);
        Assert.Equal(10, year.Steps[12].AirC);
        Assert.Equal(3, year.Repairs.Length);
    }

    public static TheoryData<string, string, int> Bad
    {
        get
        {
            List<string> good = Rows();
            string Changed(int index, string row) => Text(good.Select((old, i) => i == index ? row : old));
            string All(Func<string, string> change) => Text(good.Select(change));
            return new TheoryData<string, string, int>
            {
                { "", "no line LOCATION", 1 },
                { "nonsense\n", "no line LOCATION", 1 },
                { Header, "no rows of weather", 1 },
                { Text(good).Replace(",54.6,", ",154.6,", StringComparison.Ordinal), "latitude \"154.6\"", 1 },
                { Text(good).Replace(",-3.1,", ",west,", StringComparison.Ordinal), "longitude \"west\"", 1 },
                { Text(good).Replace(",0.0,210.0", ",99,210.0", StringComparison.Ordinal), "time zone \"99\"", 1 },
                { Text(good.Take(5000)), "weather of 5000 hours", 5008 },
                { Text(good.Skip(24)), "weather of 8736 hours", 8744 },
                { Changed(50, "2021,1,3,3,60,?9,10.0"), "7 fields", 59 },
                { Changed(50, good[50].Replace("2021,1,3,", "2021,2,31,", StringComparison.Ordinal)), "the time", 59 },
                { Changed(50, good[50].Replace("2021,1,3,3,", "2021,1,3,25,", StringComparison.Ordinal)), "the time", 59 },
                { Changed(50, good[50].Replace("10.0,2.0", "warm,2.0", StringComparison.Ordinal)), "a field that is no number", 59 },
                { Changed(50, good[50].Replace("10.0,2.0", "NaN,2.0", StringComparison.Ordinal)), "a field that is no number", 59 },
                { All(row => row.Replace(",10.0,2.0", ",283.2,2.0", StringComparison.Ordinal)), "283.2", 9 },
                { Changed(60, good[60].Replace(",300,", ",300,-500", StringComparison.Ordinal)), "global irradiance", 69 },
                { Text([.. good.Take(100), .. good.Skip(101).Take(10), good[100], .. good.Skip(111)]), "rows in order of time", 119 },
                { All(row => Row(new(int.Parse(row.Split(',')[0]), int.Parse(row.Split(',')[1]), int.Parse(row.Split(',')[2])), int.Parse(row.Split(',')[3]), 60, 10, 0)), "no sun in the whole year", 8768 },
                { Text(good).Replace(",54.6,", ",-54.6,", StringComparison.Ordinal), "most sun in the months May to July", 1 },
                { Text(good).Replace(",-3.1,0.0", ",-3.1,-8.0", StringComparison.Ordinal), "the middle of the sunshine", 1 },
                { Text(good).Replace(",-3.1,", ",123.1,", StringComparison.Ordinal), "the middle of the sunshine", 1 },
                { Text(good.Select((row, i) => i is >= 300 and < 310 ? Row(new(2021, 1, 13), (i % 24) + 1, 60, 99.9, 0) : row)), "rows without air temperature", 309 },
                { All(row => row.Replace(",10.0,2.0", ",99.9,2.0", StringComparison.Ordinal)), "no air temperature in the whole file", 9 },
            };
        }
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_cannot_be_trusted_is_refused_with_its_line(string text, string found, int line)
    {
        WeatherReading reading = EpwReader.Read(text, "farm.epw");
        Assert.Null(reading.Year);
        Fault fault = Assert.Single(reading.Faults.Take(1));
        Assert.Contains(found, fault.ToString(), StringComparison.Ordinal);
        Assert.Equal(line, fault.Line);
    }

    [Fact]
    public void A_kelvin_file_is_told_what_it_looks_like() =>
        Assert.Contains(
            "kelvin",
            EpwReader.Read(Text(Rows().Select(row => row.Replace(",10.0,2.0", ",283.2,2.0", StringComparison.Ordinal))), "farm.epw").Faults[0].Hint,
            StringComparison.Ordinal);

    /// <summary>Bytes changed at random never crash the reader, and what it accepts is finite.</summary>
    [Fact]
    public void Random_changes_never_crash_it()
    {
        Random random = new(11);
        string good = Text(Rows());
        for (int round = 0; round < 120; round++)
        {
            StringBuilder changed = new(good);
            for (int i = 0; i < 1 + random.Next(6); i++)
            {
                int at = random.Next(2) == 0 ? random.Next(Header.Length) : random.Next(changed.Length);
                switch (random.Next(3))
                {
                    case 0: changed[at] = (char)random.Next(32, 127); break;
                    case 1: changed.Remove(at, Math.Min(random.Next(1, 200), changed.Length - at)); break;
                    default: changed.Insert(at, "9,-\n,"); break;
                }
            }

            WeatherReading reading = EpwReader.Read(changed.ToString(), "farm.epw");
            Assert.True(reading.Year is null == reading.Faults.Count > 0);
            Assert.All(reading.Faults, fault => Assert.True(fault.Line > 0 && fault.Column > 0));
        }
    }

    [Theory]
    [InlineData("no-such-file.epw", "no such file")]
    [InlineData(".", "a folder")]
    public void What_cannot_be_opened_is_a_fault(string path, string found) =>
        Assert.Contains(found, WeatherFile.Load(path).Faults[0].Found, StringComparison.Ordinal);
}
