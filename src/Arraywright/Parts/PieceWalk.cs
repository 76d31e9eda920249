using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts;

/// <summary>Walks the wiring of one input from the panels to the unit and sizes every piece on the way.</summary>
/// <remarks>
/// Connectors are counted as the circuit counts them: one a panel (its plus lead), one more a branch (at its minus end), one at the unit.
/// So the drops of the pieces add up to what the circuit loses.
/// </remarks>
internal sealed class PieceWalk
{
    private const string LeadSource = "leads come with the panel, made for its current and for the largest series fuse on its label; 4 mm² is common practice";

    private readonly PartsSetting _setting;
    private readonly DcInput _input;
    private readonly Assignment _assignment;
    private readonly Wiring _wiring;
    private readonly FuseNeeds _fuses;
    private readonly DesignCurrents _design;
    private readonly DesignCurrents _label;
    private readonly Dictionary<string, double> _currentsA;
    private readonly Dictionary<string, double>? _squareA2h;
    private readonly ImmutableArray<Piece>.Builder _pieces = ImmutableArray.CreateBuilder<Piece>();

    private PieceWalk(PartsSetting setting, DcInput input, Assignment assignment)
    {
        (_setting, _input, _assignment, _wiring) = (setting, input, assignment, assignment.Wiring!);
        _fuses = new FuseNeeds(setting.Judge.Context(_wiring, input));
        _design = new DesignCurrents(setting.Judge.Context(_wiring, input), _fuses.Fuses);
        _label = new DesignCurrents(setting.Judge.Context(_wiring, input), _fuses.Fuses, factor: 1);
        _currentsA = setting.Currents(_wiring, input, setting.Seen);
        _squareA2h = SquareHours();
    }

    private Cable Cable => _setting.Plan.Cable;

    /// <summary>The pieces of an input, panels first; empty where nothing is connected.</summary>
    public static ImmutableArray<Piece> Of(PartsSetting setting, DcInput input, Assignment assignment)
    {
        if (assignment.Wiring is null)
        {
            return [];
        }

        PieceWalk walk = new(setting, input, assignment);
        walk.Strings();
        walk.ToUnit();
        return walk._pieces.ToImmutable();
    }

    private void Strings()
    {
        ImmutableArray<Wiring> strings = _wiring.Strings;
        bool isOne = _wiring is not Wiring.Parallel;
        for (int index = 0; index < strings.Length; index++)
        {
            ImmutableArray<int> path = isOne ? [] : [index + 1];
            Node(strings[index], path, endsBranch: !isOne);
            if (Cable.StringLengthM.Value > 0)
            {
                AddConductor(PieceKind.StringConductor, path, Pole.Plus, Cable.StringLengthM.Value, Cable.StringAreaMm2.Value, 0);
                AddConductor(PieceKind.StringConductor, path, Pole.Minus, Cable.StringLengthM.Value, Cable.StringAreaMm2.Value, 0);
            }

            if (_fuses.Fuses.FirstOrDefault(fuse => fuse.String == index) is { } needed)
            {
                AddFuse(path, needed);
            }
        }

        if (_wiring is Wiring.Parallel parallel)
        {
            Branches(parallel, [], endsBranch: false);
        }
    }

    /// <summary>A part of a string; the minus end of a branch has the branch's own connector.</summary>
    private void Node(Wiring node, ImmutableArray<int> path, bool endsBranch)
    {
        switch (node)
        {
            case Wiring.Single single:
                AddLead(single.Panel, path, Pole.Plus, 1);
                AddLead(single.Panel, path, Pole.Minus, endsBranch ? 1 : 0);
                break;
            case Wiring.Series series:
                for (int i = 0; i < series.Parts.Length; i++)
                {
                    Node(series.Parts[i], path.Add(i + 1), endsBranch && i == series.Parts.Length - 1);
                }

                break;
            case Wiring.Parallel parallel:
                for (int i = 0; i < parallel.Parts.Length; i++)
                {
                    Node(parallel.Parts[i], path.Add(i + 1), endsBranch: true);
                }

                Branches(parallel, path, endsBranch);
                break;
        }
    }

    /// <summary>Branch connectors of one parallel, both poles: up to four into one, more in stages.</summary>
    private void Branches(Wiring.Parallel parallel, ImmutableArray<int> path, bool endsBranch)
    {
        foreach (Pole pole in new[] { Pole.Plus, Pole.Minus })
        {
            ImmutableArray<BranchStage> stages = BranchStage.For(parallel.Parts.Length);
            for (int i = 0; i < stages.Length; i++)
            {
                bool isLast = i == stages.Length - 1;
                AddBranch(stages[i], path, pole, isLast && endsBranch && pole == Pole.Minus ? 1 : 0, isLast);
            }
        }
    }

