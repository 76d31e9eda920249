using Arraywright.Limits;
using PdfSharp.Drawing;

namespace Arraywright.Print.Setting;

/// <summary>Measures and colours of a page: A4, readable in black and white.</summary>
internal static class Layout
{
    public const double PageWidthPt = 595.28;
    public const double PageHeightPt = 841.89;
    public const double LeftPt = 48;
    public const double RightPt = PageWidthPt - 48;
    public const double TopPt = 54;
    public const double BottomPt = PageHeightPt - 54;
    public const double WidthPt = RightPt - LeftPt;

    public const double TitlePt = 20;
    public const double SectionPt = 14;
    public const double HeadingPt = 10.5;
    public const double TextPt = 9.5;
    public const double SmallPt = 8.5;

    /// <summary>From line to line, in sizes of the font.</summary>
    public const double Leading = 1.36;

    /// <summary>From a line's upper edge to its baseline, in sizes of the font.</summary>
    public const double Baseline = 1.02;

    public static XColor Ink { get; } = XColor.FromArgb(0x1b, 0x1b, 0x1b);

    public static XColor Faint { get; } = XColor.FromArgb(0x55, 0x55, 0x55);

    public static XColor Line { get; } = XColor.FromArgb(0x8a, 0x8a, 0x84);

    public static XColor Pale { get; } = XColor.FromArgb(0xf2, 0xf2, 0xee);

    /// <summary>The colour that repeats what the word of a level says.</summary>
    public static XColor Of(Level level) => level switch
    {
        Level.Go => XColor.FromArgb(0x0a, 0x5c, 0x2b),
        Level.Ask => XColor.FromArgb(0x7a, 0x4a, 0x00),
        _ => XColor.FromArgb(0x9b, 0x14, 0x14),
    };
}
