using OxyPlot;

namespace Arraywright.Presentation.Charts;

/// <summary>
/// Colours that stay apart for every kind of colour sight and, by their lightness, in black and white: the palette of M. Okabe and K. Ito,
/// "Color Universal Design" (2002, revised 2008). No meaning rests on them alone: dashes, hatching, marks and words carry it too.
/// </summary>
internal static class ChartColors
{
    public static OxyColor Card { get; } = OxyColors.White;

    public static OxyColor Ink { get; } = OxyColors.Black;

    public static OxyColor Grid { get; } = OxyColor.FromRgb(0xdc, 0xdc, 0xdc);

    public static OxyColor Forbidden { get; } = OxyColor.FromRgb(0xe4, 0xe4, 0xe4);

    /// <summary>Dark.</summary>
    public static OxyColor Blue { get; } = OxyColor.FromRgb(0x00, 0x72, 0xb2);

    /// <summary>Between dark and light.</summary>
    public static OxyColor Vermillion { get; } = OxyColor.FromRgb(0xd5, 0x5e, 0x00);

    /// <summary>Lighter.</summary>
    public static OxyColor Orange { get; } = OxyColor.FromRgb(0xe6, 0x9f, 0x00);

    /// <summary>Light.</summary>
    public static OxyColor Yellow { get; } = OxyColor.FromRgb(0xf0, 0xe4, 0x42);
}
