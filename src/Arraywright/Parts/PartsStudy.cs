using System.Collections.Immutable;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Parts.Rules;
using Arraywright.Planning;

namespace Arraywright.Parts;

/// <summary>The parts of a plan's wiring.</summary>
public static class PartsStudy
{
    /// <summary>The parts of the stated wiring, or of the best where none is stated.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Conditions of the drops in volts.</param>
    /// <param name="progress">Told the share done of a search.</param>
    /// <param name="cancellation">Ends a search early.</param>
    public static PartsList Run(Plan plan, PlannerOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        PlanResult result = plan.Inputs.Any(planned => planned.StatedWiring is not null)
            ? Planner.Check(plan, options)
            : Planner.Answer(plan, options, progress, cancellation);
        return Of(result, options, cancellation);
    }

    /// <summary>The parts of a wiring found or checked already: the first design of a result.</summary>
    /// <param name="result">The result; its plan has its cable sized.</param>
    /// <param name="options">The conditions it was made for.</param>
    /// <param name="cancellation">Ends the search for another way early.</param>
    public static PartsList Of(PlanResult result, PlannerOptions options, CancellationToken cancellation)
    {
        PartsSetting setting = new(result.Plan, options.Conditions);
        Design design = result.Designs[0];
        ImmutableArray<InputParts> inputs = [.. design.Assignments.Select((assignment, index) => OfInput(setting, result.Plan.Inputs[index].Input, assignment))];
        Piece[] pieces = [.. inputs.SelectMany(input => input.Pieces)];
        PartsList list = new()
        {
            Plan = result.Plan,
            Design = design,
            Rules = setting.Place.Rules,
            Inputs = inputs,
            Shopping = [],
            Alternatives = [],
            Assumed = [.. result.Assumed, .. PartsAssumptions.Of(setting, pieces)],
            Cautions = [.. Cautions.For(design.HighestVocColdV), .. Cautions.OfParts],
        };
        return list.Verdict == Level.Stop ? list : list with
        {
            Shopping = new Shopping(setting.Prices).Of(pieces),
            Alternatives = Alternatives.Of(setting, design, pieces, cancellation),
        };
    }

    private static InputParts OfInput(PartsSetting setting, DcInput input, Assignment assignment)
    {
        ImmutableArray<Piece> pieces = PieceWalk.Of(setting, input, assignment);
        double dropV = assignment.Wiring is { } wiring ? LineDrop.V(setting.Physics.Tree(wiring, setting.Seen), assignment.Operating) : 0;
        double dropPercent = assignment.Operating.VoltageV > 0 ? dropV / assignment.Operating.VoltageV * 100 : 0;
        PartContext context = new(setting, input, dropPercent);
        return new InputParts
        {
            Input = input.Name,
            Wiring = assignment.Wiring,
            Conditions = assignment.Conditions,
            Operating = assignment.Operating,
            Pieces = [.. pieces.Select(piece => piece with { Findings = PartRules.Judge(piece, context) })],
            DropV = dropV,
            DropPercent = dropPercent,
            HeatKWh = setting.Span is null ? null : pieces.Sum(piece => piece.HeatKWh ?? 0),
        };
    }
}