    private void ToUnit()
    {
        if (Cable.ExtensionLengthM > 0)
        {
            AddConductor(PieceKind.Extension, [], Pole.Plus, Cable.ExtensionLengthM, Cable.ExtensionMm2, 1);
            AddConductor(PieceKind.Extension, [], Pole.Minus, Cable.ExtensionLengthM, Cable.ExtensionMm2, 1);
        }

        AddConductor(PieceKind.Run, [], Pole.Plus, Cable.LengthM.Value, Cable.AreaMm2.Value, 0);
        AddConductor(PieceKind.Run, [], Pole.Minus, Cable.LengthM.Value, Cable.AreaMm2.Value, 0);
        double designA = _design.Of([]);
        string working = $"1.25 × {Figures.Label(_assignment.IscStcA, "A")} = {Figures.Result(designA, "A")}";
        Add(Bare(PieceKind.Switch, [], Pole.Both, designA, 0) with
        {
            RatingA = UsualRatings.SwitchForA(designA),
            Price = _setting.Prices.Of(new PartType(PartKind.Switch)),
            Working = $"{working}; the next usual size; both poles, for direct current",
            Source = $"{(_setting.Place.Rules == RuleSet.Us ? "NEC 690.13, 690.15" : "IEC 60364-7-712, IEC 62548")}; usual sizes are common practice",
        });
        if (_input.HasWattMeter)
        {
            Add(Bare(PieceKind.WattMeter, [], Pole.Both, designA, 0) with
            {
                RatingV = ColdV,
                Price = _setting.Prices.Of(new PartType(PartKind.WattMeter)),
                Working = $"{working}; for direct current, at the cold voltage",
                Source = "common practice",
            });
        }

        Add(Bare(PieceKind.Adapter, [], Pole.Both, designA, 1) with
        {
            RatingA = _input.SocketA,
            RatingV = ColdV,
            Price = _setting.Prices.Of(new PartType(PartKind.Adapter)),
            Working = working,
            Source = _input.SocketA is null ? "no rating stated; usual ones are common practice" : "rating stated in the plan",
        });
    }

    private void AddLead(string panel, ImmutableArray<int> path, Pole pole, int contacts)
    {
        LeadRating rating = LeadRating.Of(_setting.Physics.Stock[panel].Panel, _input.ConnectorA, _setting.Place);
        Add(Bare(PieceKind.PanelLead, path, pole, _design.Of(path), contacts) with
        {
            Panel = panel,
            LabelA = _label.Of(path),
            RatingA = rating.BearsA,
            Size = ConductorSize.Of(UsualRatings.LeadMm2),
            Working = $"{Worked(path)}; {rating.Working}",
            Source = LeadSource,
        });
    }

    private void AddFuse(ImmutableArray<int> path, StringFuse fuse) => Add(Bare(PieceKind.StringFuse, path, Pole.Plus, _design.ForwardA(path), 0) with
    {
        NeededA = fuse.LowA,
        RatingA = fuse.SizeA,
        RatingV = UsualRatings.ForV(FuseV()) ?? FuseV(),
        Price = _setting.Prices.Of(new PartType(PartKind.Fuse, RatingA: fuse.SizeA)),
        Working = fuse.Working,
        Source = _setting.Place.Rules == RuleSet.Us
            ? "NEC 690.8(A)(1), 690.9(B), 240.6(A)"
            : "IEC 62548, IEC 60269-6 (gPV); usual sizes are common practice",
    });

    /// <summary>The cold voltage, and 1.2 × the voltage at standard conditions where fuses go by that (maker's practice with IEC 60269-6), V.</summary>
    private double FuseV() => Math.Max(_assignment.VocColdV, 1.2 * _assignment.VocStcV);

