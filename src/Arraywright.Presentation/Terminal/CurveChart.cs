namespace Arraywright.Presentation.Terminal;

/// <summary>A curve drawn in characters on a grid of volts across and amps or watts upwards.</summary>
internal sealed class CurveChart
{
    private const int Margin = 8;
    private static readonly double[] RoundSteps = [1, 1.2, 1.6, 2, 2.4, 3, 4, 5, 6, 8, 10, 12];

    private readonly char[][] _cells;
    private readonly double _maxX;
    private readonly double _maxY;
    private char _line;

    /// <summary>An empty chart.</summary>
    /// <param name="columns">Columns of the grid.</param>
    /// <param name="rows">Rows of the grid.</param>
    /// <param name="maxX">Value at the right edge; over 0.</param>
    /// <param name="maxY">Value at the top; over 0.</param>
    public CurveChart(int columns, int rows, double maxX, double maxY)
    {
        _cells = [.. Enumerable.Range(0, rows).Select(_ => Enumerable.Repeat(' ', columns).ToArray())];
        _maxX = maxX;
        _maxY = maxY;
    }

    /// <summary>The next round number that leaves a little room above a value: an axis that ends there has readable figures, half of it too.</summary>
    public static double RoundAbove(double value)
    {
        double wanted = Math.Max(value, 0.01) * 1.02;
        double decade = 0.01;
        while (decade * 10 < wanted)
        {
            decade *= 10;
        }

        return decade * RoundSteps.First(step => decade * step >= wanted);
    }

    /// <summary>Draws a line through the samples and fills what lies under it; every column between them gets a mark, and steep parts every row.</summary>
    public void Line(IReadOnlyList<double> x, IReadOnlyList<double> y, char mark, char under)
    {
        _line = mark;
        int sample = 0;
        int? last = null;
        for (int column = 0; column < _cells[0].Length; column++)
        {
            double at = Math.Min(x[^1], _maxX * column / (_cells[0].Length - 1));
            while (sample < x.Count - 2 && x[sample + 1] < at)
            {
                sample++;
            }

            double span = x[sample + 1] - x[sample];
            double value = span > 0 ? y[sample] + ((y[sample + 1] - y[sample]) * (at - x[sample]) / span) : y[sample];
            int row = Row(value);
            int from = last is { } before ? Math.Min(row, before < row ? before + 1 : before > row ? before - 1 : row) : row;
            int to = last is { } previous ? Math.Max(row, previous < row ? previous + 1 : previous > row ? previous - 1 : row) : row;
            for (int each = from; each <= to; each++)
            {
                Set(column, each, mark);
            }

            for (int each = to + 1; each < _cells.Length; each++)
            {
                Set(column, each, under);
            }

            last = row;
            if (at >= x[^1])
            {
                break;
            }
        }
    }

    /// <summary>Draws a level across, wherever the line itself is not.</summary>
    public void Level(double y, char mark)
    {
        if (y > _maxY)
        {
            return;
        }

        for (int column = 0; column < _cells[0].Length; column++)
        {
            SetBehind(column, Row(y), mark);
        }
    }

    /// <summary>Draws an upright line, wherever the line itself is not.</summary>
    public void Upright(double x, char mark)
    {
        if (x > _maxX)
        {
            return;
        }

        for (int row = 0; row < _cells.Length; row++)
        {
            SetBehind(Column(x), row, mark);
        }
    }

    /// <summary>Marks one point, over everything drawn before.</summary>
    public void Mark(double x, double y, char mark) => Set(Column(x), Row(y), mark);

    /// <summary>Writes the chart with its axes.</summary>
    public void Write(TextWriter writer, string unit)
    {
        for (int row = 0; row < _cells.Length; row++)
        {
            double value = _maxY * (_cells.Length - 1 - row) / (_cells.Length - 1);
            string label = row == 0 || row == _cells.Length - 1 || row == (_cells.Length - 1) / 2 ? Figures.Stated(value, unit) : "";
            writer.WriteLine($"{label.PadLeft(Margin)} │{new string(_cells[row]).TrimEnd()}");
        }

        int columns = _cells[0].Length;
        string half = Figures.Stated(_maxX / 2, "V");
        string full = Figures.Stated(_maxX, "V");
        writer.WriteLine($"{new string(' ', Margin)} └{new string('─', columns)}");
        string axis = "0".PadRight((columns / 2) - (half.Length / 2)) + half;
        writer.WriteLine($"{new string(' ', Margin + 2)}{axis}{full.PadLeft(columns - axis.Length)}");
    }

    private int Column(double x) => Math.Clamp((int)Math.Round(x / _maxX * (_cells[0].Length - 1)), 0, _cells[0].Length - 1);

    private int Row(double y) => Math.Clamp(_cells.Length - 1 - (int)Math.Round(y / _maxY * (_cells.Length - 1)), 0, _cells.Length - 1);

    private void Set(int column, int row, char mark) => _cells[row][column] = mark;

    private void SetBehind(int column, int row, char mark)
    {
        if (_cells[row][column] != _line)
        {
            _cells[row][column] = mark;
        }
    }
}
