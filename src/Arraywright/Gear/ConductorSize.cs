using System.Collections.Immutable;
using System.Globalization;

namespace Arraywright.Gear;

/// <summary>A size of copper: mm² after IEC 60228, or a gauge of the AWG (ASTM B258).</summary>
/// <param name="Name">As it is printed on the cable: "4 mm²", "12 AWG".</param>
/// <param name="AreaMm2">Cross-section of the copper, mm².</param>
/// <param name="IsGauge">True for a gauge of the AWG.</param>
public sealed record ConductorSize(string Name, double AreaMm2, bool IsGauge)
{
    /// <summary>How close an area has to be to a made size to be taken for it, fraction: printed tables of AWG areas differ by 0.4 %.</summary>
    private const double Same = 0.005;

    private static ReadOnlySpan<double> MetricMm2 => [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50];

    /// <summary>Sizes in mm² that are made, from 0.5 to 50 mm².</summary>
    public static ImmutableArray<ConductorSize> Metric { get; } = [.. MetricMm2.ToArray().Select(static mm2 => new ConductorSize(Plain(mm2) + " mm²", mm2, IsGauge: false))];

    /// <summary>Gauges that are made, from 18 AWG to 4/0 AWG: d = 0.127 mm · 92^((36 − n)/39).</summary>
    public static ImmutableArray<ConductorSize> Gauges { get; } = [.. new[] { 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3 }.Select(static gauge => new ConductorSize(GaugeName(gauge), GaugeMm2(gauge), IsGauge: true))];

    /// <summary>The made size that an area is, or else the area itself under its own name.</summary>
    /// <param name="areaMm2">Cross-section, mm².</param>
    public static ConductorSize Of(double areaMm2) =>
        Metric.Concat(Gauges).Where(size => Math.Abs(areaMm2 - size.AreaMm2) <= Same * size.AreaMm2).MinBy(size => Math.Abs(areaMm2 - size.AreaMm2))
        ?? new ConductorSize(Plain(areaMm2) + " mm²", areaMm2, IsGauge: false);

    /// <summary>The smallest size of the other kind that is no thinner: what serves where this one is not sold; null where none is made.</summary>
    public ConductorSize? Substitute => (IsGauge ? Metric : Gauges).FirstOrDefault(size => size.AreaMm2 >= AreaMm2 * (1 - Same));

    /// <summary>Both names: "4 mm² (or 10 AWG)".</summary>
    public string BothNames => Substitute is { } other ? $"{Name} (or {other.Name})" : Name;

    private static string GaugeName(int gauge) => gauge > 0 ? $"{gauge} AWG" : $"{1 - gauge}/0 AWG";

    private static double GaugeMm2(int gauge)
    {
        double diameterMm = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        return Math.PI * diameterMm * diameterMm / 4;
    }

    private static string Plain(double mm2) => mm2.ToString("0.###", CultureInfo.InvariantCulture);
}
