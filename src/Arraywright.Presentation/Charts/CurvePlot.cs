using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Presentation.Terminal;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Arraywright.Presentation.Charts;

/// <summary>A current-voltage curve and, under it over the same volts, its watts; the input's limits, what it takes, the hills of power.</summary>
public sealed class CurvePlot
{
    private const string Amps = "A";
    private const string Watts = "W";

    /// <summary>A limit so many times past the curve is named in the key instead of drawn, since it would flatten the curve.</summary>
    private const double FarOff = 1.7;

    /// <summary>Width of an upright label, as a share of the axis of volts.</summary>
    private const double LabelShare = 0.04;

    private readonly CurveResult _result;
    private readonly PlotModel _plot = PlotStyle.Plot();
    private readonly List<TextAnnotation> _labels = [];
    private readonly double _maxV;
    private readonly double _maxA;
    private readonly double _maxW;

    private CurvePlot(CurveResult result)
    {
        _result = result;
        _maxV = EndV(result);
        _maxA = End(result.CurrentA.Max(), result.Input.DrawLimitA, 1.12);
        _maxW = End(result.PowerW.Max(), result.Input.MaxPower?.Figure, 1.2);
    }

    /// <summary>The chart of a curve.</summary>
    public static Chart Of(CurveResult result) => new(CurveWords.Of(result, IsDrawn(result)), 580, () => new CurvePlot(result).Draw());

    /// <summary>Whether the input's limits lie near enough to the curve to be drawn.</summary>
    private static (bool Volts, bool Amps, bool Watts) IsDrawn(CurveResult result) => (
        result.Input.MaxVoltageV <= EndV(result),
        result.Input.DrawLimitA <= End(result.CurrentA.Max(), result.Input.DrawLimitA, 1),
        result.Input.MaxPower?.Figure <= End(result.PowerW.Max(), result.Input.MaxPower?.Figure, 1));

    private static double EndV(CurveResult result) =>
        End(Math.Max(result.VoltageV[^1], result.Assignment.VocColdV), result.Input.MaxVoltageV, 1.08);

    private static double End(double most, double? limit, double room) =>
        Math.Max(0.1, room * (limit is { } near && near <= FarOff * most ? Math.Max(most, near) : most));

    private PlotModel Draw()
    {
        _plot.Axes.Add(PlotStyle.Axis(AxisPosition.Bottom, "volts, V", _maxV, 7));
        AddAxis(Amps, "amps, A", _maxA, 0.53, 1);
        AddAxis(Watts, "watts, W", _maxW, 0, 0.47);
        DrawForbidden();
        DrawCurve(Amps, _result.CurrentA, ChartColors.Blue);
        DrawCurve(Watts, _result.PowerW, ChartColors.Vermillion);
        DrawLimits();
        DrawVolts();
        DrawHills();
        DrawTaken();
        _labels.ForEach(_plot.Annotations.Add);
        return _plot;
    }

    private void AddAxis(string key, string title, double most, double from, double to)
    {
        LinearAxis axis = PlotStyle.Axis(AxisPosition.Left, title, most, 6);
        axis.Key = key;
        axis.StartPosition = from;
        axis.EndPosition = to;
        _plot.Axes.Add(axis);
    }

    private void DrawCurve(string key, IReadOnlyList<double> values, OxyColor color)
    {
        LineSeries line = new() { YAxisKey = key, Color = color, StrokeThickness = 2.5 };
        line.Points.AddRange(_result.VoltageV.Zip(values, (volts, value) => new DataPoint(volts, value)));
        _plot.Series.Add(line);
    }

    /// <summary>Above the voltage limit the ground is grey.</summary>
    private void DrawForbidden()
    {
        double limitV = _result.Input.MaxVoltageV;
        if (limitV < _maxV)
        {
            foreach ((string key, double most) in Halves())
            {
                _plot.Annotations.Add(new RectangleAnnotation { YAxisKey = key, MinimumX = limitV, MaximumX = _maxV, MinimumY = 0, MaximumY = most, Fill = ChartColors.Forbidden, Layer = AnnotationLayer.BelowAxes });
            }
        }
    }

