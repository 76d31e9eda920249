using System.Collections.Immutable;
using System.Globalization;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits.Conductors;
using Arraywright.Planning;

namespace Arraywright.Parts;

/// <summary>Other ways to build it that are worth knowing of.</summary>
internal static class Alternatives
{
    /// <summary>A wiring without fuses and branch connectors is offered up to this loss, fraction.</summary>
    private const double WorthLosing = 0.02;

    /// <summary>The next thicker cable; and one string an input, where that costs little.</summary>
    public static ImmutableArray<PartsAlternative> Of(PartsSetting setting, Design design, IReadOnlyList<Piece> pieces, CancellationToken cancellation)
    {
        ImmutableArray<Wiring?> wirings = Planner.Wirings(design);
        if (wirings.All(wiring => wiring is null))
        {
            return [];
        }

        var found = ImmutableArray.CreateBuilder<PartsAlternative>();
        double nowW = Worth(setting, setting.Plan, wirings);
        if (Thicker(setting, wirings, nowW, pieces) is { } thicker)
        {
            found.Add(thicker);
        }

        if (wirings.Any(wiring => wiring is not null && HasBranches(wiring)) && OneString(setting, nowW, pieces, cancellation) is { } oneString)
        {
            found.Add(oneString);
        }

        return found.ToImmutable();
    }

    private static PartsAlternative? Thicker(PartsSetting setting, ImmutableArray<Wiring?> wirings, double nowW, IReadOnlyList<Piece> pieces)
    {
        Cable cable = setting.Plan.Cable;
        double runM = pieces.Where(piece => piece.Kind == PieceKind.Run).Sum(piece => piece.LengthM!.Value);
        if (runM <= 0 || ConductorSizing.Thicker(ConductorSize.Of(cable.AreaMm2.Value)) is not { } size)
        {
            return null;
        }

        // Only the run: strings and extension stay as they are.
        Plan thicker = setting.Plan with
        {
            Cable = cable with { AreaMm2 = Sourced.Derived(size.AreaMm2, "the next thicker"), ExtensionAreaMm2 = cable.ExtensionMm2 },
        };
        double? extraPrice = runM * (setting.Prices.Of(new PartType(PartKind.Cable, AreaMm2: size.AreaMm2)) - setting.Prices.Of(new PartType(PartKind.Cable, AreaMm2: cable.AreaMm2.Value)));
        string what = $"{runM.ToString("0.#", CultureInfo.InvariantCulture)} m of {size.BothNames} to the unit in place of {ConductorSize.Of(cable.AreaMm2.Value).Name}";
        return Made(setting, what, [], extraPrice, nowW, Worth(setting, thicker, wirings));
    }

    private static PartsAlternative? OneString(PartsSetting setting, double nowW, IReadOnlyList<Piece> pieces, CancellationToken cancellation)
    {
        if (SingleStrings.Best(setting.Plan, cancellation) is not { } wirings)
        {
            return null;
        }

        double worthW = Worth(setting, setting.Plan, wirings);
        if (worthW < nowW * (1 - WorthLosing))
        {
            return null;
        }

        double? savedPrice = -pieces.Where(piece => piece.Kind is PieceKind.BranchConnector or PieceKind.StringFuse).Sum(piece => piece.Price);
        bool isPriced = pieces.Where(piece => piece.Kind is PieceKind.BranchConnector or PieceKind.StringFuse).All(piece => piece.Price is not null);
        ImmutableArray<string> texts = [.. wirings.Select(wiring => wiring is null ? "" : WiringText.Print(wiring))];
        return Made(setting, "one string on each input: no fuses, no branch connectors", texts, isPriced ? savedPrice : null, nowW, worthW);
    }

    /// <summary>Energy in a year, kWh; or, where the place is not known, watts in the sun that designs are ranked by.</summary>
    private static double Worth(PartsSetting setting, Plan plan, ImmutableArray<Wiring?> wirings) => setting.Span is { } span
        ? span.DeliveredKWh(plan, wirings)
        : new RankingWorth(new PlanPhysics(plan), RankingMoments.For(plan, setting.Seen)).ObjectiveW(wirings);

    private static PartsAlternative Made(PartsSetting setting, string what, ImmutableArray<string> wirings, double? extraPrice, double now, double then) => new(
        what,
        wirings,
        extraPrice,
        setting.Span is null ? null : then - now,
        now > 0 ? (then - now) / now * 100 : 0);

    private static bool HasBranches(Wiring wiring) => wiring switch
    {
        Wiring.Parallel => true,
        Wiring.Series series => series.Parts.Any(HasBranches),
        _ => false,
    };
}
