using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Parts;
using Arraywright.Planning;
using Arraywright.Presentation.Drawing;
using Arraywright.Testing;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>Sheets to draw: any wiring with figures made up by a fixed rule, with or without every kind of piece.</summary>
internal static class SampleSheets
{
    /// <summary>A random wiring of so many panels, all of one name.</summary>
    public static Wiring RandomWiring(int seed, int panels, string name) => Renamed(WiringText.Canonical(RandomArrays.Wiring(new Random(seed), 0, panels)), name);

    /// <summary>The wiring written in plain text.</summary>
    public static Wiring Parse(string text) => WiringText.TryParse(text, out Wiring? wiring, out _) ? wiring : throw new ArgumentException("No wiring.", nameof(text));

    /// <summary>A sheet of wirings, one an input, of which there are two.</summary>
    public static DrawingSheet Of(bool hasPieces, params Wiring[] wirings)
    {
        Assignment like = SampleResults.Go.Designs[0].Assignments[0];
        DcInput[] inputs = [.. wirings.Select((_, index) => index == 0 ? SampleGear.StoreA : SampleGear.StoreB)];
        Assignment[] assignments = [.. wirings.Select((wiring, index) => like with { Input = inputs[index].Name, Wiring = wiring })];
        Design design = SampleResults.Go.Designs[0] with { Assignments = [.. assignments] };
        ImmutableArray<InputParts> parts = hasPieces ? [.. assignments.Select(Parts)] : [];
        return DrawingSheet.Of(SampleGear.Plan(inputs, (SampleGear.Shed120, 16)), design, [.. wirings.Select(Reading)], parts);
    }

    private static Wiring Renamed(Wiring wiring, string name) => wiring switch
    {
        Wiring.Series series => new Wiring.Series([.. series.Parts.Select(part => Renamed(part, name))]),
        Wiring.Parallel parallel => new Wiring.Parallel([.. parallel.Parts.Select(part => Renamed(part, name))]),
        _ => new Wiring.Single(name),
    };

    private static ArrayReading? Reading(Wiring wiring) => new(Open(wiring), AtWork(wiring));

    private static OpenReading Open(Wiring wiring) => new(111.1, [.. Inner(wiring).Select(Open)]);

    private static PartReading AtWork(Wiring wiring) => new(-10.1, 100.2, 10.01, [.. Inner(wiring).Select(AtWork)]);

    private static ImmutableArray<Wiring> Inner(Wiring wiring) => wiring switch
    {
        Wiring.Series series => series.Parts,
        Wiring.Parallel parallel => parallel.Parts,
        _ => [],
    };

    /// <summary>A fuse and a cable in every string, branch connectors of four, and every piece between the array and the unit.</summary>
    private static InputParts Parts(Assignment assignment)
    {
        Wiring wiring = assignment.Wiring!;
        List<Piece> pieces = [.. Connectors(assignment.Input, wiring, [])];
        int[][] strings = wiring is Wiring.Parallel parallel ? [.. Enumerable.Range(1, parallel.Parts.Length).Select(one => new[] { one })] : [[]];
        foreach (int[] path in strings)
        {
            pieces.Add(Piece(PieceKind.StringFuse, assignment.Input, path, Pole.Plus));
            pieces.AddRange(Pair(PieceKind.StringConductor, assignment.Input, path));
        }

        pieces.AddRange(Pair(PieceKind.Extension, assignment.Input, []));
        pieces.AddRange(Pair(PieceKind.Run, assignment.Input, []));
        pieces.AddRange(new[] { PieceKind.Switch, PieceKind.WattMeter, PieceKind.Adapter }.Select(kind => Piece(kind, assignment.Input, [], Pole.Both)));
        return new InputParts
        {
            Input = assignment.Input,
            Wiring = wiring,
            Conditions = assignment.Conditions,
            Operating = assignment.Operating,
            Pieces = [.. pieces],
            DropV = 0.5,
            DropPercent = 1.4,
            HeatKWh = null,
        };
    }

    private static IEnumerable<Piece> Pair(PieceKind kind, string input, int[] path) => new[] { Pole.Plus, Pole.Minus }.Select(pole => Piece(kind, input, path, pole) with
    {
        Size = new ConductorSize("12 AWG", 3.309, IsGauge: true),
        LengthM = 12.35,
    });

    private static IEnumerable<Piece> Connectors(string input, Wiring wiring, int[] path)
    {
        IEnumerable<Piece> inner = Inner(wiring).SelectMany((part, index) => Connectors(input, part, [.. path, index + 1]));
        return wiring is not Wiring.Parallel parallel ? inner : inner.Concat(new[] { Pole.Plus, Pole.Minus }.SelectMany(pole => Gather(input, path, pole, parallel.Parts.Length)));
    }

    /// <summary>Four into one, and what that leaves four into one again.</summary>
    private static List<Piece> Gather(string input, int[] path, Pole pole, int branches)
    {
        List<Piece> pieces = [];
        int[][] open = [.. Enumerable.Range(1, branches).Select(branch => new[] { branch })];
        while (open.Length > 1)
        {
            open = [.. open.Chunk(4).Select(chunk => chunk.SelectMany(one => one).ToArray())];
            pieces.AddRange(open.Where(gathered => !pieces.Exists(piece => piece.Gathers.SequenceEqual(gathered)) && gathered.Length > 1)
                .Select(gathered => Piece(PieceKind.BranchConnector, input, path, pole) with { Ways = 4, Gathers = [.. gathered] }));
        }

        return pieces;
    }

    private static Piece Piece(PieceKind kind, string input, int[] path, Pole pole) => new()
    {
        Kind = kind,
        Place = new PiecePlace(input, [.. path]),
        Pole = pole,
        DesignA = 12.5,
        VoltageV = 52,
        NeededA = 12.5,
        RatingA = kind == PieceKind.Adapter ? null : 15,
        RatingV = 600,
        Ohm = 0.01,
        CurrentA = 6,
        DropPercent = 0.1,
        HeatKWh = null,
        Findings = [],
        Working = "",
        Source = "",
    };
}
