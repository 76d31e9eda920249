namespace Arraywright.Sky;

/// <summary>The sun over a place through many moments: what changes slowly is computed once a day and interpolated.</summary>
/// <remarks>
/// Right ascension, declination, distance and nutation at 0 h of three days give parabolas; through a day they stay within 0.0001° of the full algorithm,
/// at a hundredth of its cost. One instance belongs to one thread.
/// </remarks>
public sealed class SunPath(Site site)
{
    private double _day = double.NaN;
    private SunOfDate _before;
    private SunOfDate _now;
    private SunOfDate _after;

    /// <summary>The sun at a moment.</summary>
    /// <param name="julianDay">Julian day in universal time.</param>
    public SunPosition At(double julianDay) => SunPosition.Of(OfDate(julianDay), julianDay, site);

    /// <summary>The sun against the Earth's centre, interpolated.</summary>
    internal SunOfDate OfDate(double julianDay)
    {
        double day = Math.Floor(julianDay - 0.5) + 0.5;
        if (day != _day)
        {
            (_before, _now, _after) = day == _day + 1
                ? (_now, _after, SunOfDate.At(day + 1))
                : (SunOfDate.At(day - 1), SunOfDate.At(day), SunOfDate.At(day + 1));
            _day = day;
        }

        double share = julianDay - day;
        return new SunOfDate(
            Angle.Wrapped(Between(Near(_before.RightAscensionDeg), _now.RightAscensionDeg, Near(_after.RightAscensionDeg), share)),
            Between(_before.DeclinationDeg, _now.DeclinationDeg, _after.DeclinationDeg, share),
            Between(_before.DistanceAu, _now.DistanceAu, _after.DistanceAu, share),
            Between(_before.EquinoxesDeg, _now.EquinoxesDeg, _after.EquinoxesDeg, share),
            Between(_before.EquationOfTimeMin, _now.EquationOfTimeMin, _after.EquationOfTimeMin, share));
    }

    /// <summary>The same direction, within half a turn of today's.</summary>
    private double Near(double rightAscensionDeg) =>
        rightAscensionDeg - (360 * Math.Round((rightAscensionDeg - _now.RightAscensionDeg) / 360));

    private static double Between(double before, double now, double after, double share) =>
        now + (share * 0.5 * ((after - before) + (share * (before - (2 * now) + after))));
}
