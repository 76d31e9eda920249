using System.Collections.Immutable;
using Arraywright.Gear;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Report.Sections;

/// <summary>What the plan states, and on whose word each limit rests.</summary>
internal static class GivenSection
{
    public static ReportSection Of(Plan plan)
    {
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportBlock.Table("Panels at hand, by their labels", PanelColumns, [.. plan.Panels.Select(Row)]));
        if (!plan.Doubts.IsEmpty)
        {
            blocks.Add(new ReportBlock.Heading("Labels to read again"));
            blocks.Add(new ReportBlock.Bullets([.. plan.Doubts.Select(doubt => new ReportItem($"{doubt.Panel}, {doubt.Field}:", doubt.Message))]));
        }

        foreach (PlannedInput planned in plan.Inputs)
        {
            blocks.Add(new ReportBlock.Table($"What {planned.Input.Name} bears, and who says so", LimitColumns, [.. Limits(planned.Input)]));
        }

        foreach (ChargingUnit unit in plan.Units.Where(unit => unit.MaxPower is not null))
        {
            blocks.Add(new ReportBlock.Table($"What {unit.Name} takes over all its inputs", LimitColumns, [Row("power, at most", unit.MaxPower!, "W")]));
        }

        blocks.Add(new ReportBlock.Table("Place, mount and copper", [new("", false, 2), new("", false, 5)], [.. Site(plan)]));
        return new ReportSection("given", "What was given, and by whom", blocks.ToImmutable());
    }

    private static ImmutableArray<ReportColumn> PanelColumns { get; } =
    [
        new("panel", false, 4), new("count", true), new("power", true, 3), new("Voc", true, 3), new("Isc", true, 3), new("Vmp", true, 3), new("Imp", true, 3), new("Voc per kelvin", true, 3),
    ];

    private static ImmutableArray<ReportColumn> LimitColumns { get; } = [new("limit", false, 4), new("figure", true, 2), new("whose word", false, 2), new("note", false, 5)];

    private static ReportRow Row(PanelStock stock)
    {
        Panel panel = stock.Panel;
        return ReportRow.Of(
            panel.Name,
            $"{stock.Count}",
            Stated(panel.PowerW, "W"),
            Figures.Stated(panel.OpenCircuitV, "V"),
            Figures.Stated(panel.ShortCircuitA, "A"),
            Stated(panel.MaximumPowerV, "V"),
            Stated(panel.MaximumPowerA, "A"),
            Stated(panel.OpenCircuitPerK with { Value = 100 * panel.OpenCircuitPerK.Value }, "%"));
    }

    /// <summary>A figure that the label does not give says so.</summary>
    private static string Stated(Sourced<double> figure, string unit) => Figures.Stated(figure.Origin == Origin.Given ? figure.Value : Math.Round(figure.Value, unit == "W" ? 0 : 2), unit) + Told(figure.Origin);

    private static string Told(Origin origin) => origin switch
    {
        Origin.Given => "",
        Origin.Derived => " (worked out)",
        _ => " (assumed)",
    };

    private static IEnumerable<ReportRow> Limits(DcInput input)
    {
        yield return ReportRow.Of("volts, at most", Figures.Stated(input.MaxVoltageV, "V"), "the plan", "hard: nothing moves it");
        if (input.StartVoltageV is { } startV)
        {
            yield return ReportRow.Of("volts to start", Figures.Stated(startV, "V"), "the plan", "");
        }

        if (input.TrackingMinV is not null || input.TrackingMaxV is not null)
        {
            yield return ReportRow.Of("voltage window", $"{Figures.Stated(input.TrackingMinV ?? 0, "V")} to {Figures.Stated(input.TrackingMaxV ?? input.MaxVoltageV, "V")}", "the plan", "");
        }

        foreach ((string what, Limit? limit, string unit) in new[]
        {
            ("amps it draws, at most", input.MaxCurrent, "A"),
            ("amps the array may offer", input.MaxShortCircuitCurrent, "A"),
            ("amps, meaning unknown", input.RatedCurrent, "A"),
            ("watts it takes, at most", input.MaxPower, "W"),
        })
        {
            if (limit is not null)
            {
                yield return Row(what, limit, unit);
            }
        }
    }

    private static ReportRow Row(string what, Limit limit, string unit)
    {
        Evidence evidence = limit.Evidence;
        string exceed = evidence is { Kind: not EvidenceKind.None, ExceedFraction: > 0 } ? $"allows {Figures.Stated(limit.Allowed, unit)}. " : "";
        return ReportRow.Of(what, Figures.Stated(limit.Figure, unit), Word(evidence.Kind), exceed + evidence.Note);
    }

    private static string Word(EvidenceKind kind) => kind switch
    {
        EvidenceKind.None => "nobody's yet",
        EvidenceKind.Label => "the label's",
        EvidenceKind.Manual => "the manual's",
        _ => "the maker's",
    };

    private static IEnumerable<ReportRow> Site(Plan plan)
    {
        yield return ReportRow.Of("Place", plan.Place is { } place
            ? $"{Degrees(place.LatitudeDeg, "north", "south")}, {Degrees(place.LongitudeDeg, "east", "west")}{(place.IsElevationAssumed ? "" : $", {Figures.Stated(place.ElevationM, "m")} above the sea")}{(place.ColdestC is { } coldestC ? $"; coldest air {Figures.Stated(coldestC, "°C")}" : "")}"
            : "not stated");
        yield return ReportRow.Of("Mount", $"tilt {plan.Mount.TiltDeg:0.##}°, facing {plan.Mount.AzimuthDeg:0.##}° clockwise from north, {Kind(plan.Mount.Kind)}");
        Cable cable = plan.Cable;
        yield return ReportRow.Of("Run to the input", $"{PartsScreen.Metres(cable.LengthM.Value)} one way, {Size(cable.AreaMm2)}");
        yield return ReportRow.Of("Each string's own run", $"{PartsScreen.Metres(cable.StringLengthM.Value)} one way, {Size(cable.StringAreaMm2)}");
    }

    /// <summary>By the name that is printed on the cable: 5.261 mm² are 10 AWG.</summary>
    private static string Size(Sourced<double> areaMm2) => ConductorSize.Of(areaMm2.Value).Name + Told(areaMm2.Origin);

    private static string Degrees(double deg, string positive, string negative) => $"{Math.Abs(deg):0.####}° {(deg < 0 ? negative : positive)}";

    private static string Kind(MountKind kind) => kind switch
    {
        MountKind.OpenRack => "on an open rack",
        MountKind.CloseRoof => "close to a roof",
        _ => "flat on the ground",
    };
}
