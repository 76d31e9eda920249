using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;
using Arraywright.Gear;

namespace Arraywright.Files.Writing;

/// <summary>Writes a kind of panel: what its label says, not what was derived from it.</summary>
internal static class PanelWriting
{
    /// <summary>A kind at hand with its count, or one that might be bought.</summary>
    public static void Write(YamlLines lines, PanelStock stock, string? currency, bool isOwned)
    {
        Panel panel = stock.Panel;
        lines.Add(PanelKeys.Name, panel.Name);
        lines.Add(PanelKeys.Count, isOwned ? stock.Count.ToString() : null);
        lines.Add(PanelKeys.Power, Figures.Given(panel.PowerW, PanelKeys.Power));
        lines.Add(PanelKeys.Voc, Figures.Of(panel.OpenCircuitV, PanelKeys.Voc));
        lines.Add(PanelKeys.Isc, Figures.Of(panel.ShortCircuitA, PanelKeys.Isc));
        lines.Add(PanelKeys.Vmp, Figures.Given(panel.MaximumPowerV, PanelKeys.Vmp));
        lines.Add(PanelKeys.Imp, Figures.Given(panel.MaximumPowerA, PanelKeys.Imp));
        lines.Add(PanelKeys.VocTemperature, Figures.Given(panel.OpenCircuitPerK, PanelKeys.VocTemperature));
        lines.Add(PanelKeys.IscTemperature, Figures.Given(panel.ShortCircuitPerK, PanelKeys.IscTemperature));
        lines.Add(PanelKeys.PowerTemperature, Figures.Of(panel.PowerPerK, PanelKeys.PowerTemperature));
        lines.Add(PanelKeys.Cells, Figures.Given(panel.Cells));
        lines.Add(PanelKeys.BypassDiodes, Figures.Given(panel.BypassDiodes));
        lines.Add(PanelKeys.MaxSeriesFuse, Figures.Of(panel.MaxSeriesFuseA, PanelKeys.MaxSeriesFuse));
        lines.Add(PanelKeys.MaxSystemVoltage, Figures.Of(panel.MaxSystemVoltageV, PanelKeys.MaxSystemVoltage));
        lines.Add(PanelKeys.Tolerance, Figures.Given(panel.ToleranceFraction, PanelKeys.Tolerance));
        lines.Add(PanelKeys.Noct, Figures.Of(panel.NoctC, PanelKeys.Noct));
        lines.Add(PanelKeys.Technology, panel.Technology.Origin == Origin.Given ? PanelKeys.Technology.Options[(int)panel.Technology.Value] : null);
        WriteShade(lines, stock.Shade);
        lines.Add(PanelKeys.Tilt, Figures.Of(stock.Mount?.TiltDeg, PanelKeys.Tilt));
        lines.Add(PanelKeys.Azimuth, Figures.Of(stock.Mount?.AzimuthDeg, PanelKeys.Azimuth));
        lines.Add(PanelKeys.Price, panel.Price is { } price ? $"{Decimals.Shifted(price, 0)} {currency}" : null);
    }

    private static void WriteShade(YamlLines lines, Shade shade)
    {
        lines.Add(PanelKeys.Shade, shade.Fraction == 0 ? null : Figures.Of(shade.Fraction, QuantityKinds.Share));
        lines.AddGroup(PanelKeys.Shade, !shade.GroupFractions.IsEmpty, () =>
            lines.Add(ShadeGroupsKeys.Groups, $"[{string.Join(", ", shade.GroupFractions.Select(static share => Figures.Of(share, QuantityKinds.Share)))}]"));
        lines.AddList(PanelKeys.Shade, shade.Hours, hours =>
        {
            lines.Add(ShadeHoursKeys.From, ClockHour.Write(hours.FromHour));
            lines.Add(ShadeHoursKeys.To, ClockHour.Write(hours.ToHour));
            lines.Add(ShadeHoursKeys.Fraction, Figures.Of(hours.Fraction, ShadeHoursKeys.Fraction));
        });
    }
}
