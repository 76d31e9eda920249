using Arraywright.Files.Plans;

namespace Arraywright.Files.Tests;

public sealed class TimeZoneTests
{
    private static readonly string WithZone = Plans.Full.Replace("time_zone: Europe/London", "time_zone: ZONE", StringComparison.Ordinal);

    [Fact]
    public void A_time_zone_is_read_by_its_name_and_written_again()
    {
        Plan plan = Plans.Read(WithZone.Replace("ZONE", "Europe/London", StringComparison.Ordinal));
        Assert.Equal("Europe/London", plan.Place!.Zone!.Name);
        Assert.Equal(plan.Place.Zone, Plans.Read(PlanWriter.Write(plan)).Place!.Zone);
    }

    [Theory]
    [InlineData("Europe/Nowhere", "IANA name")]
    [InlineData("Europe/Lodnon", "did you mean \"Europe/London\"?")]
    [InlineData("europe/london", "did you mean \"Europe/London\"?")]
    [InlineData("../../etc/passwd", "Europe/London")]
    [InlineData("UTC+1", "IANA name")]
    [InlineData("1", "IANA name")]
    public void A_name_that_is_none_is_told_with_its_place(string name, string says)
    {
        PlanReading reading = PlanFile.Read(WithZone.Replace("ZONE", name, StringComparison.Ordinal), "plan.yaml");
        Fault fault = Assert.Single(reading.Faults);
        Assert.Equal((9, 14), (fault.Line, fault.Column));
        Assert.Contains(name, fault.Found, StringComparison.Ordinal);
        Assert.Contains(says, fault.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Public rules of the zones: London and Adelaide with daylight saving, Kathmandu a quarter off, Kiritimati beyond the date line; London kept summer time all winter in 1970.</summary>
    [Theory]
    [InlineData("Europe/London", "2024-03-31T00:59", 0)]
    [InlineData("Europe/London", "2024-03-31T01:00", 1)]
    [InlineData("Europe/London", "2024-10-27T00:59", 1)]
    [InlineData("Europe/London", "2024-10-27T01:00", 0)]
    [InlineData("Europe/London", "1970-01-15T12:00", 1)]
    [InlineData("Europe/London", "2100-07-15T12:00", 1)]
    [InlineData("Australia/Adelaide", "2024-01-01T00:00", 10.5)]
    [InlineData("Australia/Adelaide", "2024-07-01T00:00", 9.5)]
    [InlineData("Asia/Kathmandu", "2024-07-01T00:00", 5.75)]
    [InlineData("Pacific/Kiritimati", "2024-07-01T00:00", 14)]
    [InlineData("UTC", "2024-07-01T00:00", 0)]
    public void Zones_are_ahead_by_their_rules(string name, string utc, double aheadH) =>
        Assert.Equal(aheadH, ZoneTable.Find(name)!.AheadH(DateTime.Parse(utc, System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>The machine's own table, where it has one, through a year by the hour. It may be of another year than ours: zones with old, settled rules only.</summary>
    [Theory]
    [InlineData("Europe/Berlin")]
    [InlineData("America/Denver")]
    [InlineData("Australia/Sydney")]
    [InlineData("Australia/Lord_Howe")]
    [InlineData("Asia/Singapore")]
    public void The_table_agrees_with_the_machines_own(string name)
    {
        bool known = TimeZoneInfo.TryFindSystemTimeZoneById(name, out TimeZoneInfo? own);
        Assert.SkipUnless(known, $"This machine has no time zone {name}: ours is not compared with its table.");
        PlaceZone zone = ZoneTable.Find(name)!;
        for (DateTime utc = new(2023, 1, 1, 0, 0, 0, DateTimeKind.Utc); utc.Year < 2024; utc = utc.AddHours(0.5))
        {
            Assert.Equal(own!.GetUtcOffset(utc).TotalHours, zone.AheadH(utc));
        }
    }

    [Fact]
    public void Every_zone_of_the_table_can_be_used() =>
        Assert.All(ZoneTable.Names, name => Assert.InRange(ZoneTable.Find(name)!.AheadH(new DateTime(2025, 1, 1)), -12, 14));
}
