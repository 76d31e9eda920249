using Arraywright.Sky;

namespace Arraywright.Tests.Sky;

public class ExtraterrestrialDayTests
{
    [Fact]
    public void The_polar_night_is_dark() => Assert.Equal(0, ExtraterrestrialDay.HorizontalKWhPerM2(80, 355));

    /// <summary>By hand, 21 June at the pole: sine of the declination 0.3977 the whole day: 24 h × 1.361 kW/m² × 0.9674 × 0.3977 = 12.57.</summary>
    [Fact]
    public void The_midnight_sun_shines_all_day() => Assert.Equal(12.57, ExtraterrestrialDay.HorizontalKWhPerM2(90, 172), 0.03);

    /// <summary>The most there is, by hand, south pole in December: 24 h × 1.361 kW/m² × 1.035 × sin 23.45° = 13.45.</summary>
    [Theory]
    [InlineData(-90)]
    [InlineData(0)]
    [InlineData(90)]
    public void Every_day_of_the_year_has_a_figure(double latitudeDeg) =>
        Assert.All(Enumerable.Range(1, 366), day => Assert.InRange(ExtraterrestrialDay.HorizontalKWhPerM2(latitudeDeg, day), 0, 13.45));
}
