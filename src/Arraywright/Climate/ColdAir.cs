namespace Arraywright.Climate;

/// <summary>The coldest credible air of a plan, out of all that is known: the plan's own figure, its weather file, the built-in climate.</summary>
/// <param name="AirC">The figure taken, °C.</param>
/// <param name="Working">How it was found, as a person would write it.</param>
/// <param name="Assumption">What to list; null where the plan's own figure stands and nothing speaks against it.</param>
internal sealed record ColdAir(double AirC, string Working, Assumption? Assumption)
{
    private const double PolarColdestC = -60;
    private const double PolarLatitudeDeg = 60;

    /// <summary>The air cools with height by this, K/m: the standard atmosphere, ISO 2533.</summary>
    private const double LapseKPerM = 0.0065;

    private const string Moves = "A morning 5 K colder raises open-circuit volts by 1.5 to 2 %. Better: write the coldest local record into the plan (coldest).";

    /// <summary>What the weather file suggests, °C; null without one.</summary>
    public double? ByFileC { get; private init; }

    /// <summary>What the built-in climate suggests, °C; null where it knows nothing.</summary>
    public double? ByClimateC { get; private init; }

    /// <summary>What may be colder than the figure taken, °C; null where nothing is.</summary>
    public double? SuggestsC { get; private init; }

    /// <summary>Under which condition it is, as the rest of a sentence.</summary>
    public string Condition { get; private init; } = "";

    /// <summary>The coldest air of a plan.</summary>
    public static ColdAir Of(Plan plan, MonthlyClimate? climate)
    {
        Candidate? byFile = plan.WeatherYear is { } weather ? ByFile(weather, plan.Place) : null;
        Candidate? byClimate = climate is null ? null : ByClimate(climate.Coldest);
        ColdAir chosen = Colder(byFile, byClimate) is not { } colder ? Unknown(plan.Place)
            : plan.Place?.ColdestC is { } ownC ? Own(ownC, colder, plan.WeatherYear)
            : Found(plan.Place, colder);
        if (chosen.Assumption is { } assumption && plan.WeatherYear is { } named)
        {
            chosen = chosen with { Assumption = assumption with { Why = $"{assumption.Why} Source of the file: {named.Source}." } };
        }

        return chosen with { ByFileC = byFile?.AirC, ByClimateC = byClimate?.AirC };
    }

    private static ColdAir Own(double ownC, Candidate colder, WeatherYear? weather)
    {
        string working = OwnWorking(ownC);
        bool doubted = ownC > colder.AirC + DesignTemperatures.ColdDoubtK || ownC > weather?.ColdestAirC;
        string value = $"{Degrees.Text(ownC, 1)}, as the plan says";
        return new(ownC, working, doubted ? new(DesignTemperatures.ColdestAir, value, $"The {colder.From} suggests it may be colder ({colder.Working}). {Moves}")
            : weather is not null ? new(DesignTemperatures.ColdestAir, value, $"Shown beside it, the {colder.From}: {colder.Working}.")
            : null)
        {
            SuggestsC = doubted ? colder.AirC : null,
        };
    }

    private static ColdAir Found(Place? place, Candidate colder)
    {
        string from = char.ToUpperInvariant(colder.From[0]) + colder.From[1..];
        if (place is not { IsElevationAssumed: true } || WorldClimate.At(place.LatitudeDeg, place.LongitudeDeg, DesignTemperatures.UnknownHeightM) is not { } high)
        {
            return new(colder.AirC, colder.Working, new(DesignTemperatures.ColdestAir, Degrees.Text(colder.AirC), $"{from}: {colder.Working}. {Moves}"));
        }

        double highC = Math.Min(colder.AirC, ByClimate(high.Coldest).AirC);
        string condition = $" if the place lies {DesignTemperatures.UnknownHeightM:0} m high (state its elevation)";
        string why = $"{from}, at sea level: {colder.Working}. The built-in climate suggests {Degrees.Text(highC)}{condition}. {Moves}";
        return new(colder.AirC, colder.Working, new(DesignTemperatures.ColdestAir, Degrees.Text(colder.AirC), why)) { SuggestsC = highC, Condition = condition };
    }

    /// <summary>Neither file nor climate: the plan's own figure, or one on the safe side.</summary>
    private static ColdAir Unknown(Place? place)
    {
        if (place?.ColdestC is { } ownC)
        {
            return new(ownC, OwnWorking(ownC), null);
        }

        double unknownC = place is not null && Math.Abs(place.LatitudeDeg) > PolarLatitudeDeg ? PolarColdestC : DesignTemperatures.UnknownColdestC;
        string reason = place is null ? "the plan names no place" : "the built-in climate does not know this place";
        return new(unknownC, $"coldest air {Degrees.Text(unknownC)}, assumed: {reason}", new(DesignTemperatures.ColdestAir, Degrees.Text(unknownC), $"Taken on the safe side, as {reason}. {Moves}"));
    }

    private static string OwnWorking(double ownC) => $"coldest air {Degrees.Text(ownC, 1)}, the plan's own figure";

    /// <summary>The colder of two, with the working of both; null where neither is there.</summary>
    private static Candidate? Colder(Candidate? file, Candidate? climate)
    {
        if (file is not { } byFile || climate is not { } byClimate)
        {
            return file ?? climate;
        }

        (Candidate colder, Candidate other) = byClimate.AirC < byFile.AirC ? (byClimate, byFile) : (byFile, byClimate);
        return colder with { Working = $"{colder.Working}; {(other.AirC > colder.AirC ? "warmer" : "the same")} by the {other.From}: {other.Working}" };
    }

    /// <summary>Rounded down to a whole degree, to the safe side; colder where the plan's place lies higher than the file's.</summary>
    private static Candidate ByFile(WeatherYear weather, Place? place)
    {
        double higherM = place is { IsElevationAssumed: false } ? Math.Max(0, place.ElevationM - weather.Place.ElevationM) : 0;
        double airC = Math.Floor(weather.ColdestAirC - DesignTemperatures.BelowWeatherFileK - (LapseKPerM * higherM));
        string daylight = weather.ColdestDaylightAirC is { } lightC ? $" (with any sun {Degrees.Text(lightC, 1)})" : "";
        string height = higherM > 0 ? $" − {LapseKPerM * higherM:0.0} K as the place lies {higherM:0} m higher" : "";
        return new(airC, $"coldest hour {Degrees.Text(weather.ColdestAirC, 1)}{daylight} − {DesignTemperatures.BelowWeatherFileK:0} K{height} = {Degrees.Text(airC)}, rounded down", "weather file");
    }

    /// <summary>Rounded down to a whole degree, to the safe side.</summary>
    private static Candidate ByClimate(ClimateMonth month)
    {
        double airC = Math.Floor(month.MeanDailyMinC - DesignTemperatures.BelowColdestMonthK);
        return new(airC, $"{month.Name} mean {Degrees.Text(month.MeanAirC, 1)} − half the daily range {month.DailyRangeK / 2:0.0} K − {DesignTemperatures.BelowColdestMonthK:0} K = {Degrees.Text(airC)}, rounded down", "built-in climate");
    }

    private readonly record struct Candidate(double AirC, string Working, string From);
}
