using OxyPlot;

namespace Arraywright.Presentation.Charts;

/// <summary>Lays a chart out on its card: heading above, plot between, key below.</summary>
internal sealed class ChartSheet(IRenderContext canvas, double widthPx)
{
    private const double MarginPx = 12;
    private const double SamplePx = 26;
    private const double KeyGapPx = 18;
    private const double LineHeight = 1.3;

    private readonly double _textWidthPx = widthPx - (2 * MarginPx);
    private double _topPx = MarginPx;

    /// <summary>Draws it.</summary>
    public void Draw(ChartWords words, PlotModel plot, double heightPx)
    {
        canvas.DrawRectangle(new OxyRect(0, 0, widthPx, heightPx), ChartColors.Card, OxyColors.Undefined, 0, EdgeRenderingMode.PreferSharpness);
        Write(words.Heading, PlotStyle.HeadingPx, FontWeights.Bold, 2);
        Write(words.Warning ?? "", PlotStyle.TextPx, FontWeights.Bold, 6);
        foreach (string detail in words.Details)
        {
            Write(detail, PlotStyle.TextPx, FontWeights.Normal, 2);
        }

        List<List<ChartKey>> rows = Rows(words.Keys);
        double keysPx = heightPx - MarginPx - (rows.Count * PlotStyle.TextPx * LineHeight);
        Draw(plot, new OxyRect(0, _topPx, widthPx, keysPx - _topPx));
        _topPx = keysPx;
        rows.ForEach(Draw);
    }

    private void Draw(IPlotModel plot, OxyRect area)
    {
        plot.Update(true);
        plot.Render(canvas, area);
        if (((PlotModel)plot).GetLastPlotException() is { } failure)
        {
            throw new InvalidOperationException("The chart could not be drawn.", failure);
        }
    }

    /// <summary>Writes a text in as many lines as it needs, at most so many, and goes down past them.</summary>
    private void Write(string text, double sizePx, double weight, int mostLines)
    {
        foreach (string line in TextMeasure.Wrap(text, _textWidthPx, sizePx, weight > FontWeights.Normal, mostLines))
        {
            WriteAt(MarginPx, line, sizePx, weight);
            _topPx += sizePx * LineHeight;
        }
    }

    private void WriteAt(double leftPx, string text, double sizePx, double weight) =>
        canvas.DrawText(new ScreenPoint(leftPx, _topPx), text, ChartColors.Ink, null, sizePx, weight, 0, HorizontalAlignment.Left, VerticalAlignment.Top, null);

    private void Draw(List<ChartKey> row)
    {
        double leftPx = MarginPx;
        foreach (ChartKey key in row)
        {
            key.DrawSample(canvas, new OxyRect(leftPx, _topPx + 1, SamplePx - 5, PlotStyle.TextPx));
            WriteAt(leftPx + SamplePx, key.Words, PlotStyle.TextPx, FontWeights.Normal);
            leftPx += WidthPx(key) + KeyGapPx;
        }

        _topPx += PlotStyle.TextPx * LineHeight;
    }

    /// <summary>As many keys a row as fit beside each other.</summary>
    private List<List<ChartKey>> Rows(IEnumerable<ChartKey> keys)
    {
        List<List<ChartKey>> rows = [];
        double usedPx = double.PositiveInfinity;
        foreach (ChartKey key in keys)
        {
            if (usedPx + WidthPx(key) > _textWidthPx)
            {
                rows.Add([]);
                usedPx = 0;
            }

            rows[^1].Add(key);
            usedPx += WidthPx(key) + KeyGapPx;
        }

        return rows;
    }

    private static double WidthPx(ChartKey key) => SamplePx + TextMeasure.Width(key.Words, PlotStyle.TextPx, isBold: false);
}
