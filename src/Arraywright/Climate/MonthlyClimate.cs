using System.Collections.Immutable;

namespace Arraywright.Climate;

/// <summary>The mean weather of one month.</summary>
/// <param name="Month">1 for January to 12.</param>
/// <param name="MeanAirC">Mean air temperature over day and night, °C.</param>
/// <param name="DailyRangeK">Mean daily maximum less mean daily minimum, K.</param>
/// <param name="SunshinePercent">Sunshine, % of the longest possible.</param>
/// <param name="HorizontalKWhPerM2Day">Mean global irradiation of a horizontal plane, kWh/m² a day; not of a tilted one.</param>
public readonly record struct ClimateMonth(
    int Month,
    double MeanAirC,
    double DailyRangeK,
    double SunshinePercent,
    double HorizontalKWhPerM2Day)
{
    /// <summary>Mean of the daily minima, °C.</summary>
    public double MeanDailyMinC => MeanAirC - (DailyRangeK / 2);

    /// <summary>Mean of the daily maxima, °C.</summary>
    public double MeanDailyMaxC => MeanAirC + (DailyRangeK / 2);

    /// <summary>Global irradiation of a horizontal plane in the whole month, kWh/m².</summary>
    public double HorizontalKWhPerM2 => HorizontalKWhPerM2Day * DateTime.DaysInMonth(2001, Month);

    /// <summary>English name of the month.</summary>
    public string Name => System.Globalization.CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(Month);
}

/// <summary>The mean weather of a place, month by month. Always twelve months, each figure finite.</summary>
public sealed class MonthlyClimate
{
    /// <summary>The climate of twelve months.</summary>
    /// <param name="months">January to December, each figure finite.</param>
    /// <exception cref="ArgumentException">They are not that.</exception>
    public MonthlyClimate(ImmutableArray<ClimateMonth> months)
    {
        if (months.IsDefault || months.Length != 12)
        {
            throw new ArgumentException("A climate has twelve months.", nameof(months));
        }

        foreach (ClimateMonth month in months)
        {
            if (!double.IsFinite(month.MeanAirC + month.DailyRangeK + month.SunshinePercent + month.HorizontalKWhPerM2Day))
            {
                throw new ArgumentException($"A figure of month {month.Month} is not finite.", nameof(months));
            }
        }

        Months = months;
    }

    /// <summary>January to December.</summary>
    public ImmutableArray<ClimateMonth> Months { get; }

    /// <summary>Global irradiation of a horizontal plane in a year of 365 days, kWh/m²; not of a tilted one.</summary>
    public double AnnualHorizontalKWhPerM2 => Months.Sum(month => month.HorizontalKWhPerM2);

    /// <summary>The month with the coldest mornings.</summary>
    public ClimateMonth Coldest => Months.MinBy(month => month.MeanDailyMinC);

    /// <summary>The month with the hottest afternoons.</summary>
    public ClimateMonth Hottest => Months.MaxBy(month => month.MeanDailyMaxC);
}
