using Arraywright.Gear;
using Arraywright.Parts;
using static Arraywright.Tests.Parts.PartsScene;

namespace Arraywright.Tests.Parts;

/// <summary>Counts, lengths, what is owned, what it costs.</summary>
public sealed class ShoppingTests
{
    private const string Four = "2*shed | 2*shed | 2*shed | 2*shed";

    [Fact]
    public void Counts_and_lengths_of_four_strings()
    {
        PartsList list = PartsScene.Of(Four, plan => plan with { Cable = Copper with { StringLengthM = Sourced.Given(3.0), StringAreaMm2 = Sourced.Given(2.5) } });
        // 2 × 10 m of 4 mm²; 4 strings × 2 × 3 m of 2.5 mm²; a connector pair for each of the 2 + 8 cables; one branch connector a pole; a fuse a string.
        Assert.Equal(
            ["solar cable, one conductor 20 m", "solar cable, one conductor 24 m", "connector pair, plug and socket 10", "branch connector, 4 into 1, half for plus, half for minus 2", "string fuse gPV with in-line holder 4", "DC switch, two poles 1", "adapter to the unit's socket 1"],
            list.Shopping.Select(line => line.NeededM is { } metres ? $"{line.What} {metres:0.##} m" : $"{line.What} {line.Needed}"));
    }

    [Fact]
    public void What_is_owned_is_left_out_and_thicker_cable_serves_too()
    {
        PartsList list = PartsScene.Of(Four, plan => plan with
        {
            Owned =
            [
                new OwnedPart(new PartType(PartKind.Cable, AreaMm2: 6), 0, 12),
                new OwnedPart(new PartType(PartKind.Cable, AreaMm2: 2.5), 0, 50),
                new OwnedPart(new PartType(PartKind.BranchConnector, Ways: 2), 5, 0),
                new OwnedPart(new PartType(PartKind.Fuse, RatingA: 12), 3, 0),
                new OwnedPart(new PartType(PartKind.Switch), 2, 0),
            ],
        });
        Assert.Equal(8, Line(list, "solar cable").BuyM!.Value, 1e-9);
        Assert.Equal(2, Line(list, "branch connector").Buy);
        Assert.Equal(1, Line(list, "string fuse").Buy);
        Assert.Equal((0, 1), (Line(list, "DC switch").Buy, Line(list, "DC switch").Owned));
    }

    [Fact]
    public void Prices_count_what_is_to_buy_and_the_closest_one_goes()
    {
        PartsList list = PartsScene.Of(Four, plan => plan with
        {
            Currency = "EUR",
            Owned = [new OwnedPart(new PartType(PartKind.Cable, AreaMm2: 4), 0, 5)],
            PartPrices =
            [
                new PartPrice(new PartType(PartKind.Cable), 9),
                new PartPrice(new PartType(PartKind.Cable, AreaMm2: 4), 1.5),
                new PartPrice(new PartType(PartKind.Cable, AreaMm2: 6), 2.5),
                new PartPrice(new PartType(PartKind.Fuse), 8),
            ],
        });
        Assert.Equal(15 * 1.5, Line(list, "solar cable").Price);
        Assert.Equal(32, Line(list, "string fuse").Price);
        Assert.Null(Line(list, "DC switch").Price);

        // The next thicker cable: all 20 m of the run, 2.5 − 1.5 a metre.
        Assert.Equal(20, list.Alternatives[0].ExtraPrice!.Value, 1e-9);
        Assert.True(list.Alternatives[0].GainPercent > 0);
    }

    [Fact]
    public void One_string_without_fuses_and_branch_connectors_is_offered_where_it_costs_next_to_nothing()
    {
        static DcInput Free(DcInput bare) => bare with { MaxVoltageV = 60, MaxShortCircuitCurrent = new Limit(40, new Evidence(EvidenceKind.Maker, 0, null)) };
        static Plan Two(Plan plan) => plan with { Panels = [Shed(2)] };
        PartsAlternative other = Assert.Single(PartsScene.Of("shed | shed", Two, Free).Alternatives, other => other.Wirings.Length > 0);
        Assert.Equal("2*shed", other.Wirings[0]);
        Assert.InRange(other.GainPercent, -2, 10);
        Assert.DoesNotContain(PartsScene.Of("2*shed", Two, Free).Alternatives, alternative => alternative.Wirings.Length > 0);

        // At 30 V two in series are too high: one alone would bring half.
        Assert.DoesNotContain(PartsScene.Of("shed | shed", Two, bare => Free(bare) with { MaxVoltageV = 30 }).Alternatives, alternative => alternative.Wirings.Length > 0);
    }