    private void AddBranch(BranchStage stage, ImmutableArray<int> path, Pole pole, int contacts, bool isLast)
    {
        double forwardA = 0;
        double mostA = 0;
        double currentA = 0;
        foreach (int branch in stage.Gathers)
        {
            forwardA += _design.ForwardA(path.Add(branch));
            mostA = Math.Max(mostA, _design.Of(path.Add(branch)));
            currentA += CurrentA(path.Add(branch));
        }

        double designA = Math.Max(isLast ? _design.Of(path) : forwardA, mostA);
        Add(Bare(PieceKind.BranchConnector, path, pole, designA, contacts) with
        {
            Ways = stage.Ways,
            Gathers = stage.Gathers,
            CurrentA = currentA,
            DropPercent = Percent(currentA * contacts * Cable.ContactOhm.Value),
            RatingA = ConnectorA(designA),
            Price = _setting.Prices.Of(new PartType(PartKind.BranchConnector, Ways: stage.Ways)),
            Working = isLast ? Worked(path) : $"1.25 × {Figures.Label(forwardA / StrongSunCurrentRule.Factor, "A")} of its branches = {Figures.Result(designA, "A")}",
            Source = _input.ConnectorA is not null ? "rating stated in the plan"
                : Figures.Over(designA, UsualRatings.ConnectorA) ? $"over the usual rating of {Figures.Label(UsualRatings.ConnectorA, "A")}, common practice"
                : "usual rating of its output, common practice",
        });
    }

    /// <summary>Meters and adapters are not sold by the volt classes of solar gear: they must bear the cold voltage, in whole volts.</summary>
    private double ColdV => Math.Ceiling(_assignment.VocColdV - 1e-9);

    /// <summary>The plan's rating of connectors, or the usual one; null where that is too little, for then nothing is known.</summary>
    private double? ConnectorA(double designA) =>
        _input.ConnectorA ?? (Figures.Over(designA, UsualRatings.ConnectorA) ? null : UsualRatings.ConnectorA);

    private void AddConductor(PieceKind kind, ImmutableArray<int> path, Pole pole, double lengthM, double areaMm2, int contacts)
    {
        Ampacity ampacity = Ampacity.Of(areaMm2, _setting.Place);
        Piece bare = Bare(kind, path, pole, _design.Of(path), contacts, Cable.OneWayOhm(lengthM, areaMm2));
        Add(bare with
        {
            RatingA = ampacity.CarriesA,
            ConnectorA = ConnectorA(bare.DesignA),
            Size = ConductorSize.Of(areaMm2),
            LengthM = lengthM,
            Price = lengthM * _setting.Prices.Of(new PartType(PartKind.Cable, AreaMm2: areaMm2)),
            Working = $"{Worked(path)}; {ampacity.Working}",
            Source = $"{ampacity.Source}; {CopperResistance.Source(areaMm2, Cable.Made)}",
        });
    }

    private Piece Bare(PieceKind kind, ImmutableArray<int> path, Pole pole, double designA, int contacts, double copperOhm = 0)
    {
        double ohm = copperOhm + (contacts * Cable.ContactOhm.Value);
        double currentA = CurrentA(path);
        return new Piece
        {
            Kind = kind,
            Place = new PiecePlace(_input.Name, path),
            Pole = pole,
            DesignA = designA,
            VoltageV = _assignment.VocColdV,
            NeededA = designA,
            RatingA = null,
            RatingV = UsualRatings.ForV(_assignment.VocColdV) ?? _assignment.VocColdV,
            Contacts = contacts,
            Ohm = ohm,
            CurrentA = currentA,
            DropPercent = Percent(currentA * ohm),
            HeatKWh = _squareA2h is null ? null : ohm * _squareA2h.GetValueOrDefault(TreeCurrents.Key(path)) / 1000,
            Findings = [],
            Working = "",
            Source = "",
        };
    }

    private string Worked(ImmutableArray<int> path)
    {
        double forwardA = _design.ForwardA(path);
        double backA = _design.BackA(path);
        string own = $"1.25 × {Figures.Label(forwardA / StrongSunCurrentRule.Factor, "A")} = {Figures.Result(forwardA, "A")}";
        return Figures.Over(backA, forwardA) ? $"{own}, and up to {Figures.Result(backA, "A")} back from the others" : own;
    }

    private double CurrentA(ImmutableArray<int> path) => _currentsA.GetValueOrDefault(TreeCurrents.Key(path));

    private double Percent(double dropV) => _assignment.Operating.VoltageV > 0 ? dropV / _assignment.Operating.VoltageV * 100 : 0;

    private void Add(Piece piece) => _pieces.Add(piece);

    /// <summary>Squared current times hours over the year, by path, A²·h: the year's moments as the search has them.</summary>
    private Dictionary<string, double>? SquareHours()
    {
        if (_setting.Span is not { } span)
        {
            return null;
        }

        Dictionary<string, double> sums = new(StringComparer.Ordinal);
        foreach (Moment moment in span.Ranking.Moments)
        {
            foreach ((string path, double currentA) in _setting.Currents(_wiring, _input, moment.ByStock))
            {
                sums[path] = sums.GetValueOrDefault(path) + (moment.WeightH * currentA * currentA);
            }
        }

        return sums;
    }
}
