using System.Text;
using Arraywright.Climate;
using Arraywright.Files.Weather;

namespace Arraywright.Files.Tests.Weather;

public sealed class NasaPowerReaderTests
{
    private static WeatherReading Read(string json) => NasaPowerReader.ReadHourly(Encoding.UTF8.GetBytes(json), "power-2021.json");

    private static WeatherYear Good(string json)
    {
        WeatherReading reading = Read(json);
        Assert.Empty(reading.Faults);
        return reading.Year!;
    }

    [Theory]
    [InlineData(-3.1, 0)]
    [InlineData(146.3, 10)]
    [InlineData(-118.4, -8)]
    [InlineData(179.9, 12)]
    [InlineData(-179.9, -12)]
    public void Universal_time_becomes_the_standard_time_of_the_longitude(double longitudeDeg, double offsetH)
    {
        WeatherYear year = Good(MadeWeather.PowerJson(longitudeDeg: longitudeDeg));
        Assert.Equal(offsetH, year.UtcOffsetH);
        Assert.Equal(new WeatherPlace(54.6, longitudeDeg, 210.5), year.Place);
        Assert.Equal(Enumerable.Range(1, 8760).Select(hour => new DateTime(2021, 1, 1).AddHours(hour)), year.Steps.Select(step => step.Ends));
        WeatherStep noon = year.Steps[(180 * 24) + 12];
        Assert.Equal(MadeWeather.Sun(noon.Ends.AddHours(-1)), noon.GlobalWPerM2);
        Assert.Equal((10.5, 3.5), (noon.AirC, noon.WindMPerS));
    }

    [Fact]
    public void Solar_time_is_left_as_it_is() =>
        Assert.Equal(MadeWeather.Hours().Select(hour => hour.SunWPerM2), Good(MadeWeather.PowerJson(longitudeDeg: 146.3, clock: "LST")).Steps.Select(step => step.GlobalWPerM2));

    [Fact]
    public void A_leap_year_has_its_leap_day() => Assert.Equal(8784, Good(MadeWeather.PowerJson(2020, 146.3)).Steps.Length);

