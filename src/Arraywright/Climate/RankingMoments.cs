using System.Collections.Immutable;
using Arraywright.Sky;

namespace Arraywright.Climate;

/// <summary>The few moments that wirings are ranked by, where no weather is known or the peak is asked for; else they are distilled from the weather.</summary>
/// <remarks>
/// Without a place: six strengths of sun (<see cref="LoadWeighting.European"/>) in the cooler and the warmer half of a middling year. A share w of the energy at
/// G W/m² lasts in proportion to w/G. Shade of the whole panel or of groups of cells is not in it (the panel model applies it); shade by the hour is, as
/// the share it keeps off a clear day.
/// </remarks>
public sealed record RankingMoments
{
    /// <summary>A middling year: the cooler half has 0.3 of the energy in air of 5 °C, the warmer the rest at 20 °C, as in middle Europe.</summary>
    private static readonly ImmutableArray<(double EnergyShare, double AirC)> HalfYears = [(0.3, 5), (0.7, 20)];

    /// <summary>The moments; for the goal "peak" a single one of weight 1.</summary>
    public required ImmutableArray<Moment> Moments { get; init; }

    /// <summary>What was filled in.</summary>
    public required ImmutableArray<Assumption> Assumptions { get; init; }

    /// <summary>True when weights are hours a year, so that weights times watts are Wh a year; false when they add to 1 and give mean watts.</summary>
    public required bool IsYearEnergy { get; init; }

    /// <summary>The moments of a plan whose weather is not known, or whose goal is the peak.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stated">For the goal "peak": what each kind of panel sees, in plan order; null for standard test conditions.</param>
    /// <exception cref="ArgumentException"><paramref name="stated"/> has not one entry for each kind of panel.</exception>
    public static RankingMoments For(Plan plan, ImmutableArray<Conditions>? stated = null) =>
        plan.Goal == Goal.Peak ? Peak(plan, stated) : Middling(plan);

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

    private static RankingMoments Middling(Plan plan)
    {
        double scale = 1 / LoadWeighting.European.Sum(level => level.EnergyShare / level.Fraction);
        return new RankingMoments
        {
            Moments =
            [
                .. from half in HalfYears
                   from level in LoadWeighting.European
                   select new Moment(scale * half.EnergyShare * level.EnergyShare / level.Fraction, Seen(plan, level, half.AirC)),
            ],
            Assumptions = [.. Assumed(plan)],
            IsYearEnergy = false,
        };
    }

    private static ImmutableArray<Conditions> Seen(Plan plan, LoadLevel level, double airC) =>
    [
        .. plan.Panels.Select(stock => new Ambient(
            1000 * level.Fraction * (1 - ClearDay.ShareKeptOff(stock.Shade.Hours)), airC, CellTemperature.UsualWindMPerS).On(stock, plan.Mount)),
    ];

    private static IEnumerable<Assumption> Assumed(Plan plan)
    {
        string source = plan.Place is null
            ? "No place is named: a middling climate is taken"
            : "The built-in climate does not know this place: a middling one is taken";
        yield return new("sun over the year", "European weighting", $"{source}. Results are mean watts while the sun shines, not kWh a year.");
        yield return new(
            "air temperature while the sun shines",
            $"{Degrees.Text(HalfYears[0].AirC)} cooler half-year, {Degrees.Text(HalfYears[1].AirC)} warmer half-year",
            $"{source}. 5 K hotter lowers energy by about 2 %.");
        yield return new("wind", $"{CellTemperature.UsualWindMPerS:0} m/s", "As panels are rated for their heat (NOCT). At 3 m/s strong sun finds the cells up to 4 K cooler, and energy about 1 % higher.");
        foreach (PanelStock stock in plan.Panels.Where(stock => !stock.Shade.Hours.IsEmpty))
        {
            yield return new($"shade by the hour on {stock.Panel.Name}", $"{100 * ClearDay.ShareKeptOff(stock.Shade.Hours):0} % less sun all day", "Share kept off a clear day from 6 to 18 h. With a place the hours themselves count.");
        }

        if (plan.Goal == Goal.Day)
        {
            yield return new("day to be best on", "the mean of the year", "Days differ by place, and none is known.");
        }
    }
}
