using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Electrical.Solving;
using CsCheck;

namespace Arraywright.Tests.Electrical;

/// <summary>
/// Groups in series whose light differs by factors: at dusk one panel sees the last sun and the others a hundredth of it.
/// Held to nested halving, a way of solving of the test's own.
/// </summary>
public sealed class UnequalLightTests
{
    private const double StringOhm = 0.012880222000000002;
    private const double RunOhm = 0.34190666000000003;

    /// <summary>Two strings at dusk: from open circuit straight to about one voltage in a hundred here, Newton's steps go to and fro for ever.</summary>
    [Fact]
    public void Strings_at_dusk_settle_at_every_voltage()
    {
        CircuitTree.Group last = Group(0.0105518, 1.68e-12, 0.187, 4.738e-5, 0.3858, 3.8);
        CircuitTree.Group[][] strings =
        [
            [.. Enumerable.Repeat(Group(0.0186015, 3.02e-12, 0.1136, 1.332e-6, 0.4203, 6.72), 2)],
            [Group(0.0096713, 2.71e-12, 0.1193, 3.17e-5, 0.3967, 6.1), Group(0.0241783, 2.71e-12, 0.1193, 7.925e-5, 0.3967, 6.1), last, last],
        ];
        Network network = Over(strings);
        for (int millivolt = 13000; millivolt < 16000; millivolt++)
        {
            double voltageV = millivolt / 1000.0;
            network.StartAtOpenCircuit();
            network.SolveAtVoltage(voltageV);
            if (millivolt % 50 == 0)
            {
                Assert.Equal(HalvedA(strings, voltageV), network.CurrentA, 1e-9);
            }
        }
    }

    [Fact]
    public void Light_over_four_decades_settles_at_any_voltage() =>
        Gen.Select(Gen.Double[-4, 0].Array[2, 9].Array[1, 3], Gen.Double[0, 1]).Sample(
            (decades, share) =>
            {
                CircuitTree.Group[][] strings = [.. decades.Select(one => one.Select(decade => LitBy(Math.Pow(10, decade))).ToArray())];
                double voltageV = share * 11 * strings.Min(groups => groups.Length);
                Network network = Over(strings);
                network.StartAtOpenCircuit();
                network.SolveAtVoltage(voltageV);
                double expectedA = HalvedA(strings, voltageV);
                Assert.Equal(expectedA, network.CurrentA, 1e-8 * (1 + Math.Abs(expectedA)));
            },
            iter: 60);

    private static CircuitTree.Group LitBy(double suns) => Group(9 * suns, 2e-12, 0.12, 3e-3 * suns, 0.4, 9);

    private static CircuitTree.Group Group(double lightA, double saturationA, double seriesOhm, double shuntS, double idealityV, double bypassRatedA) =>
        new(new DiodeParameters(lightA, saturationA, seriesOhm, shuntS, idealityV), BypassDiode.Schottky(bypassRatedA), 0, 0);

    private static Network Over(CircuitTree.Group[][] strings) => new(CircuitTree.Of(
        Wiring.InParallel(strings.Select((groups, s) => Wiring.InSeries(groups.Select((_, g) => new Wiring.Single($"{s}.{g}"))))),
        name => name.Split('.') is [string s, string g] && strings[int.Parse(s, CultureInfo.InvariantCulture)][int.Parse(g, CultureInfo.InvariantCulture)] is var group
            ? new PanelAtWork([group.Cells], group.Bypass, 0)
            : null!,
        new WireResistances(RunOhm, StringOhm, 0)));

    private static double HalvedA(CircuitTree.Group[][] strings, double voltageV) =>
        FallingZero(currentA => strings.Sum(groups => StringA(groups, voltageV + (currentA * RunOhm))) - currentA, -40, 40);

    /// <summary>The current at which the groups' voltages, less the string's wire, add up.</summary>
    private static double StringA(CircuitTree.Group[] groups, double voltageV) =>
        FallingZero(currentA => groups.Sum(group => GroupV(group, currentA)) - (currentA * StringOhm) - voltageV, -40, 40);

    /// <summary>A group's voltage at a current: single-diode model with a bypass diode across, by halving on the junction voltage.</summary>
    private static double GroupV(CircuitTree.Group group, double currentA)
    {
        (DiodeParameters cells, BypassDiode bypass) = (group.Cells, group.Bypass);
        double CellsA(double x) => cells.LightCurrentA - (cells.SaturationCurrentA * (Math.Exp(x / cells.IdealityV) - 1)) - (x * cells.ShuntSiemens);
        double TerminalV(double x) => x - (CellsA(x) * cells.SeriesOhm);
        double BypassA(double groupV) => bypass.SaturationCurrentA * (Math.Exp(-groupV / bypass.IdealityV) - 1);
        return TerminalV(FallingZero(x => CellsA(x) + BypassA(TerminalV(x)) - currentA, -5, 20));
    }

    private static double FallingZero(Func<double, double> falling, double low, double high)
    {
        for (int halving = 0; halving < 45; halving++)
        {
            double middle = (low + high) / 2;
            (low, high) = falling(middle) > 0 ? (middle, high) : (low, middle);
        }

        return low;
    }
}