    [Fact]
    public void Megajoules_an_hour_are_watts_all_the_same()
    {
        string json = MadeWeather.PowerJson(change: (name, _, value) => name.StartsWith("ALL", StringComparison.Ordinal) ? value * 0.0036 : value)
            .Replace("\"parameters\":{", "\"parameters\":{\"ALLSKY_SFC_SW_DWN\":{\"units\":\"MJ/hr\"},\"ALLSKY_SFC_SW_DNI\":{\"units\":\"MJ/hr\"},\"ALLSKY_SFC_SW_DIFF\":{\"units\":\"MJ/hr\"},", StringComparison.Ordinal);
        Assert.Equal(MadeWeather.Hours().Select(hour => hour.SunWPerM2), Good(json).Steps.Select(step => step.GlobalWPerM2), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void A_few_fill_values_are_mended_and_told()
    {
        WeatherYear year = Good(MadeWeather.PowerJson(change: (name, begins, value) => name != "WS10M" && begins.DayOfYear == 100 && begins.Hour is 11 or 12 ? -999 : value));
        Assert.Contains("2 × missing air temperature", string.Join(' ', year.Repairs), StringComparison.Ordinal);
        Assert.All(year.Steps, step => Assert.True(step.GlobalWPerM2 >= 0 && step.AirC == 10.5));
    }

    public static TheoryData<string, string> Bad => new()
    {
        { "", "no JSON from here on" },
        { "<html>Service unavailable</html>", "no JSON from here on" },
        { "[]", "no properties.parameter" },
        { "null", "no properties.parameter" },
        { "{\"detail\":\"Start date is wrong\"}", "the service says \"Start date is wrong\"" },
        { "{\"messages\":[\"too many\"]}", "the service says \"too many\"" },
        { "{\"properties\":{\"parameter\":[]}}", "no properties.parameter" },
        { "{\"properties\":{\"parameter\":{}}}", "no geometry.coordinates" },
        { "{\"properties\":{\"parameter\":{}},\"geometry\":{\"coordinates\":[\"a\",2]}}", "no geometry.coordinates" },
        { "{\"properties\":{\"parameter\":{}},\"geometry\":{\"coordinates\":[-3,99]}}", "no geometry.coordinates" },
        { "{\"properties\":{\"parameter\":{}},\"geometry\":{\"coordinates\":[-3,54]}}", "no ALLSKY_SFC_SW_DWN" },
        { "{\"properties\":{\"parameter\":{\"ALLSKY_SFC_SW_DWN\":7,\"T2M\":{}}},\"geometry\":{\"coordinates\":[-3,54]}}", "no group of figures" },
        { "{\"properties\":{\"parameter\":{\"ALLSKY_SFC_SW_DWN\":{\"x\":1},\"T2M\":{}}},\"geometry\":{\"coordinates\":[-3,54]}}", "the hour \"x\"" },
        { "{\"properties\":{\"parameter\":{\"ALLSKY_SFC_SW_DWN\":{\"2021010100\":\"1\"},\"T2M\":{}}},\"geometry\":{\"coordinates\":[-3,54]}}", "that is no number" },
        { "{\"properties\":{\"parameter\":{\"ALLSKY_SFC_SW_DWN\":{\"2021010100\":1e400},\"T2M\":{}}},\"geometry\":{\"coordinates\":[-3,54]}}", "that is no number" },
        { "{\"properties\":{\"parameter\":{\"ALLSKY_SFC_SW_DWN\":{},\"T2M\":{}}},\"geometry\":{\"coordinates\":[-3,54]}}", "no rows of weather" },
        { MadeWeather.PowerJson()[..200_000], "no JSON from here on" },
        { MadeWeather.PowerJson(change: (_, _, _) => -999), "no air temperature in the whole file" },
        { MadeWeather.PowerJson(change: (name, begins, value) => begins.Month == 12 && name == "T2M" ? -999 : value), "744 rows without air temperature" },
        { MadeWeather.PowerJson(change: (name, _, value) => name == "T2M" ? 283.65 : value), "kelvin" },
        { MadeWeather.PowerJson(change: (name, _, value) => name.StartsWith("ALL", StringComparison.Ordinal) ? 0 : value), "no sun in the whole year" },
        { MadeWeather.PowerJson().Replace("[-3.1,54.6", "[-3.1,-54.6", StringComparison.Ordinal), "most sun in the months May to July" },
        { MadeWeather.PowerJson(clock: "LST").Replace("LST", "UTC", StringComparison.Ordinal).Replace("[-3.1", "[76.9", StringComparison.Ordinal), "the middle of the sunshine" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void What_cannot_be_trusted_is_refused(string json, string says)
    {
        WeatherReading reading = Read(json);
        Assert.Null(reading.Year);
        Assert.Contains(says, string.Join('\n', reading.Faults), StringComparison.Ordinal);
    }

    private const string Climatology = """
        {"type":"Feature","geometry":{"type":"Point","coordinates":[-3.1,54.6,210.5]},"properties":{"parameter":{
        "ALLSKY_SFC_SW_DWN":{"JAN":0.6,"FEB":1.2,"MAR":2.3,"APR":3.8,"MAY":4.9,"JUN":5.0,"JUL":4.7,"AUG":3.9,"SEP":2.8,"OCT":1.6,"NOV":0.8,"DEC":0.4,"ANN":2.7},
        "T2M":{"JAN":3.1,"FEB":3.2,"MAR":4.6,"APR":6.9,"MAY":9.8,"JUN":12.4,"JUL":14.1,"AUG":14.0,"SEP":12.1,"OCT":9.2,"NOV":6.0,"DEC":3.9,"ANN":8.3},
        "T2M_RANGE":{"JAN":4.1,"FEB":4.6,"MAR":5.9,"APR":7.4,"MAY":8.2,"JUN":8.0,"JUL":7.5,"AUG":7.0,"SEP":6.2,"OCT":4.9,"NOV":4.2,"DEC":4.0,"ANN":6.0}}},
        "header":{"fill_value":-999.0},"parameters":{"ALLSKY_SFC_SW_DWN":{"units":"kW-hr/m^2/day"},"T2M":{"units":"C"},"T2M_RANGE":{"units":"C"}}}
        """;

    [Fact]
    public void Mean_months_are_a_climate()
    {
        MonthlyClimate climate = NasaPowerReader.ReadClimatology(Encoding.UTF8.GetBytes(Climatology), "mean.json").Climate!;
        Assert.Equal([0.6, 1.2, 2.3, 3.8, 4.9, 5.0, 4.7, 3.9, 2.8, 1.6, 0.8, 0.4], climate.Months.Select(month => month.HorizontalKWhPerM2Day));
        Assert.Equal((14.1, 7.5), (climate.Months[6].MeanAirC, climate.Months[6].DailyRangeK));
    }

    /// <summary>31·0.6 + 28·1.2 + … + 31·0.4 by hand: 976.0 kWh/m².</summary>
    [Fact]
    public void A_file_of_mean_months_becomes_a_year_of_hours_that_says_so()
    {
        WeatherYear year = WeatherFile.ReadBytes(Encoding.UTF8.GetBytes(Climatology), "mean.json").Year!;
        Assert.Equal(976.0, year.GlobalKWhPerM2, 1.0);
        Assert.Contains("monthly means of NASA POWER in mean.json", year.Source, StringComparison.Ordinal);

        // February has the coldest mornings: 3.2 − 4.6/2 = 0.9 °C. The rule of the coldest month is 18 K under it, that of a file's coldest hour 7 K: 0.9 − 11.
        Assert.Equal(-10.1, year.ColdestAirC, 1e-9);
    }

    [Fact]
    public void Mean_months_of_another_half_of_the_earth_are_refused() =>
        Assert.Contains("km from the plan's place", Assert.Single(WeatherFile.ReadBytes(Encoding.UTF8.GetBytes(Climatology), "mean.json", new Place(-54.6, -3.1, 210, null, "mean.json")).Faults).Found, StringComparison.Ordinal);

    [Theory]
    [InlineData("\"JUN\":5.0", "\"JUN\":-999", "-999 in JUN")]
    [InlineData("\"JUN\":5.0,", "", "no JUN")]
    [InlineData("T2M_RANGE", "T2M_SPAN", "no T2M_RANGE")]
    public void Months_that_lack_something_are_refused(string old, string changed, string says)
    {
        ClimateReading reading = NasaPowerReader.ReadClimatology(Encoding.UTF8.GetBytes(Climatology.Replace(old, changed, StringComparison.Ordinal)), "mean.json");
        Assert.Null(reading.Climate);
        Assert.Contains(says, string.Join('\n', reading.Faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Random_changes_give_faults_or_sound_weather()
    {
        Random random = new(5);
        byte[] good = Encoding.UTF8.GetBytes(MadeWeather.PowerJson());
        for (int round = 0; round < 150; round++)
        {
            byte[] changed = [.. good];
            for (int i = 0; i < 1 + random.Next(4); i++)
            {
                int at = random.Next(2) == 0 ? random.Next(400) : random.Next(changed.Length);
                changed = random.Next(3) == 0 ? [.. changed[..at], .. changed[Math.Min(changed.Length, at + random.Next(60))..]] : changed;
                changed[Math.Min(at, changed.Length - 1)] = (byte)random.Next(256);
            }

            WeatherReading reading = WeatherFile.ReadBytes(changed, "power.json");
            Assert.Equal(reading.Year is null, reading.Faults.Count > 0);
        }
    }
}
