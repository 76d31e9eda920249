using System.Collections.Immutable;
using NodaTime;

namespace Arraywright.Files.Plans;

/// <summary>Time zones by their IANA names, from the table that comes with the program: machines may have another, or none.</summary>
internal static class ZoneTable
{
    /// <summary>Weather years lie between these.</summary>
    private static readonly Instant From = Instant.FromUtc(1950, 1, 1, 0, 0), To = Instant.FromUtc(2101, 1, 1, 0, 0);

    /// <summary>Every name there is.</summary>
    public static IEnumerable<string> Names => DateTimeZoneProviders.Tzdb.Ids;

    /// <summary>The zone of that name, capitals as in the table; null when there is none.</summary>
    public static PlaceZone? Find(string name)
    {
        // Names alone: the provider makes zones of "UTC+1" and the like too, which the table does not have.
        if (!DateTimeZoneProviders.Tzdb.Ids.Contains(name))
        {
            return null;
        }

        var changes = ImmutableArray.CreateBuilder<ZoneChange>();
        foreach (NodaTime.TimeZones.ZoneInterval span in DateTimeZoneProviders.Tzdb[name].GetZoneIntervals(From, To))
        {
            DateTime from = span.HasStart && span.Start > From ? span.Start.ToDateTimeUtc() : From.ToDateTimeUtc();
            changes.Add(new ZoneChange(from, span.WallOffset.Seconds / 3600.0));
        }

        return new PlaceZone(name, changes.ToImmutable());
    }
}
