namespace Arraywright.Files.Tests;

public sealed class TimeZoneTests
{
    private static readonly string WithZone = Plans.Full.Replace("  latitude:", "  time_zone: ZONE\n  latitude:", StringComparison.Ordinal);

    [Fact]
    public void A_time_zone_is_read_by_its_name_and_written_again()
    {
        SkipWithoutTable();
        Plan plan = Plans.Read(WithZone.Replace("ZONE", "Europe/London", StringComparison.Ordinal));
        Assert.Equal("Europe/London", plan.Place!.Zone!.Id);
        Assert.Equal(plan.Place, Plans.Read(PlanWriter.Write(plan)).Place);
    }

    [Theory]
    [InlineData("Europe/Nowhere")]
    [InlineData("../../etc/passwd")]
    [InlineData("/etc/localtime")]
    [InlineData("+1")]
    public void A_name_that_is_none_is_told_with_its_place(string name)
    {
        SkipWithoutTable();
        PlanReading reading = PlanFile.Read(WithZone.Replace("ZONE", name, StringComparison.Ordinal), "plan.yaml");
        Fault fault = Assert.Single(reading.Faults);
        Assert.Contains(name, fault.Found, StringComparison.Ordinal);
        Assert.Contains("Europe/London", fault.Expected, StringComparison.Ordinal);
    }

    private static void SkipWithoutTable() =>
        Assert.SkipUnless(TimeZoneInfo.TryFindSystemTimeZoneById("Europe/London", out _), "This machine has no table of time zones.");
}
