using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>Against Duffie and Beckman, Solar Engineering of Thermal Processes (4th ed. 2013, 5th ed. 2020), whose solar constant is 1367 W/m².</summary>
public class ExtraterrestrialDayReference
{
    private const double MjPerKWh = 3.6;
    private const double BookSolarConstant = 1367;

    /// <summary>Example 1.10.1: 43° N, 15 April, 33.8 MJ/m². Tolerance: the printed digit, and the book's simpler distance formula (0.26 %).</summary>
    [Fact]
    public void Madison_on_15_April_gets_what_the_book_says() =>
        Assert.Equal(33.8, BookMjPerM2(43, 105), 0.05 + (0.0026 * 33.8));

    /// <summary>
    /// Declination and distance from NREL's solar position algorithm (NREL/TP-560-34302), recomputed in the reference pack; the day's sum of the
    /// sun's height taken here step by step. Tolerance: Spencer's 0.5° of declination at 43° N, at most 3.6 % a degree in the low winter sun.
    /// </summary>
    [Theory]
    [InlineData(1, -23.02751, 0.9833271)]
    [InlineData(60, -7.79910, 0.9906253)]
    [InlineData(79, 0.14758, 0.9959960)]
    [InlineData(173, 23.43685, 1.0162354)]
    [InlineData(356, -23.43800, 0.9837491)]
    public void Days_of_the_year_agree_with_the_exact_sun(int dayOfYear, double declinationDeg, double distanceAu)
    {
        const int Steps = 100_000;
        double latitude = 43 * Math.PI / 180;
        double declination = declinationDeg * Math.PI / 180;
        double sum = 0;
        for (int step = 0; step < Steps; step++)
        {
            double hourAngle = ((step + 0.5) / Steps * 2 * Math.PI) - Math.PI;
            sum += Math.Max(0, (Math.Sin(latitude) * Math.Sin(declination)) + (Math.Cos(latitude) * Math.Cos(declination) * Math.Cos(hourAngle)));
        }

        double exact = 24 * 1.361 * sum / Steps / (distanceAu * distanceAu);
        Assert.Equal(exact, ExtraterrestrialDay.HorizontalKWhPerM2(43, dayOfYear), 0.018 * exact);
    }

    private static double BookMjPerM2(double latitudeDeg, int dayOfYear) =>
        ExtraterrestrialDay.HorizontalKWhPerM2(latitudeDeg, dayOfYear) * MjPerKWh * BookSolarConstant / ExtraterrestrialDay.SolarConstantWPerM2;
}
