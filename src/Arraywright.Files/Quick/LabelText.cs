using Arraywright.Files.Quantities;
using Arraywright.Files.Text;

namespace Arraywright.Files.Quick;

/// <summary>The figures of a label written in one line, in any order: <c>22.9V 6.72A 18.9V 6.35A</c>.</summary>
internal sealed class LabelText
{
    public List<PlacedFigure> Voltages { get; } = [];

    public List<PlacedFigure> Currents { get; } = [];

    public List<PlacedFigure> Powers { get; } = [];

    /// <summary>A tracking window, which only inputs have.</summary>
    public (double From, double To, int Line, int Column)? Range { get; private set; }

    /// <summary>Reads the figures; each piece that is none is a fault.</summary>
    /// <param name="written">The label.</param>
    /// <param name="allowsRange">True for an input, false for a panel.</param>
    /// <param name="faults">Where the faults go.</param>
    public static LabelText Read(CountedLabel written, bool allowsRange, FaultList faults)
    {
        LabelText label = new();
        foreach ((int start, int length) in Pieces(written.Text))
        {
            (int line, int column) = written.PlaceOf(start);
            label.Add(written.Text.Substring(start, length), line, column, allowsRange, faults);
        }

        return label;
    }

    private void Add(string piece, int line, int column, bool allowsRange, FaultList faults)
    {
        if (allowsRange && RangeText.TryRead(piece, QuantityKinds.Voltage, out double from, out double to, out _))
        {
            if (Range is not null)
            {
                faults.Add(line, column, Quoted.Text(piece), "one range of volts", "a second one stands here");
            }

            Range = (from, to, line, column);
            return;
        }

        string? outOfRange = null;
        foreach ((Quantity quantity, List<PlacedFigure> figures) in new[] { (QuantityKinds.Voltage, Voltages), (QuantityKinds.Current, Currents), (QuantityKinds.Power, Powers) })
        {
            if (QuantityText.TryRead(piece, quantity, out Figure figure, out Misreading misreading))
            {
                figures.Add(new PlacedFigure(figure.Value, line, column, piece));
                return;
            }

            outOfRange ??= misreading.Expected;
        }

        string examples = allowsRange ? "\"50 V\", \"10 A\", \"400 W\" or \"12..45 V\"" : "\"22.9 V\", \"6.72 A\" or \"120 W\"";
        faults.Add(line, column, Quoted.Text(piece), outOfRange ?? $"a figure with its unit such as {examples}", outOfRange is null ? Hint(piece, allowsRange) : null);
    }

    private static string Hint(string piece, bool isInput)
    {
        if (!NumberText.TryScan(piece, out NumberText number))
        {
            return "write only figures; which is which shows by their units, and Voc is the larger voltage";
        }

        return piece.AsSpan(number.Length) switch
        {
            [] when !isInput && piece.All(char.IsAsciiDigit) => $"a bare number could mean anything; add the unit, V, A or W, or write {piece}x for how many",
            [] => "a bare number could mean anything; add the unit, V, A or W",
            [',', >= '0' and <= '9', ..] => "write a decimal point, not a comma",
            _ => "the units are V, A and W",
        };
    }

    /// <summary>Cuts at spaces and separating commas; a unit standing apart from its number stays with it, and so do the ends of a range.</summary>
    private static List<(int Start, int Length)> Pieces(string text)
    {
        List<(int Start, int Length)> pieces = [];
        int at = 0;
        while (at < text.Length)
        {
            if (IsBetween(text, at))
            {
                at++;
                continue;
            }

            int start = at;
            while (at < text.Length && !IsBetween(text, at))
            {
                at++;
            }

            bool joins = pieces.Count > 0 && !char.IsAsciiDigit(text[start]) && text[start] is not ('+' or '-' or '.' or '\u2212')
                && char.IsAsciiDigit(text[pieces[^1].Start + pieces[^1].Length - 1]);
            if (joins)
            {
                pieces[^1] = (pieces[^1].Start, at - pieces[^1].Start);
            }
            else
            {
                pieces.Add((start, at - start));
            }
        }

        return pieces;
    }

    /// <summary>A comma inside a number belongs to it: it is a fault to be shown, not a separator.</summary>
    private static bool IsBetween(string text, int at) => text[at] switch
    {
        ' ' or '\t' or ';' or '/' => true,
        ',' => at == 0 || at + 1 == text.Length || !char.IsAsciiDigit(text[at - 1]) || !char.IsAsciiDigit(text[at + 1]),
        _ => false,
    };
}

/// <summary>A figure with the place it was read from.</summary>
internal readonly record struct PlacedFigure(double Value, int Line, int Column, string Written);
