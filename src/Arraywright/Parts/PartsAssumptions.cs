using System.Globalization;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;

namespace Arraywright.Parts;

/// <summary>What is filled in to size parts, with what it moves.</summary>
internal static class PartsAssumptions
{
    /// <summary>In a stable order.</summary>
    public static IEnumerable<Assumption> Of(PartsSetting setting, IReadOnlyList<Piece> pieces)
    {
        if (PartsRules.Assumed(setting.Plan) is { } rules)
        {
            yield return rules;
        }

        Cable cable = setting.Plan.Cable;
        ConductorPlace place = setting.Place;
        if (cable.Laying is null)
        {
            yield return new Assumption("where the cable lies", "on the ground, a wall or a roof, plus and minus touching", "In free air it carries about a quarter more, in a conduit less.");
        }

        if (cable.AmbientC is null)
        {
            yield return new Assumption(
                "heat around the cable",
                $"{place.AmbientC.ToString("0.#", CultureInfo.InvariantCulture)} °C",
                $"Hottest air and {(place.Laying == Laying.Conduit ? $"{ConductorPlace.ConduitInSunK:0} K for a conduit in the sun" : $"{ConductorPlace.InSunK:0} K behind panels or in the sun")}. Each 10 K more take about a tenth off what cable carries, above 60 °C or by the US tables.");
        }

        if (cable.Class is null)
        {
            yield return new Assumption("class of cable", "flexible solar cable, fine tinned strands", "Plain stranded building wire has about 4 to 10 % less resistance, and other tables.");
        }

        if (cable.Bundled is null)
        {
            yield return new Assumption("wires lying together", $"{ConductorPlace.UsualLoaded}", "Each pair apart from others; four to six together carry a fifth less.");
        }

        if (cable.TerminalC is null && place.Rules == RuleSet.Us)
        {
            yield return new Assumption("terminals", $"marked for {ConductorPlace.UsualTerminalC:0} °C", "NEC 110.14(C) up to 100 A unless they are marked otherwise; at 75 °C the same copper may carry about a fifth more.");
        }

        if (cable.MaxDropFraction is null)
        {
            yield return new Assumption("drop aimed at", "3 %", "Common practice for small arrays; it decides energy and money, not safety.");
        }

        if (pieces.Any(piece => piece.Kind == PieceKind.PanelLead))
        {
            yield return new Assumption("panel leads", "4 mm²", "They come with the panels; small portable ones may have 2.5 mm² and connectors of 20 A.");
        }

        if (setting.Plan.Inputs.Any(planned => planned.Input.ConnectorA is null))
        {
            yield return new Assumption("connectors", $"{UsualRatings.ConnectorA:0} A", $"Common practice. {char.ToUpperInvariant(UsualRatings.Connectors[0])}{UsualRatings.Connectors[1..]}.");
        }
    }
}
