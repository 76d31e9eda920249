namespace Arraywright;

/// <summary>Days of any year, from one to another, both included; over New Year when the last comes before the first.</summary>
/// <param name="FromMonth">Month of the first, 1 to 12.</param>
/// <param name="FromDay">Day of that month.</param>
/// <param name="ToMonth">Month of the last.</param>
/// <param name="ToDay">Day of that month.</param>
public readonly record struct DaySpan(int FromMonth, int FromDay, int ToMonth, int ToDay)
{
    /// <summary>One day.</summary>
    public static DaySpan Of(int month, int day) => new(month, day, month, day);

    /// <summary>Whether a day is among them.</summary>
    public bool Has(DateTime day)
    {
        int at = (100 * day.Month) + day.Day;
        int from = (100 * FromMonth) + FromDay;
        int to = (100 * ToMonth) + ToDay;
        return from <= to ? at >= from && at <= to : at >= from || at <= to;
    }

    /// <summary>"06-21", or "05-01..05-14".</summary>
    public override string ToString() =>
        (FromMonth, FromDay) == (ToMonth, ToDay) ? $"{FromMonth:00}-{FromDay:00}" : $"{FromMonth:00}-{FromDay:00}..{ToMonth:00}-{ToDay:00}";
}
