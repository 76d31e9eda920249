using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Parts;
using Arraywright.Testing;
using CsCheck;
using static Arraywright.Tests.Parts.PartsScene;

namespace Arraywright.Tests.Parts;

/// <summary>The drops of the pieces against the circuit that the solver sees: independent sums over the same array.</summary>
public sealed class DropTests
{
    private static readonly Cable Long = Copper with
    {
        StringLengthM = Sourced.Given(3.0),
        StringAreaMm2 = Sourced.Given(2.5),
        ExtensionLengthM = 6,
        ExtensionAreaMm2 = 6,
        ContactOhm = Sourced.Given(0.004),
    };

    [Fact]
    public void Pieces_heat_as_much_as_the_copper_and_contacts_of_the_circuit_in_any_tree() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            (Plan plan, Wiring wiring) = Random(seed);
            InputParts input = PartsScene.Of(plan).Inputs[0];
            PlanPhysics physics = new(plan);
            Circuit circuit = new(physics.Tree(wiring, physics.Seen(StatedConditions.None)));
            double lostW = circuit.WireLossW(input.Operating.VoltageV);
            double piecesW = input.Pieces.Sum(piece => piece.Ohm * piece.CurrentA * piece.CurrentA);
            Assert.Equal(lostW, piecesW, 1e-6 * lostW);
            Assert.True(lostW > 0);
        },
        iter: 60);

    [Theory]
    [InlineData("4*shed")]
    [InlineData("2*shed | 2*shed")]
    [InlineData("shed + barn | 2*barn | 2*shed")]
    public void From_bare_panels_to_the_input_every_string_drops_what_its_pieces_do(string text)
    {
        PartsList list = PartsScene.Of(text, plan => plan with { Cable = Long });
        InputParts input = list.Inputs[0];
        PlanPhysics physics = new(list.Plan);
        ImmutableArray<Conditions> seen = physics.Seen(StatedConditions.None);
        ImmutableArray<Wiring> strings = input.Wiring!.Strings;
        double most = 0;
        for (int i = 0; i < strings.Length; i++)
        {
            bool isOne = input.Wiring is not Wiring.Parallel;
            Piece[] ofString = [.. input.Pieces.Where(piece => isOne || piece.Place.Path is [] || piece.Place.Path[0] == i + 1)];
            double stringA = isOne ? input.Operating.CurrentA : ofString.First(piece => piece is { Kind: PieceKind.StringConductor }).CurrentA;
            CircuitTree bare = CircuitTree.Of(strings[i], name => physics.Shaded(name, physics.Of(name, seen)), WireResistances.None);
            double panelsV = new Circuit(bare).VoltageAt(stringA);
            double dropV = ofString.Sum(piece => piece.DropV);
            Assert.Equal(panelsV - input.Operating.VoltageV, dropV, 1e-6 * panelsV);
            most = Math.Max(most, dropV);
        }

        Assert.Equal(most, input.DropV, 1e-9);
        Assert.Equal(input.Operating.CurrentA, strings.Select((_, i) => input.Pieces.First(piece => piece.Kind == PieceKind.StringConductor && (piece.Place.Path is [] || piece.Place.Path[0] == i + 1)).CurrentA).Sum(), 1e-8);
    }

    [Fact]
    public void Two_equal_strings_drop_by_hand_what_the_list_says()
    {
        // Run: 2 × 10 m × 5.09 mΩ/m (IEC 60228 class 5, tinned) × (1 + 0.00393 × 30) = 113.8 mΩ; each string 3 connectors of 0.5 mΩ, one more at the unit.
        InputParts input = PartsScene.Of("2*shed | 2*shed").Inputs[0];
        double ohm = 2 * 10 * 0.00509 * (1 + (0.00393 * 30));
        double amps = input.Operating.CurrentA;
        Assert.Equal((amps * (ohm + 0.0005)) + (amps / 2 * 3 * 0.0005), input.DropV, 1e-9);
        Assert.Equal(100 * input.DropV / input.Operating.VoltageV, input.DropPercent, 1e-9);
    }

    [Fact]
    public void The_heat_of_a_year_is_that_of_its_hours()
    {
        Plan plan = Plan("2*shed | 2*shed", bare => bare with { Goal = Goal.Year, Place = new Place(54.6, -3.1, 200, -14, null) });
        PlanPhysics physics = new(plan);
        SunSeries series = SunOnPanels.Of(plan, SyntheticYear.For(plan)!, SunOptions.Of(plan));
        double wattHours = 0;
        for (int step = 0; step < series.Count; step++)
        {
            StockSun sun = series.Stocks[0];
            double usefulWPerM2 = sun.UsefulWPerM2[step];
            double HeatW(double share)
            {
                Conditions now = new(usefulWPerM2 * share, sun.CellC[step]);
                Circuit circuit = new(physics.Tree(plan.Inputs[0].StatedWiring!, [now, now]));
                return circuit.WireLossW(circuit.TakenBy(PlanPhysics.Window(plan.Inputs[0].Input)).VoltageV);
            }

            if (usefulWPerM2 > 1)
            {
                // Bright minutes of a mixed hour count with the square of their current.
                wattHours += series.StepH * (WithinStep.Of(usefulWPerM2, sun.ClearWPerM2[step]) is { } parts
                    ? (parts.BrightShare * HeatW(parts.Bright)) + ((1 - parts.BrightShare) * HeatW(parts.Clouded))
                    : HeatW(1));
            }
        }

        // Moments that stand for many hours each: within 3 %.
        double heatKWh = PartsScene.Of(plan).Inputs[0].HeatKWh!.Value;
        Assert.InRange(heatKWh / (wattHours / 1000), 0.97, 1.03);
    }

    [Fact]
    public void Thicker_cable_never_drops_more_nor_does_another_cable_bring_less()
    {
        double before = double.PositiveInfinity;
        foreach (double mm2 in new[] { 2.5, 4, 6, 10, 16, 25 })
        {
            double dropV = PartsScene.Of("2*shed | 2*shed", plan => plan with { Cable = Copper with { AreaMm2 = Sourced.Given(mm2) } }).Inputs[0].DropV;
            Assert.True(dropV < before);
            before = dropV;
        }
    }

    private static (Plan Plan, Wiring Wiring) Random(int seed)
    {
        Random random = new(seed);
        int panels = random.Next(1, 9);
        Wiring wiring = WiringText.Canonical(RandomArrays.Wiring(random, 0, panels));
        PanelStock[] stocks = [.. Enumerable.Range(0, panels).Select(i => random.Next(2) == 0 ? Stock($"{i}", 22.9, 6.72, 18.9, 6.35, 1) : Stock($"{i}", 24.3, 10.41, 20.2, 9.9, 1))];
        Plan plan = Plan("", bare => bare with { Panels = [.. stocks], Cable = random.Next(2) == 0 ? Long : Copper });
        return (plan with { Inputs = [plan.Inputs[0] with { StatedWiring = wiring }] }, wiring);
    }
}
