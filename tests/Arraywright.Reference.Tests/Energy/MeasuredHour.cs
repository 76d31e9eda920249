namespace Arraywright.Reference.Tests.Energy;

/// <summary>An hour with its parts as measured, and what it would have been in clear air.</summary>
/// <param name="Begins">When.</param>
/// <param name="PartsWPerM2">Irradiance in the plane of each part.</param>
/// <param name="PartsC">Temperature of the module in each.</param>
/// <param name="ClearWPerM2">What the same minutes give on clear days of the season, mean over the parts.</param>
internal sealed record MeasuredHour(DateTime Begins, double[] PartsWPerM2, double[] PartsC, double ClearWPerM2)
{
    public double MeanWPerM2 => PartsWPerM2.Average();

    /// <summary>Measured parts as hours; only those with enough parts and any sun to speak of.</summary>
    /// <param name="parts">When, irradiance and module temperature.</param>
    /// <param name="minutes">Between the parts.</param>
    /// <param name="least">Fewest parts of an hour.</param>
    /// <param name="days">Clear days are looked for so many days before and after.</param>
    public static List<MeasuredHour> Of(IReadOnlyList<(DateTime At, double PlaneWPerM2, double ModuleC)> parts, int minutes, int least, int days)
    {
        int Slot(DateTime at) => (int)at.TimeOfDay.TotalMinutes / minutes;
        ILookup<int, (int Day, double PlaneWPerM2)> bySlot = parts.ToLookup(part => Slot(part.At), part => (part.At.DayOfYear, part.PlaneWPerM2));

        // The site's own clear sky: its turbidity, tilt and place are not stated. Of a month's days the fifth in six is clear at that time of day.
        double Clear(DateTime at)
        {
            double[] near = [.. bySlot[Slot(at)].Where(other => Math.Abs(Math.IEEERemainder(other.Day - at.DayOfYear, 366)) <= days).Select(other => other.PlaneWPerM2).Order()];
            return near[(int)Math.Round(0.85 * (near.Length - 1))];
        }

        return
        [
            .. parts.GroupBy(part => part.At.Date.AddHours(part.At.Hour))
                .Where(hour => hour.Count() >= least)
                .Select(hour => new MeasuredHour(
                    hour.Key,
                    [.. hour.Select(part => part.PlaneWPerM2)],
                    [.. hour.Select(part => part.ModuleC)],
                    hour.Average(part => Clear(part.At))))
                .Where(hour => hour.ClearWPerM2 > 150),
        ];
    }
}
