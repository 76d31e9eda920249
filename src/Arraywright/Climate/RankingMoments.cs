using System.Collections.Immutable;
using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>The few moments that wirings are ranked by, before an hourly year is computed.</summary>
/// <remarks>
/// Six strengths of sun (<see cref="LoadWeighting"/>) in the cooler and the warmer half of the year. A share w of a year's irradiation H (kWh/m²) that
/// comes at G W/m² stands for w·H/(G/1000) hours, so that weights times watts add to the energy of a year. H is that of a horizontal plane:
/// tilt is not in it. Shade of the whole panel or of groups of cells is not in it either (the panel model applies it); shade by the hour is, as
/// the share it keeps off a clear day.
/// </remarks>
public sealed record RankingMoments
{
    private const double UnknownCoolShare = 0.3;
    private const double UnknownCoolC = 5;
    private const double UnknownWarmC = 20;

    /// <summary>The moments; for the goal "peak" a single one of weight 1.</summary>
    public required ImmutableArray<Moment> Moments { get; init; }

    /// <summary>What was filled in.</summary>
    public required ImmutableArray<Assumption> Assumptions { get; init; }

    /// <summary>True when weights are hours a year, so that weights times watts are Wh a year; false when they add to 1 and give mean watts.</summary>
    public required bool IsYearEnergy { get; init; }

    /// <summary>The moments of a plan.</summary>
    /// <param name="plan">The plan. The goals "year" and "day" are ranked alike, by the year: a plan names no date.</param>
    /// <param name="stated">For the goal "peak": what each kind of panel sees, in plan order; null for standard test conditions.</param>
    /// <exception cref="ArgumentException"><paramref name="stated"/> has not one entry for each kind of panel.</exception>
    public static RankingMoments For(Plan plan, ImmutableArray<Conditions>? stated = null) =>
        plan.Goal == Goal.Peak ? Peak(plan, stated) : Year(plan, plan.Place is { } place ? WorldClimate.Of(place) : null);

    private static RankingMoments Peak(Plan plan, ImmutableArray<Conditions>? stated)
    {
        if (stated is { } given && given.Length != plan.Panels.Length)
        {
            throw new ArgumentException($"One entry for each of the {plan.Panels.Length} kinds of panel, not {given.Length}.", nameof(stated));
        }

        return new RankingMoments
        {
            Moments = [new Moment(1, stated ?? [.. Enumerable.Repeat(Conditions.Standard, plan.Panels.Length)])],
            Assumptions = stated is null
                ? [new("conditions of the peak", "1000 W/m², 25 °C cell", "Standard test conditions, as labels are printed. In real strong sun cells run 20 to 40 K hotter and give 6 to 15 % less.")]
                : [],
            IsYearEnergy = false,
        };
    }

    private static RankingMoments Year(Plan plan, MonthlyClimate? climate)
    {
        (Season cool, Season warm) = climate is null
            ? (new Season(UnknownCoolShare, UnknownCoolC), new Season(1 - UnknownCoolShare, UnknownWarmC))
            : HalfYears(climate);
        LoadWeighting weighting = climate is null ? LoadWeighting.European : LoadWeighting.For(climate.AnnualHorizontalKWhPerM2);
        double scale = climate?.AnnualHorizontalKWhPerM2 ?? 1 / weighting.Levels.Sum(level => level.EnergyShare / level.Fraction);

        var moments = ImmutableArray.CreateBuilder<Moment>(2 * weighting.Levels.Length);
        foreach (Season season in (ReadOnlySpan<Season>)[cool, warm])
        {
            foreach (LoadLevel level in weighting.Levels)
            {
                moments.Add(new Moment(scale * season.EnergyShare * level.EnergyShare / level.Fraction, Seen(plan, level, season)));
            }
        }

        return new RankingMoments
        {
            Moments = moments.MoveToImmutable(),
            Assumptions = Assumed(plan, climate, weighting, cool, warm),
            IsYearEnergy = climate is not null,
        };
    }