    /// <summary>Each limit is a level over its own quantity, and in the other half what that level amounts to there.</summary>
    private void DrawLimits()
    {
        if (_result.Input.DrawLimitA is { } limitA && limitA < _maxA)
        {
            _plot.Annotations.Add(PlotStyle.Line(Amps, LineStyle.Dash, new DataPoint(0, limitA), new DataPoint(_maxV, limitA)));
            double endV = Math.Min(_maxV, _maxW / limitA);
            _plot.Annotations.Add(PlotStyle.Line(Watts, LineStyle.Dash, new DataPoint(0, 0), new DataPoint(endV, endV * limitA)));
            LabelLimit(Amps, limitA, $"current limit {Figures.Stated(limitA, "A")}", _result.CurrentA[0], _maxA);
        }

        if (_result.Input.MaxPower?.Figure is { } limitW && limitW < _maxW)
        {
            _plot.Annotations.Add(PlotStyle.Line(Watts, LineStyle.Dot, new DataPoint(0, limitW), new DataPoint(_maxV, limitW)));
            _plot.Annotations.Add(PlotStyle.Line(Amps, LineStyle.Dot, Hyperbola(limitW)));
            LabelLimit(Watts, limitW, $"power limit {Figures.Stated(limitW, "W")}", 0, _maxW);
        }
    }

    /// <summary>Above its line, unless the curve runs close above it.</summary>
    private void LabelLimit(string key, double level, string text, double curve, double most)
    {
        bool isBelow = curve > level && curve - level < 0.1 * most;
        _labels.Add(PlotStyle.Label(key, new DataPoint(0, level), text, HorizontalAlignment.Left, isBelow ? VerticalAlignment.Top : VerticalAlignment.Bottom, new ScreenVector(6, isBelow ? 3 : -3)));
    }

    private DataPoint[] Hyperbola(double limitW)
    {
        const int points = 60;
        double fromV = limitW / _maxA;
        return fromV >= _maxV ? [] : [.. Enumerable.Range(0, points + 1).Select(i => fromV + ((_maxV - fromV) * i / points)).Select(volts => new DataPoint(volts, limitW / volts))];
    }

    /// <summary>The ends of the window, the voltage limit, and what open leads reach at the coldest.</summary>
    private void DrawVolts()
    {
        DcInput input = _result.Input;
        if (input.TrackingMinV is { } low)
        {
            DrawUpright(low, LineStyle.LongDash, isLabelRight: true);
        }

        if (input.TrackingMaxV is { } high && high < input.MaxVoltageV)
        {
            DrawUpright(high, LineStyle.LongDash, isLabelRight: false);
        }

        DrawUpright(input.MaxVoltageV, LineStyle.Solid, isLabelRight: true);
        Mark(Amps, new DataPoint(_result.Assignment.VocColdV, 0), MarkerType.Diamond, 6, ChartColors.Card);
    }

    private void DrawUpright(double volts, LineStyle style, bool isLabelRight)
    {
        if (volts > _maxV)
        {
            return;
        }

        foreach ((string key, double most) in Halves())
        {
            _plot.Annotations.Add(PlotStyle.Line(key, style, new DataPoint(volts, 0), new DataPoint(volts, most)));
        }

        double labelV = isLabelRight ? volts : volts - (LabelShare * _maxV);
        bool isLabelHigh = IsCrowdedBelow(labelV);

        // The mark of the coldest stands at the foot of the amps: beside it the label goes to that of the watts.
        bool isMarkThere = Math.Abs(_result.Assignment.VocColdV - labelV - (LabelShare / 2 * _maxV)) < LabelShare * _maxV;
        TextAnnotation label = PlotStyle.Label(
            isMarkThere && !isLabelHigh ? Watts : Amps,
            new DataPoint(volts, isLabelHigh ? _maxA : 0),
            Figures.Stated(volts, "V"),
            isLabelHigh ? HorizontalAlignment.Right : HorizontalAlignment.Left,
            isLabelRight ? VerticalAlignment.Top : VerticalAlignment.Bottom,
            new ScreenVector(isLabelRight ? 3 : -3, isLabelHigh ? 4 : -12));
        label.TextRotation = -90;
        label.Background = volts < _result.Input.MaxVoltageV ? ChartColors.Card : ChartColors.Forbidden;
        _labels.Add(label);
    }

    /// <summary>Whether the curve comes down here, or the figures of the point taken stand here, where an upright line would have its own.</summary>
    /// <param name="fromV">Left edge of those figures.</param>
    private bool IsCrowdedBelow(double fromV)
    {
        double lowA = 0.4 * _maxA;
        double openV = _result.VoltageV[^1];
        if (CurveWords.IsTaken(_result) && _result.Assignment.Operating.CurrentA < lowA && fromV > _result.Assignment.Operating.VoltageV)
        {
            return true;
        }

        double toV = Math.Min(openV, fromV + (LabelShare * _maxV));
        return fromV < openV && _result.CurrentA[(int)(toV / openV * (_result.CurrentA.Length - 1))] < lowA;
    }

