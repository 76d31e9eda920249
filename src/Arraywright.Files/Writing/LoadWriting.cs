using Arraywright.Gear;

namespace Arraywright.Files.Writing;

/// <summary>Hours of load as they are written: neighbouring hours of equal power together.</summary>
internal static class LoadWriting
{
    /// <summary>The hours of a load by the hour; none for a constant load.</summary>
    public static List<(int From, int To, double PowerW)> Hours(Battery battery)
    {
        List<(int From, int To, double PowerW)> hours = [];
        for (int hour = 0; hour < battery.LoadByHourW.Length; hour++)
        {
            double powerW = battery.LoadByHourW[hour];
            if (hours is [.., var last] && last.To == hour && last.PowerW == powerW)
            {
                hours[^1] = last with { To = hour + 1 };
            }
            else if (powerW > 0)
            {
                hours.Add((hour, hour + 1, powerW));
            }
        }

        return hours;
    }
}
