using Arraywright.Climate;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>Against the vectors published with the fit (shared/climate/README.md, second part), computed there by another program.</summary>
public class WorldClimateReference
{
    // place, latitude, longitude, elevation m, mean air January, mean air July, range July, sunshine July, mean of the months' kWh/m² a day
    [Theory]
    [InlineData("Phoenix", 33.43, -112.0, 340, 9.71, 29.98, 16.42, 81.80, 5.624)]
    [InlineData("London", 51.48, -0.45, 25, 3.52, 15.93, 8.63, 40.00, 2.873)]
    [InlineData("Nairobi", -1.3, 36.9, 1600, 21.20, 18.57, 11.42, 61.09, 5.657)]
    [InlineData("Sydney", -33.95, 151.2, 5, 22.62, 10.51, 10.41, 58.70, 4.497)]
    [InlineData("Yakutsk", 62.1, 129.8, 100, -39.78, 17.62, 12.33, 47.94, 2.714)]
    [InlineData("Quito", -0.15, -78.5, 2800, 14.81, 14.23, 13.65, 41.20, 4.114)]
    [InlineData("Reykjavik", 64.1, -21.9, 50, -3.21, 7.94, 6.09, 26.59, 1.973)]
    public void Known_places_have_their_published_climate(
        string place, double latitudeDeg, double longitudeDeg, double elevationM, double januaryC, double julyC, double julyRangeK, double julySunshinePercent, double meanKWhPerM2Day)
    {
        MonthlyClimate? climate = WorldClimate.At(latitudeDeg, longitudeDeg, elevationM);

        Assert.True(climate is not null, place);
        Assert.Equal(januaryC, climate.Months[0].MeanAirC, 0.0056);
        Assert.Equal(julyC, climate.Months[6].MeanAirC, 0.0056);
        Assert.Equal(julyRangeK, climate.Months[6].DailyRangeK, 0.0056);
        Assert.Equal(julySunshinePercent, climate.Months[6].SunshinePercent, 0.0056);
        Assert.Equal(meanKWhPerM2Day, climate.Months.Average(month => month.HorizontalKWhPerM2Day), 0.00101);
    }
}
