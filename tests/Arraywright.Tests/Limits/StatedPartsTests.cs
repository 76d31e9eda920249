using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Testing;
using Arraywright.Tests.Parts;
using CsCheck;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>Two strings offer 2 × 6.72 = 13.44 A, and 1.25 × 13.44 = 16.8 A in strong sun (NEC 690.8(A)(1), by hand): more than many a plug bears.</summary>
public sealed class StatedPartsTests
{
    private static Finding[] Judge(double? connectorA, double? socketA) =>
        [.. DesignRules.Judge(Side(Row(2, "shed-120"), Row(2, "shed-120")).On(Input(60) with { ConnectorA = connectorA, SocketA = socketA })).Where(finding => finding.Rule == "stated_parts")];

    [Fact]
    public void Nothing_is_said_where_nothing_is_stated() => Assert.Empty(Judge(null, null));

    [Theory]
    [InlineData(16.8, null, Level.Go)]
    [InlineData(16.79, null, Level.Stop)]
    [InlineData(null, 16.79, Level.Stop)]
    [InlineData(30.0, 15.0, Level.Stop)]
    [InlineData(15.0, 30.0, Level.Stop)]
    [InlineData(30.0, 20.0, Level.Go)]
    public void The_weaker_of_those_stated_counts(double? connectorA, double? socketA, Level level)
    {
        Finding finding = Assert.Single(Judge(connectorA, socketA));
        Assert.Equal(level, finding.Level);
        Assert.Equal(16.8, finding.Value, 1e-12);
        Assert.Equal(Math.Min(connectorA ?? 1e3, socketA ?? 1e3), finding.Limit);
    }

    [Fact]
    public void The_weak_one_is_named()
    {
        Assert.Contains("the connectors would overheat", Assert.Single(Judge(15, 30)).Note, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("the unit's socket and its adapter would overheat", Assert.Single(Judge(30, 15)).Note, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("the connectors and the unit's socket would overheat", Assert.Single(Judge(15, 15)).Note, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void No_piece_carries_more_than_the_figure_that_stands_for_all() => Gen.Select(Gen.Double[1, 14].Array[6], Gen.Int[0, int.MaxValue - 1], Gen.Int[1, 6]).Sample(
        (shortA, seed, panels) =>
        {
            Plan plan = PartsScene.Plan("", bare => bare with
            {
                Panels = [.. shortA.Select((isc, i) => PartsScene.Stock($"{i}", 22.9, isc, 18.9, 0.94 * isc, 1))],
                Inputs = [bare.Inputs[0] with { StatedWiring = WiringText.Canonical(RandomArrays.Wiring(new Random(seed), 0, panels)) }],
                Cable = PartsScene.Copper with { StringLengthM = Sourced.Given(2.0), ExtensionLengthM = 3 },
            });
            PartsList list = PartsScene.Of(plan);
            double mostA = 1.25 * list.Design.Assignments[0].IscStcA;
            Assert.NotEmpty(list.Pieces);
            Assert.All(list.Pieces, piece => Assert.True(piece.DesignA <= mostA * (1 + 1e-12), $"{piece.Kind}: {piece.DesignA} A of {mostA} A"));
        },
        iter: 200);

    [Theory]
    [InlineData(null, 2)]
    [InlineData(17.0, 2)]
    [InlineData(16.0, 1)]
    [InlineData(8.0, 0)]
    public void The_search_keeps_to_what_they_bear_whatever_the_maker_allows(double? socketA, int strings)
    {
        // On 60 V two of 22.9 V in a row at most: the best of four panels is two strings, 16.8 A in strong sun; one string is 1.25 × 6.72 = 8.4 A.
        Plan plan = PartsScene.Plan("", bare => bare with { Panels = [PartsScene.Shed(4)] }, _ => Input(60) with
        {
            SocketA = socketA,
            MaxShortCircuitCurrent = new Limit(40, new Evidence(EvidenceKind.Maker, 0, null)),
        });
        PlanResult result = Planner.Answer(plan, PlannerOptions.Default, null, CancellationToken.None);
        Assert.Equal(strings > 0 ? Level.Go : Level.Stop, result.Verdict);
        Assert.True(strings == 0 || result.Designs[0].Assignments[0].Wiring!.Strings.Length == strings);
        Assert.All(result.Designs.Where(_ => socketA is not null && strings > 0), design => Assert.True(1.25 * 6.72 * design.Assignments[0].Wiring!.Strings.Length <= socketA));
    }
}