    [Fact]
    public void Under_a_stop_there_is_nothing_to_buy_and_no_other_way_to_build_it()
    {
        // 1.5 × 10.41 = 15.615 A is over the 15 A of the label: no fuse fits.
        PartsList list = PartsScene.Of("2*barn | 2*barn | 2*barn");
        Assert.Equal(Arraywright.Limits.Level.Stop, list.Verdict);
        Assert.Empty(list.Shopping);
        Assert.Empty(list.Alternatives);
        Assert.NotEmpty(list.Pieces);
    }

    [Theory]
    [InlineData(null, "at least 33.6 A")] // 1.25 × 4 × 6.72 A is over the usual 30 A.
    [InlineData(40.0, "at least 40 A")]
    [InlineData(20.0, "at least 33.6 A")]
    public void A_connector_is_asked_for_by_its_stated_rating_or_by_what_it_must_bear(double? connectorA, string amps)
    {
        PartsList list = PartsScene.Of(Four, input: bare => bare with { ConnectorA = connectorA });
        Assert.All(list.Of(PieceKind.BranchConnector), piece => Assert.Equal(amps, PieceWords.Amps(piece)));
        Assert.All(list.Of(PieceKind.BranchConnector), piece => Assert.Equal(600, piece.RatingV));

        // A rating that is stated and too low is a stop, and then nothing is to buy.
        Assert.Equal(connectorA == 20, list.Shopping.IsEmpty);
        Assert.All(list.Shopping.Where(line => line.What.StartsWith("branch connector", StringComparison.Ordinal) || line.What.StartsWith("connector pair", StringComparison.Ordinal)), line => Assert.Equal($"{amps}, 600 V DC", line.Rating));
    }

    [Theory]
    [InlineData(null, "at least 8.5 A")] // 1.25 × 6.75 A = 8.4375 A: rounded up, never down.
    [InlineData(50.0, "at least 50 A")]
    [InlineData(5.0, "at least 8.5 A")]
    public void A_socket_is_asked_for_by_its_stated_rating_or_by_what_it_must_bear(double? socketA, string amps)
    {
        PartsList list = PartsScene.Of("round", plan => plan with { Panels = [Stock("round", 22.9, 6.75, 18.9, 6.35, 1)] }, bare => bare with { SocketA = socketA, HasWattMeter = true });
        Piece adapter = Assert.Single(list.Of(PieceKind.Adapter));
        Piece meter = Assert.Single(list.Of(PieceKind.WattMeter));

        // Neither is sold by the volt classes of solar gear: the cold voltage, in whole volts, says the piece and says the list.
        Assert.Equal((Math.Ceiling(adapter.VoltageV), Math.Ceiling(adapter.VoltageV)), (adapter.RatingV, meter.RatingV));
        Assert.Equal((amps, "at least 8.5 A"), (PieceWords.Amps(adapter), PieceWords.Amps(meter)));
        Assert.Equal(socketA == 5, list.Shopping.IsEmpty);
        Assert.All(list.Shopping.Where(line => line.What.StartsWith("adapter", StringComparison.Ordinal)), line => Assert.Equal($"{amps}, {adapter.RatingV} V DC", line.Rating));
        Assert.All(list.Shopping.Where(line => line.What.StartsWith("watt meter", StringComparison.Ordinal)), line => Assert.Equal($"at least 8.5 A, {adapter.RatingV} V DC", line.Rating));
    }

    [Fact]
    public void Branch_connectors_of_two_ratings_are_two_lines_and_the_weaker_one_is_at_hand_first()
    {
        // Sixteen into four into one: each of the first gathers 1.25 × 4 × 6.72 A, the last 134.4 A.
        PartsList list = PartsScene.Of(
            string.Join(" | ", Enumerable.Repeat("shed", 16)),
            plan => plan with { Owned = [new OwnedPart(new PartType(PartKind.BranchConnector), 9, 0)], Cable = PartsScene.Copper with { AreaMm2 = Sourced.Given(95.0) } },
            bare => bare with { ConnectorA = null, SocketA = 200 });
        Assert.Equal(
            [("at least 33.6 A, 600 V DC", 8, 8), ("at least 134.4 A, 600 V DC", 2, 1)],
            list.Shopping.Where(line => line.What.StartsWith("branch connector", StringComparison.Ordinal)).Select(line => (line.Rating, line.Needed, line.Owned)));
    }

    [Fact]
    public void Where_no_fuse_fits_the_piece_says_so()
    {
        PartsList list = PartsScene.Of("2*tight | 2*tight | 2*tight | 2*tight", plan => plan with { Panels = [Stock("tight", 22.9, 14.5, 18.9, 13.8, 8)] });
        Assert.All(list.Of(PieceKind.StringFuse), fuse => Assert.Equal("no standard size fits", PieceWords.Amps(fuse)));
    }

    private static ShoppingLine Line(PartsList list, string what) => Assert.Single(list.Shopping, line => line.What.StartsWith(what, StringComparison.Ordinal));
}
