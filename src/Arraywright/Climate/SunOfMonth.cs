using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>The sun over every hour of a month at a place: outside the air, under a clear sky, how high, how far from noon. Means over each hour, of four moments.</summary>
/// <remarks>
/// Declination, distance and equation of time are those of noon; clear sky comes from a table over the sine of the sun's elevation, since nothing else moves it.
/// Refraction is left out. What this costs is far below what the made hours can say.
/// </remarks>
internal sealed class SunOfMonth
{
    private const int PerHour = 4;
    private const int PerDay = 24 * PerHour;
    private const int Rows = 200;

    private readonly Place _place;
    private readonly double _utcOffsetH;
    private readonly SunPath _path;
    private readonly double[] _clearShares = new double[Rows + 1];
    private readonly double[] _cosines = new double[PerDay];
    private readonly double[] _sines = new double[PerDay];
    private readonly double[] _hourCosines = new double[24];
    private readonly double[] _hourSines = new double[24];

    public SunOfMonth(Place place, double utcOffsetH)
    {
        (_place, _utcOffsetH) = (place, utcOffsetH);
        _path = new SunPath(Site.Of(place.LatitudeDeg, place.LongitudeDeg, place.ElevationM));
        for (int row = 1; row <= Rows; row++)
        {
            double elevationDeg = Angle.Degrees(Math.Asin((double)row / Rows));
            _clearShares[row] = ClearSky.Of(new SunPosition(elevationDeg, elevationDeg, 180, 1), place.ElevationM, 1).GlobalWPerM2;
        }

        for (int part = 0; part < PerDay; part++)
        {
            (_sines[part], _cosines[part]) = Math.SinCos(2 * Math.PI * (part + 0.5) / PerDay);
        }

        for (int hour = 0; hour < 24; hour++)
        {
            (_hourSines[hour], _hourCosines[hour]) = Math.SinCos(2 * Math.PI * (hour + 0.5) / 24);
        }
    }

    /// <summary>Days of the month last asked for.</summary>
    public int Days { get; private set; }

    /// <summary>On the flat outside the air, W/m².</summary>
    public double[] OutsideWPerM2 { get; } = new double[31 * 24];

    /// <summary>On the flat under the clear sky of usual air, W/m².</summary>
    public double[] ClearWPerM2 { get; } = new double[31 * 24];

    /// <summary>Sine of the sun's elevation, 0 below the horizon.</summary>
    public double[] UpShare { get; } = new double[31 * 24];

    /// <summary>Cosine of the hour angle in the middle of the hour.</summary>
    public double[] NoonCosine { get; } = new double[31 * 24];

    /// <summary>Sum outside the air, Wh/m².</summary>
    public double OutsideWhPerM2 { get; private set; }

    /// <summary>Sum under the clear sky, Wh/m².</summary>
    public double ClearWhPerM2 { get; private set; }

    /// <summary>Computes a month.</summary>
    public void Fill(int year, int month)
    {
        Days = DateTime.DaysInMonth(year, month);
        OutsideWhPerM2 = 0;
        ClearWhPerM2 = 0;
        double noon = SunClock.JulianDay(new DateTime(year, month, 1)) + 0.5 - (_utcOffsetH / 24);
        for (int day = 0; day < Days; day++)
        {
            FillDay(day, _path.OfDate(noon + day));
        }
    }

    private void FillDay(int day, in SunOfDate sun)
    {
        double solarMidnightH = (_place.LongitudeDeg / 15) - _utcOffsetH + (sun.EquationOfTimeMin / 60) - 12;
        (double startSine, double startCosine) = Math.SinCos(solarMidnightH * Math.PI / 12);
        double level = Angle.Sin(_place.LatitudeDeg) * Angle.Sin(sun.DeclinationDeg);
        double swing = Angle.Cos(_place.LatitudeDeg) * Angle.Cos(sun.DeclinationDeg);
        double facing = ExtraterrestrialDay.FacingWPerM2(sun.DistanceAu);
        for (int hour = 0; hour < 24; hour++)
        {
            double up = 0;
            double clear = 0;
            for (int part = hour * PerHour; part < (hour + 1) * PerHour; part++)
            {
                double height = Math.Max(0, level + (swing * ((startCosine * _cosines[part]) - (startSine * _sines[part]))));
                up += height;
                clear += ClearShare(height);
            }

            int at = (24 * day) + hour;
            NoonCosine[at] = (startCosine * _hourCosines[hour]) - (startSine * _hourSines[hour]);
            UpShare[at] = up / PerHour;
            OutsideWPerM2[at] = facing * up / PerHour;
            ClearWPerM2[at] = facing * clear / PerHour;
            OutsideWhPerM2 += OutsideWPerM2[at];
            ClearWhPerM2 += ClearWPerM2[at];
        }
    }

    private double ClearShare(double height)
    {
        double along = Math.Min(height, 1) * Rows;
        int row = Math.Min((int)along, Rows - 1);
        return _clearShares[row] + ((along - row) * (_clearShares[row + 1] - _clearShares[row]));
    }
}