    /// <summary>Each hill is marked; its watts stand above it where there is room, below it where the power limit's name is, and beside an upright line that is near.</summary>
    private void DrawHills()
    {
        double lastV = double.NegativeInfinity;
        foreach (CurvePoint hill in _result.LocalMaxima.Where(hill => !CurveWords.IsTakenAt(_result, hill)))
        {
            Mark(Amps, new DataPoint(hill.VoltageV, hill.CurrentA), MarkerType.Triangle, 6, ChartColors.Card);
            Mark(Watts, new DataPoint(hill.VoltageV, hill.PowerW), MarkerType.Triangle, 6, ChartColors.Card);
            if (hill.VoltageV - lastV > 0.15 * _maxV)
            {
                bool isBelow = hill.VoltageV < 0.45 * _maxV && Math.Abs(hill.PowerW - (_result.Input.MaxPower?.Figure ?? 0)) < 0.15 * _maxW;
                HorizontalAlignment across = Beside(hill.VoltageV);
                double shiftPx = across switch { HorizontalAlignment.Left => 4, HorizontalAlignment.Right => -4, _ => 0 };
                _labels.Add(PlotStyle.Label(Watts, new DataPoint(hill.VoltageV, hill.PowerW), Figures.Of(hill.PowerW, "W"), across, isBelow ? VerticalAlignment.Top : VerticalAlignment.Bottom, new ScreenVector(shiftPx, isBelow ? 9 : -8)));
                lastV = hill.VoltageV;
            }
        }
    }

    /// <summary>On which side of an upright line near a hill the hill's figures stand: over its middle where none is near.</summary>
    private HorizontalAlignment Beside(double hillV)
    {
        double[] near = [.. new[] { _result.Input.TrackingMinV, _result.Input.TrackingMaxV, _result.Input.MaxVoltageV }.OfType<double>().Where(volts => Math.Abs(volts - hillV) < 2 * LabelShare * _maxV)];
        return near.Length == 0 ? HorizontalAlignment.Center : near.MinBy(volts => Math.Abs(volts - hillV)) <= hillV ? HorizontalAlignment.Left : HorizontalAlignment.Right;
    }

    /// <summary>The figures stand where the curve is not: right of the top it falls away below them, left of it rises above them.</summary>
    private void DrawTaken()
    {
        if (!CurveWords.IsTaken(_result))
        {
            return;
        }

        OperatingPoint taken = _result.Assignment.Operating;
        Mark(Amps, new DataPoint(taken.VoltageV, taken.CurrentA), MarkerType.Circle, 6, ChartColors.Ink);
        Mark(Watts, new DataPoint(taken.VoltageV, taken.PowerW), MarkerType.Circle, 6, ChartColors.Ink);
        bool isPastTop = taken.VoltageV > 0.99 * _result.MaximumPower.VoltageV;
        VerticalAlignment up = isPastTop ? VerticalAlignment.Bottom : VerticalAlignment.Top;
        ScreenVector shift = new(8, isPastTop ? -4 : 6);
        _labels.Add(PlotStyle.Label(Amps, new DataPoint(taken.VoltageV, taken.CurrentA), $"{Figures.Of(taken.VoltageV, "V")}, {Figures.Of(taken.CurrentA, "A")}", HorizontalAlignment.Left, up, shift));
        _labels.Add(PlotStyle.Label(Watts, new DataPoint(taken.VoltageV, taken.PowerW), Figures.Of(taken.PowerW, "W"), HorizontalAlignment.Left, up, shift));
    }

    private void Mark(string key, DataPoint at, MarkerType mark, double sizePx, OxyColor fill) => _plot.Annotations.Add(new PointAnnotation
    {
        YAxisKey = key,
        X = at.X,
        Y = at.Y,
        Shape = mark,
        Size = sizePx,
        Fill = fill,
        Stroke = mark == MarkerType.Circle ? ChartColors.Card : ChartColors.Ink,
        StrokeThickness = 1.5,
        ClipByXAxis = false,
        ClipByYAxis = false,
    });

    private (string Key, double Most)[] Halves() => [(Amps, _maxA), (Watts, _maxW)];
}
