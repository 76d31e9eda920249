using System.Collections.Immutable;
using System.Globalization;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Growing;

/// <summary>Finds how the panels of a plan should face, with the limits of its inputs: by delivered energy, not by sunshine.</summary>
public static class TiltStudy
{
    /// <summary>Days taken about a date, so that one day's clouds do not decide.</summary>
    public const int DaysAboutDate = 15;

    /// <summary>Of so many days of a year one is looked at in the first round.</summary>
    private const int OneDayOf = 10;

    /// <summary>Within this of the best the tilt hardly matters.</summary>
    private const double Nearly = 0.99;

    /// <summary>Whether there is anything to turn: some kind of panel without a facing of its own.</summary>
    public static bool Turns(Plan plan) => plan.Panels.Any(stock => stock.Mount is null);

    /// <summary>Runs the study.</summary>
    /// <param name="plan">The plan; <see cref="Turns"/> holds. Panels with a facing of their own keep it.</param>
    /// <param name="weather">The weather.</param>
    /// <param name="date">A date to be best about, or null; its year does not count.</param>
    /// <param name="options">How the energy is run.</param>
    /// <param name="progress">Told the share done, roughly.</param>
    /// <param name="cancellation">Ends it with an <see cref="OperationCanceledException"/>.</param>
    public static TiltResult Run(Plan plan, WeatherYear weather, DateOnly? date, EnergyOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        (plan, Design design, ImmutableArray<Wiring?> wirings) = YearStudy.Wirings(plan, null, cancellation);
        FacingRuns year = new(new PlanPhysics(WithoutBatteries(plan)), wirings, weather, options, cancellation);
        List<BestFacing> spans = [BestOf(plan, "the year", year, year.Only((day, _) => day % OneDayOf == 0))];
        progress?.Report(0.4);
        (string darkName, int[] darkMonths) = weather.Place.LatitudeDeg >= 0 ? ("November to January", [11, 12, 1]) : ("May to July", new[] { 5, 6, 7 });
        FacingRuns dark = year.Only((_, at) => darkMonths.Contains(at.Month));
        spans.Add(BestOf(plan, darkName, dark, dark.Only((day, _) => day % (OneDayOf / 2) == 0)));
        progress?.Report(0.6);
        if (date is { } about)
        {
            FacingRuns days = year.Only((_, at) => Apart(at, about) <= DaysAboutDate / 2);
            spans.Add(BestOf(plan, $"{DaysAboutDate} days about {about.ToString("MMMM d", CultureInfo.InvariantCulture)}", days, days));
        }

        TwoTiltSearch? two = spans[0].Best is { } best ? new TwoTiltSearch(year, best.AzimuthDeg) : null;
        ImmutableArray<Facing> byTilt = two is null ? [] : [.. two.Coarse];
        return new TiltResult
        {
            Plan = plan,
            Design = design,
            Spans = [.. spans],
            ByTilt = byTilt,
            NearlyBest = two is null ? null : NearlyBest(byTilt, spans[0].Best!),
            Two = two?.Best(spans[0].Best!.DeliveredKWh),
            Fixed = [.. plan.Panels.Where(stock => stock.Mount is not null).Select(stock => stock.Panel.Name)],
            WeatherSource = weather.Source,
            Assumed = [.. plan.Assumed, .. YearAssumptions.Of(plan, weather, options)],
            Cautions = Cautions.For(design.HighestVocColdV),
        };
    }

    private static BestFacing BestOf(Plan plan, string span, FacingRuns exact, FacingRuns few) => new()
    {
        Span = span,
        Own = exact.Of(plan.Mount.TiltDeg, plan.Mount.AzimuthDeg),
        Best = FacingSearch.Best(exact, few),
        BestTilt = FacingSearch.BestTilt(exact, few, plan.Mount.AzimuthDeg),
    };

    /// <summary>What reaches an input does not depend on the battery behind it.</summary>
    private static Plan WithoutBatteries(Plan plan) => plan with
    {
        Inputs = [.. plan.Inputs.Select(planned => planned with { Input = planned.Input with { Battery = null } })],
        Units = [.. plan.Units.Select(unit => unit with { Battery = null })],
    };

    /// <summary>Days between two dates of a year without a leap day, the short way round.</summary>
    private static int Apart(DateOnly one, DateOnly other)
    {
        static int DayOfYear(DateOnly date) => new DateOnly(2025, date.Month, Math.Min(date.Day, DateTime.DaysInMonth(2025, date.Month))).DayOfYear;
        int days = Math.Abs(DayOfYear(one) - DayOfYear(other));
        return Math.Min(days, 365 - days);
    }

    /// <summary>Where the curve over tilts, straight between those that were run, crosses 99 % of the best.</summary>
    private static (double LeastDeg, double MostDeg) NearlyBest(ImmutableArray<Facing> byTilt, Facing best)
    {
        Facing[] line = [.. byTilt.Append(best).DistinctBy(facing => facing.TiltDeg).OrderBy(facing => facing.TiltDeg)];
        double wantedKWh = Nearly * best.DeliveredKWh;
        int at = Array.FindIndex(line, facing => facing.TiltDeg == best.TiltDeg);
        return (Crossing(line, at, -1, wantedKWh), Crossing(line, at, 1, wantedKWh));
    }

    private static double Crossing(Facing[] line, int at, int step, double wantedKWh)
    {
        while (at + step >= 0 && at + step < line.Length)
        {
            Facing inside = line[at];
            Facing next = line[at + step];
            if (next.DeliveredKWh < wantedKWh)
            {
                return inside.TiltDeg + ((next.TiltDeg - inside.TiltDeg) * (inside.DeliveredKWh - wantedKWh) / (inside.DeliveredKWh - next.DeliveredKWh));
            }

            at += step;
        }

        return line[at].TiltDeg;
    }
}
