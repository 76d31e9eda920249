using Arraywright.Presentation.Charts;
using Arraywright.Presentation.Drawing;
using OxyPlot;
using SkiaSharp;

namespace Arraywright.Pictures;

/// <summary>A chart or a drawing as a PNG.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="IsEverySignKnown">False where the font lacks a sign of a name, and a question mark stands for it.</param>
public sealed record PngPicture(byte[] Bytes, bool IsEverySignKnown)
{
    /// <summary>Pixels for each pixel a chart is laid out for: sharp over the width of a printed page.</summary>
    private const int Scale = 3;

    /// <summary>Draws a chart. The native library is loaded here.</summary>
    /// <exception cref="DllNotFoundException">The native library is not beside the program.</exception>
    public static PngPicture Of(Chart chart) => Of(chart.WidthPx, chart.HeightPx, chart.Draw);

    /// <summary>Draws a drawing. The native library is loaded here.</summary>
    /// <exception cref="DllNotFoundException">The native library is not beside the program.</exception>
    public static PngPicture Of(Picture picture) => Of(picture.WidthPx, picture.HeightPx, picture.Draw);

    private static PngPicture Of(double widthPx, double heightPx, Action<IRenderContext> draw)
    {
        using SKBitmap bitmap = new((int)Math.Ceiling(widthPx * Scale), (int)Math.Ceiling(heightPx * Scale), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using SKCanvas surface = new(bitmap);
        surface.Clear(SKColors.White);
        surface.Scale(Scale);
        using SkiaCanvas canvas = new(surface);
        draw(canvas);
        surface.Flush();
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return new PngPicture(data.ToArray(), canvas.IsEverySignKnown);
    }
}
