using Arraywright.Presentation.Charts;
using SkiaSharp;

namespace Arraywright.Pictures;

/// <summary>A chart as a PNG.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="IsEverySignKnown">False where the font lacks a sign of a name, and a question mark stands for it.</param>
public sealed record PngPicture(byte[] Bytes, bool IsEverySignKnown)
{
    /// <summary>Pixels for each pixel a chart is laid out for: sharp over the width of a printed page.</summary>
    private const int Scale = 3;

    /// <summary>Draws a chart. The native library is loaded here.</summary>
    /// <exception cref="DllNotFoundException">The native library is not beside the program.</exception>
    public static PngPicture Of(Chart chart)
    {
        using SKBitmap bitmap = new(chart.WidthPx * Scale, chart.HeightPx * Scale, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using SKCanvas surface = new(bitmap);
        surface.Scale(Scale);
        using SkiaCanvas canvas = new(surface);
        chart.Draw(canvas);
        surface.Flush();
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return new PngPicture(data.ToArray(), canvas.IsEverySignKnown);
    }
}
