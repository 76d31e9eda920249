using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Energy;

/// <summary>A random plan in random weather: up to three kinds of panel in any wiring, some shaded, on an input with a battery.</summary>
/// <param name="Plan">The plan; its one input states the wiring.</param>
/// <param name="Series">What its panels see: some days of steps of an hour or less, from black night to more sun than a clear sky gives.</param>
internal sealed record EnergyScene(Plan Plan, SunSeries Series)
{
    public static Gen<EnergyScene> Any { get; } =
        Gen.Select(Gens.Panel.Array[1, 3], Gens.WiringOf(["a", "b", "c"], 2, 3), Gen.Int[0, int.MaxValue - 1]).Select((panels, wiring, seed) => Of(panels, wiring, new Random(seed)));

    /// <summary>Steps that one is taken of, to be quick.</summary>
    private const int Every = 3;

    public DcInput Input => Plan.Inputs[0].Input;

    public EnergyScene With(DcInput input) => this with { Plan = Plan with { Inputs = [Plan.Inputs[0] with { Input = input }] } };

    private static EnergyScene Of(Panel[] panels, Wiring wiring, Random random)
    {
        ImmutableArray<PanelStock> stocks = [.. new[] { "a", "b", "c" }.Select((name, index) =>
        {
            Panel panel = panels[index % panels.Length] with { Name = name };
            Shade shade = random.Next(4) switch
            {
                0 => new Shade(random.NextDouble(), [], []),
                1 => new Shade(0, [random.NextDouble()], []),
                _ => Shade.None,
            };
            return new PanelStock(panel, wiring.Panels.Count(used => used == name), shade, null);
        })];
        double voltsV = wiring.Panels.Sum(name => stocks.Single(stock => stock.Panel.Name == name).Panel.OpenCircuitV);
        double watts = wiring.Panels.Sum(name => stocks.Single(stock => stock.Panel.Name == name).Panel.PowerW.Value);
        double amps = wiring.Panels.Max(name => stocks.Single(stock => stock.Panel.Name == name).Panel.ShortCircuitA);
        Limit Some(double most) => new(most * (0.1 + random.NextDouble()), Evidence.Nothing);
        double from = random.NextDouble();
        DcInput input = new()
        {
            Name = "store",
            MaxVoltageV = 2 * voltsV,
            StartVoltageV = random.Next(2) == 0 ? null : 0.3 * voltsV * random.NextDouble(),
            TrackingMinV = random.Next(2) == 0 ? null : 0.2 * voltsV * random.NextDouble(),
            TrackingMaxV = random.Next(2) == 0 ? null : voltsV * (0.3 + random.NextDouble()),
            RatedCurrent = random.Next(2) == 0 ? null : Some(amps),
            MaxPower = random.Next(2) == 0 ? null : Some(watts),
            EfficiencyFraction = random.Next(2) == 0 ? null : 0.8 + (0.2 * random.NextDouble()),
            SelfUseW = random.Next(2) == 0 ? 0 : 0.02 * watts,
            Battery = new Battery(watts * (0.2 + (10 * random.NextDouble())), from, from + ((1 - from) * random.NextDouble()), 0.2 * watts * random.NextDouble())
            {
                Chemistry = (BatteryChemistry)random.Next(3),
                MaxChargeW = random.Next(2) == 0 ? null : watts * random.NextDouble(),
                ReserveFraction = 0.5 * random.NextDouble(),
            },
        };
        Plan plan = new()
        {
            Name = "any",
            Goal = Goal.Year,
            Place = null,
            Mount = new Mount(30, 180, MountKind.OpenRack),
            Panels = stocks,
            Inputs = [new PlannedInput(input, wiring)],
            Units = [],
            Cable = new Cable(Sourced.Given(20 * random.NextDouble()), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
            Assumed = [],
            Doubts = [],
        };
        return new EnergyScene(plan, Days(stocks.Length, random));
    }

    /// <summary>Two to four days; every kind of panel sees its own share of the same sun.</summary>
    private static SunSeries Days(int stocks, Random random)
    {
        int perHour = new[] { 1, 2, 4 }[random.Next(3)];
        int days = random.Next(2, 5);
        double stepH = 1.0 / perHour;
        int count = days * 24 * perHour / Every;
        int[] span = new int[count];
        int[] day = new int[count];
        double[] endHour = new double[count];
        double[] clear = new double[count];
        double[] share = new double[count];
        for (int i = 0; i < count; i++)
        {
            double hour = (Every * i * stepH % 24) + stepH;
            endHour[i] = Math.Min(24, hour);
            day[i] = (int)(Every * i * stepH / 24);
            span[i] = day[i] % 2;
            clear[i] = Math.Max(0, 1050 * Math.Sin((hour - 6) / 12 * Math.PI));
            share[i] = 1.2 * random.NextDouble();
        }

        ImmutableArray<StockSun> suns = [.. Enumerable.Range(0, stocks).Select(_ =>
        {
            double facing = 0.3 + (0.7 * random.NextDouble());
            double airC = -20 + (50 * random.NextDouble());
            double[] useful = [.. clear.Zip(share, (sun, part) => sun * part * facing)];
            double[] shaded = [.. clear.Select(_ => random.Next(4) == 0 ? random.NextDouble() : 0)];
            return new StockSun([.. useful.Select(sun => 1.05 * sun)], useful, shaded, [.. useful.Select(sun => airC + (sun / 35))], [.. clear.Select(sun => sun * facing)]);
        })];
        return new SunSeries(stepH, ["even", "odd"], span, day, endHour, suns);
    }
}
