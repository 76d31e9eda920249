using System.Collections.Immutable;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Parts;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Drawing;

/// <summary>What one branch connector gathers.</summary>
/// <param name="Element">The connector.</param>
/// <param name="Members">What goes into it.</param>
internal sealed record Gathering(Element Element, ImmutableArray<(int Branch, Gathering? Inner)> Members);

/// <summary>What lies between the panels of one input and its unit: the pieces of a parts list, or where there is none the cables that the plan states.</summary>
/// <param name="input">The input.</param>
/// <param name="cable">The plan's cable.</param>
/// <param name="parts">Its pieces; null where they were not sized.</param>
internal sealed class HookupPieces(DcInput input, Cable cable, InputParts? parts)
{
    /// <summary>From the array outwards.</summary>
    private static readonly PieceKind[] Outwards = [PieceKind.Extension, PieceKind.Run, PieceKind.Switch, PieceKind.WattMeter, PieceKind.Adapter];

    /// <summary>The worst that is said of them.</summary>
    public Level Verdict => parts is null ? Level.Go : parts.Pieces.SelectMany(piece => piece.Findings).Select(finding => finding.Level).DefaultIfEmpty(Level.Go).Max();

    /// <summary>What a branch has of its own at one pole, from the panels outwards.</summary>
    public IEnumerable<Element> OfBranch(ImmutableArray<int> path, Pole pole)
    {
        if (parts is null)
        {
            return path.Length < 2 && cable.StringLengthM.Value > 0 ? [Cable(PieceKind.StringConductor, cable.StringLengthM.Value, Area(cable.StringAreaMm2.Value), Area(cable.StringAreaMm2.Value))] : [];
        }

        return parts.At(new PiecePlace(input.Name, path))
            .Where(piece => piece.Pole == pole && piece.Kind is PieceKind.StringFuse or PieceKind.StringConductor)
            .OrderBy(piece => piece.Kind == PieceKind.StringFuse ? 0 : 1)
            .Select(Of);
    }

    /// <summary>How the branches of a parallel are gathered at one pole.</summary>
    public Gathering Gathering(ImmutableArray<int> path, Pole pole, int branches)
    {
        Gathering all = new(new Element(PieceKind.BranchConnector, "branch connector", [$"{branches} into 1"], []), Branches(branches));
        if (parts is null)
        {
            return all;
        }

        // A connector that gathers others lists all of their branches: from the small to the large, each takes in what it covers.
        Dictionary<int, Gathering?> members = Enumerable.Range(0, branches).ToDictionary(branch => branch, _ => (Gathering?)null);
        Gathering? last = null;
        foreach (Piece piece in parts.At(new PiecePlace(input.Name, path)).Where(piece => piece.Kind == PieceKind.BranchConnector && piece.Pole == pole).OrderBy(piece => piece.Gathers.Length))
        {
            int[] taken = [.. members.Keys.Where(branch => piece.Gathers.Contains(branch + 1)).Order()];
            last = new Gathering(Of(piece), [.. taken.Select(branch => (members[branch] is null ? branch : -1, members[branch]))]);
            foreach (int branch in taken)
            {
                members.Remove(branch);
            }

            members[taken[0]] = last;
        }

        return members.Count == 1 && last is not null ? last : all;
    }

    /// <summary>From the array to the unit's socket.</summary>
    public IEnumerable<Element> ToUnit()
    {
        if (parts is null)
        {
            yield return Cable(PieceKind.Run, cable.LengthM.Value, Area(cable.AreaMm2.Value), Area(cable.AreaMm2.Value));
        }
        else
        {
            foreach (Piece piece in Outwards.SelectMany(kind => parts.Pieces.Where(piece => piece.Kind == kind && piece.Pole != Pole.Minus)))
            {
                yield return Of(piece);
            }
        }

        yield return new Element(null, "unit's socket", [], []);
    }

    private static ImmutableArray<(int Branch, Gathering? Inner)> Branches(int count) => [.. Enumerable.Range(0, count).Select(branch => (branch, (Gathering?)null))];

    private static Element Of(Piece piece)
    {
        string name = Name(piece.Kind);
        if (piece.Size is { } size && piece.LengthM is { } lengthM)
        {
            return size.IsGauge
                ? Cable(piece.Kind, lengthM, $"{size.Name} ({Figures.Number(size.AreaMm2, 1)} mm²)", size.Name)
                : Cable(piece.Kind, lengthM, Area(size.AreaMm2), Area(size.AreaMm2));
        }

        string ways = piece.Ways > 0 ? $"{piece.Ways} into 1, " : "";
        string amps = PieceWords.Amps(piece);
        string volts = piece is { Kind: PieceKind.StringFuse, RatingA: null } ? "" : $", {PieceWords.Volts(piece)}";
        return new Element(piece.Kind, name, [$"{ways}{amps}{volts}"], [amps]) { NeededA = piece.NeededA };
    }

    private static Element Cable(PieceKind kind, double lengthM, string size, string shortSize)
    {
        string length = Figures.Stated(Math.Round(lengthM, 1), "m");
        return new Element(kind, Name(kind), [size, $"{length} each way"], [shortSize, length]);
    }

    private static string Area(double areaMm2) => Figures.Stated(Math.Round(areaMm2, 2), "mm²");

    private static string Name(PieceKind kind) => kind switch
    {
        PieceKind.StringConductor => "string cable",
        PieceKind.StringFuse => "fuse",
        PieceKind.BranchConnector => "branch connector",
        PieceKind.Extension => "extension",
        PieceKind.Switch => "switch",
        PieceKind.Run => "run",
        PieceKind.WattMeter => "watt meter",
        PieceKind.Adapter => "adapter",
        _ => "panel lead",
    };
}
