using System.Collections.Immutable;

namespace Arraywright.Energy;

/// <summary>A year of steps distilled into a few moments, so that weights times watts give nearly the year's energy for any wiring.</summary>
/// <remarks>
/// Steps alike are put together (<see cref="Partition"/>) and stand as their mean: irradiance by the hours, cell temperature by the irradiance, since
/// power goes with their product. What remains is what a limit bends: where any limit L is as likely as another, the integral over L of what a group's
/// mean makes of min(P, L), less the mean of min(P, L), is half the group's variance of P. So the best groups are those of least squares, and they are
/// narrow where the energy is. A step is placed by the power of each kind of panel (0.4 % less a kelvin, usual for silicon), one coordinate for each that
/// faces its own way or is shaded at its own hours, and by what warmth does to the voltage (0.3 % a kelvin), for windows.
/// How far they are out is in docs/models-climate.md: little where all panels face one way, most for panels in series that face different ways.
/// </remarks>
public static class DistilledMoments
{
    private const double PowerPerK = 0.004;
    private const double VoltagePerK = 0.003;

    /// <summary>Moments with weights in hours; each kind of panel sees what shade by the hour leaves. Steps in which no input starts are left out.</summary>
    /// <param name="series">The sun on every kind of panel.</param>
    /// <param name="most">How many moments at most, 1 or more: 24 serve where all panels see the same sun, 40 where they do not.</param>
    /// <param name="spread">Whether mixed steps count as their bright and their clouded part, as <see cref="EnergyRun"/> takes them.</param>
    public static ImmutableArray<Moment> Of(SunSeries series, int most, bool spread)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        int stocks = series.Stocks.Length;
        Spell[] lit = Lit(series, spread && series.AveragedOverH > WithinStep.ShortestH);
        int[] group = Partition.Of(Coordinates(series, lit), most);
        double[] weightH = new double[most];
        double[] irradiance = new double[most * stocks];
        double[] warmth = new double[most * stocks];
        for (int i = 0; i < lit.Length; i++)
        {
            double hours = series.StepH * lit[i].Share;
            weightH[group[i]] += hours;
            for (int stock = 0; stock < stocks; stock++)
            {
                int at = (group[i] * stocks) + stock;
                StockSun sun = series.Stocks[stock];
                double seenWh = hours * SeenWPerM2(sun, lit[i]);
                irradiance[at] += seenWh;
                warmth[at] += seenWh * sun.CellC[lit[i].Step];
            }
        }

        var moments = ImmutableArray.CreateBuilder<Moment>(most);
        for (int one = 0; one < most; one++)
        {
            if (weightH[one] > 0)
            {
                Range own = (one * stocks)..((one + 1) * stocks);
                moments.Add(new Moment(weightH[one], Means(irradiance.AsSpan(own), warmth.AsSpan(own), weightH[one])));
            }
        }

        return moments.ToImmutable();
    }

    /// <summary>A step, or its bright or clouded part.</summary>
    private readonly record struct Spell(int Step, double Share, double Brightness);

    private static ImmutableArray<Conditions> Means(ReadOnlySpan<double> irradiance, ReadOnlySpan<double> warmth, double hours)
    {
        var seen = ImmutableArray.CreateBuilder<Conditions>(irradiance.Length);
        for (int stock = 0; stock < irradiance.Length; stock++)
        {
            seen.Add(irradiance[stock] > 0 ? new Conditions(irradiance[stock] / hours, warmth[stock] / irradiance[stock]) : new Conditions(0, Conditions.Standard.CellC));
        }

        return seen.MoveToImmutable();
    }

    private static double SeenWPerM2(StockSun sun, in Spell spell) => sun.UsefulWPerM2[spell.Step] * spell.Brightness * (1 - sun.ShadedFraction[spell.Step]);

    private static Spell[] Lit(SunSeries series, bool spread)
    {
        var lit = new List<Spell>(series.Count);
        StockSun first = series.Stocks[0];
        for (int step = 0; step < series.Count; step++)
        {
            if (!IsLit(series, step))
            {
                continue;
            }

            if (spread && WithinStep.Of(first.UsefulWPerM2[step], first.ClearWPerM2[step]) is { } parts)
            {
                lit.Add(new Spell(step, parts.BrightShare, parts.Bright));
                lit.Add(new Spell(step, 1 - parts.BrightShare, parts.Clouded));
            }
            else
            {
                lit.Add(new Spell(step, 1, 1));
            }
        }

        return [.. lit];
    }

    private static bool IsLit(SunSeries series, int step)
    {
        foreach (StockSun sun in series.Stocks)
        {
            if (sun.UsefulWPerM2[step] >= MovingArray.DarkWPerM2)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The power of each kind of panel that sees something of its own, and what the warmth of the first takes off its voltage.</summary>
    private static double[][] Coordinates(SunSeries series, Spell[] lit)
    {
        var all = new List<double[]>(series.Stocks.Length + 1);
        for (int stock = 0; stock < series.Stocks.Length; stock++)
        {
            if (!SeesAsAnEarlierOne(series.Stocks, stock))
            {
                all.Add(WithWarmth(series.Stocks[stock], lit, 1, PowerPerK));
            }
        }

        all.Add(WithWarmth(series.Stocks[0], lit, 0, VoltagePerK));
        return [.. all];
    }

    /// <summary>Irradiance times (whole − perK · kelvins above 25 °C), step by step.</summary>
    private static double[] WithWarmth(StockSun sun, Spell[] lit, double whole, double perK)
    {
        double[] along = new double[lit.Length];
        for (int i = 0; i < lit.Length; i++)
        {
            along[i] = SeenWPerM2(sun, lit[i]) * (whole - (perK * (sun.CellC[lit[i].Step] - Conditions.Standard.CellC)));
        }

        return along;
    }

    /// <summary>Whether an earlier kind has the same plane and shade; cells that run a little warmer or cooler follow the sun all the same.</summary>
    private static bool SeesAsAnEarlierOne(ImmutableArray<StockSun> stocks, int stock)
    {
        for (int earlier = 0; earlier < stock; earlier++)
        {
            if (stocks[stock].UsefulWPerM2.AsSpan().SequenceEqual(stocks[earlier].UsefulWPerM2)
                && stocks[stock].ShadedFraction.AsSpan().SequenceEqual(stocks[earlier].ShadedFraction))
            {
                return true;
            }
        }

        return false;
    }
}
