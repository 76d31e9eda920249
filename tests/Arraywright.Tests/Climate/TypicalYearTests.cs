using System.Collections.Immutable;
using Arraywright.Climate;

namespace Arraywright.Tests.Climate;

public sealed class TypicalYearTests
{
    /// <summary>Three years whose months differ by a factor: each month's middle year has its distribution nearest to that of all.</summary>
    [Fact]
    public void Each_month_comes_from_the_year_whose_days_are_most_like_all_days()
    {
        WeatherYear typical = TypicalYear.Of([Year(2021, month => month % 2 == 0 ? 0.7 : 1.3), Year(2022, _ => 1), Year(2023, month => month % 2 == 0 ? 1.3 : 0.7)], "three");
        Assert.Equal(8760, typical.Steps.Length);
        Assert.All(typical.Steps, step => Assert.Equal(2022, step.Ends.AddMinutes(-30).Year));
        Assert.Equal("three", typical.Source);
    }

    [Fact]
    public void Months_may_come_from_different_years()
    {
        WeatherYear typical = TypicalYear.Of([Year(2021, month => month <= 6 ? 1 : 0.6), Year(2022, month => month <= 6 ? 0.6 : 1), Year(2023, _ => 1.4)], "three");
        Assert.All(typical.Steps, step => Assert.Equal(step.Ends.AddMinutes(-30).Month <= 6 ? 2021 : 2022, step.Ends.AddMinutes(-30).Year));
    }

    [Fact]
    public void The_coldest_hour_of_all_years_is_kept_beside_it()
    {
        WeatherYear cold = Year(2021, _ => 0.5, coldestC: -23);
        Assert.Equal(-23, TypicalYear.Of([cold, Year(2022, _ => 1), Year(2023, _ => 1.5)], "three").ColdestAirC);
    }

    [Fact]
    public void A_leap_day_is_left_out() => Assert.Equal(8760, TypicalYear.Of([Year(2020, _ => 1)], "one").Steps.Length);

    [Fact]
    public void Years_of_two_places_do_not_mix()
    {
        WeatherYear here = Year(2021, _ => 1);
        WeatherYear there = new(here.Place with { LatitudeDeg = 40 }, here.Steps, 1, 0, "there", []);
        Assert.Throws<ArgumentException>(() => TypicalYear.Of([here, there], "two"));
        Assert.Throws<ArgumentException>(() => TypicalYear.Of([], "none"));
    }

    private static WeatherYear Year(int year, Func<int, double> strengthOf, double coldestC = 5)
    {
        var steps = ImmutableArray.CreateBuilder<WeatherStep>();
        for (DateTime begins = new(year, 1, 1); begins.Year == year; begins = begins.AddHours(1))
        {
            double sun = begins.Hour is >= 8 and < 16 ? strengthOf(begins.Month) * (200 + (10 * begins.Day)) : 0;
            steps.Add(new WeatherStep(begins.AddHours(1), sun, sun, 0, begins.DayOfYear == 20 && begins.Hour == 5 ? coldestC : 10 + (begins.Day / 10.0), 2));
        }

        return new WeatherYear(new WeatherPlace(54.6, -3.1, 210), steps.ToImmutable(), 1, 0, $"{year}", []);
    }
}
