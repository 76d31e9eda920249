using System.Collections.Immutable;
using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;
using Arraywright.Files.Yaml;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the shade on a kind of panel, in any of its three forms.</summary>
internal static class ShadeReader
{
    /// <param name="fields">The kind of panel.</param>
    /// <param name="panel">The panel read, for its groups of cells; null when it is at fault.</param>
    public static Shade Read(Fields fields, Panel? panel)
    {
        switch (fields.Node(PanelKeys.Shade))
        {
            case YamlScalar { IsNothing: false } scalar:
                return fields.Figure(scalar, PanelKeys.Shade, QuantityKinds.Share) is { } figure ? Shade.None with { Fraction = figure.Value } : Shade.None;
            case YamlSequence list:
                return Shade.None with { Hours = ReadHours(fields, list) };
            case YamlMapping mapping:
                return Shade.None with { GroupFractions = ReadGroups(new Fields(mapping, ShadeGroupsKeys.Section, fields.Faults), panel) };
            case null or YamlReported:
                return Shade.None;
            case { } node:
                fields.AddUnexpected(node, PanelKeys.Shade, null);
                return Shade.None;
        }
    }

    private static ImmutableArray<ShadeHours> ReadHours(Fields fields, YamlSequence list)
    {
        List<ShadeHours> hours = [];
        foreach (YamlNode item in list.Items)
        {
            if (item is YamlMapping mapping)
            {
                AddHours(new Fields(mapping, ShadeHoursKeys.Section, fields.Faults), hours);
            }
            else if (item is not YamlReported)
            {
                fields.Faults.Add(item, item.Described, "hours of shade such as \"{ from: 7:30, to: 10:00, fraction: 60 % }\"", "a share for each group of cells is written \"shade: { groups: [80 %, 0 %] }\"");
            }
        }

        if (list.Items.Count is 0 or > 24)
        {
            fields.Faults.Add(list, $"{list.Items.Count} hours of shade", "from 1 to 24 of them", "leave \"shade\" out where there is none");
        }

        return [.. hours];
    }

    private static void AddHours(Fields fields, List<ShadeHours> hours)
    {
        double? from = fields.Hour(ShadeHoursKeys.From), to = fields.Hour(ShadeHoursKeys.To), fraction = fields.Figure(ShadeHoursKeys.Fraction);
        if (from is not { } begins || to is not { } ends || fraction is not { } share)
        {
            return;
        }

        if (begins >= ends)
        {
            fields.Faults.Add(fields.PlaceOf(ShadeHoursKeys.To), fields.PlaceOf(ShadeHoursKeys.To).Described, "an hour later than \"from\"", "write shade over midnight as two items");
            return;
        }

        foreach (ShadeHours other in hours)
        {
            if (begins < other.ToHour && other.FromHour < ends)
            {
                fields.Faults.Add(fields.PlaceOf(ShadeHoursKeys.From), fields.PlaceOf(ShadeHoursKeys.From).Described, "hours that do not overlap others", "give each hour of the day one share");
                return;
            }
        }

        hours.Add(new ShadeHours(begins, ends, share));
    }

    private static ImmutableArray<double> ReadGroups(Fields fields, Panel? panel)
    {
        YamlNode? node = fields.Node(ShadeGroupsKeys.Groups);
        if (node is not YamlSequence { Items.Count: > 0 and <= SharesKey.Most } list)
        {
            if (node is not (null or YamlReported))
            {
                fields.AddUnexpected(node, ShadeGroupsKeys.Groups, null);
            }

            return [];
        }

        List<double> shares = [];
        foreach (YamlNode item in list.Items)
        {
            if (item is YamlScalar scalar)
            {
                if (fields.Figure(scalar, ShadeGroupsKeys.Groups, QuantityKinds.Share) is { } figure)
                {
                    shares.Add(figure.Value);
                }
            }
            else if (item is not YamlReported)
            {
                fields.AddUnexpected(item, ShadeGroupsKeys.Groups, null);
            }
        }

        int groups = panel is null ? list.Items.Count : Math.Max(1, panel.BypassDiodes.Value);
        if (list.Items.Count != groups)
        {
            fields.Faults.Add(list, $"{list.Items.Count} shares", $"{groups}, one for each bypassed group of cells", "state \"bypass_diodes\" if it is wrong");
        }

        return [.. shares];
    }
}