    private static ImmutableArray<Conditions> Seen(Plan plan, LoadLevel level, Season season)
    {
        var all = ImmutableArray.CreateBuilder<Conditions>(plan.Panels.Length);
        foreach (PanelStock stock in plan.Panels)
        {
            double irradianceWPerM2 = 1000 * level.Fraction * (1 - ClearDay.ShareKeptOff(stock.Shade.Hours));
            all.Add(new Ambient(irradianceWPerM2, season.AirC, CellTemperature.UsualWindMPerS).On(stock, plan.Mount));
        }

        return all.MoveToImmutable();
    }

    private static (Season Cool, Season Warm) HalfYears(MonthlyClimate climate)
    {
        ClimateMonth[] byWarmth = [.. climate.Months.OrderBy(month => month.MeanAirC)];
        return (Half(byWarmth.AsSpan(0, 6)), Half(byWarmth.AsSpan(6)));

        Season Half(ReadOnlySpan<ClimateMonth> months)
        {
            double sunKWhPerM2 = 0;
            double warmth = 0;
            foreach (ClimateMonth month in months)
            {
                sunKWhPerM2 += month.HorizontalKWhPerM2;
                warmth += month.HorizontalKWhPerM2 * month.DaytimeAirC;
            }

            // Never 0: at 84° N, where the built-in climate ends, the mean days of only five months are dark.
            return new(sunKWhPerM2 / climate.AnnualHorizontalKWhPerM2, warmth / sunKWhPerM2);
        }
    }

    private static ImmutableArray<Assumption> Assumed(Plan plan, MonthlyClimate? climate, LoadWeighting weighting, Season cool, Season warm)
    {
        var all = ImmutableArray.CreateBuilder<Assumption>();
        string source = (climate, plan.Place) switch
        {
            (not null, _) => "Built-in climate",
            (null, null) => "No place is named: a middling climate is taken",
            (null, _) => "The built-in climate does not know this place: a middling one is taken",
        };
        all.Add(climate is null
            ? new("sun over the year", $"{weighting.Name} weighting", $"{source}. Results are mean watts while the sun shines, not kWh a year.")
            : new("sun over the year", $"{climate.AnnualHorizontalKWhPerM2:0} kWh/m² on the flat, {weighting.Name} weighting", $"{source}, within 10 % in most places. The tilt of the panels is not counted: kWh move with it, the order of wirings rarely."));
        all.Add(new("air temperature while the sun shines", $"{Degrees.Text(cool.AirC)} cooler half-year, {Degrees.Text(warm.AirC)} warmer half-year", $"{source}. 5 K hotter lowers energy by about 2 %."));
        all.Add(new("wind", $"{CellTemperature.UsualWindMPerS:0} m/s", "As panels are rated for their heat (NOCT). At 3 m/s strong sun finds the cells up to 4 K cooler, and energy about 1 % higher."));
        AddFromPlan(plan, all);
        return all.ToImmutable();
    }

    private static void AddFromPlan(Plan plan, ImmutableArray<Assumption>.Builder all)
    {
        foreach (PanelStock stock in plan.Panels)
        {
            if (!stock.Shade.Hours.IsEmpty)
            {
                all.Add(new($"shade by the hour on {stock.Panel.Name}", $"{100 * ClearDay.ShareKeptOff(stock.Shade.Hours):0} % less sun all day", "Share kept off a clear day from 6 to 18 h. The hours themselves count only in the hourly year."));
            }
        }

        if (plan.Goal == Goal.Day)
        {
            all.Add(new("day to be best on", "the mean of the year", "The plan names no date."));
        }

        if (plan.Place?.Weather is { } weather)
        {
            all.Add(new("weather for ranking", "built-in climate", $"The wirings are ranked by the monthly climate; {weather} counts only in the hourly year."));
        }
    }

    /// <summary>Half of the year: its share of the irradiation and its air temperature while the sun shines, weighted by the sun.</summary>
    private readonly record struct Season(double EnergyShare, double AirC);
}
