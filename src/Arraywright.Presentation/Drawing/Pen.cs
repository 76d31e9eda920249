namespace Arraywright.Presentation.Drawing;

/// <summary>What a line or an area is, from which its colour follows.</summary>
public enum Tone
{
    /// <summary>The ordinary ink: black.</summary>
    Ink,

    /// <summary>The ground: white.</summary>
    Paper,

    /// <summary>Leads of plus: vermillion, which prints as a middling grey.</summary>
    Plus,

    /// <summary>Leads of minus: black.</summary>
    Minus,

    /// <summary>A light area: light grey.</summary>
    Shade,

    /// <summary>The body of a branch connector, light grey too: like a wire it may go on from one sheet to the next.</summary>
    Body,
}

/// <summary>How a line is broken. Plus is told from minus by this and by its signs, never by colour alone.</summary>
public enum Dash
{
    /// <summary>Not at all.</summary>
    Solid,

    /// <summary>Long pieces: minus.</summary>
    Long,

    /// <summary>Short pieces: what belongs together without being joined by copper.</summary>
    Short,
}

/// <summary>How a line is drawn.</summary>
/// <param name="Tone">Its colour.</param>
/// <param name="ThicknessPx">Its thickness.</param>
/// <param name="Dash">Its pieces.</param>
public readonly record struct Pen(Tone Tone, double ThicknessPx, Dash Dash)
{
    /// <summary>Thickness of everything that carries current from piece to piece, and of nothing else.</summary>
    public const double WirePx = 2.5;

    /// <summary>The outline of a symbol.</summary>
    public static Pen Outline { get; } = new(Tone.Ink, 1.5, Dash.Solid);

    /// <summary>A hair line.</summary>
    public static Pen Fine { get; } = new(Tone.Ink, 0.75, Dash.Solid);

    /// <summary>What moves or belongs together.</summary>
    public static Pen Together { get; } = new(Tone.Ink, 1, Dash.Short);

    /// <summary>A lead that ends at plus of the array.</summary>
    public static Pen Plus { get; } = new(Tone.Plus, WirePx, Dash.Solid);

    /// <summary>A lead that ends at minus of the array.</summary>
    public static Pen Minus { get; } = new(Tone.Minus, WirePx, Dash.Long);

    /// <summary>A lead within a string, plus at one end and minus at the other.</summary>
    public static Pen Link { get; } = new(Tone.Ink, WirePx, Dash.Solid);

    /// <summary>Lengths of the pieces and gaps, pixels; empty for a whole line.</summary>
    public IReadOnlyList<double> DashesPx => Dash switch
    {
        Dash.Long => [6, 3],
        Dash.Short => [3, 3],
        _ => [],
    };
}
