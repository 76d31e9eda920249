namespace Arraywright.Presentation.Drawing;

/// <summary>Something in a row of an arrangement: its plus lead comes out on the left, its minus lead on the right, both at the same height.</summary>
internal abstract class ArrangementItem
{
    /// <summary>From its top down to its leads: room for the number of a joint above them.</summary>
    public const double LeadsPx = 27;

    /// <summary>Its width.</summary>
    public abstract double WidthPx { get; }

    /// <summary>Its height.</summary>
    public abstract double HeightPx { get; }

    /// <summary>Its lead on the left.</summary>
    public virtual Pen Left => Pen.Plus;

    /// <summary>Its lead on the right.</summary>
    public virtual Pen Right => Pen.Minus;

    /// <summary>Draws it with its upper left corner at a place.</summary>
    public abstract void Draw(Sketch sketch, double xPx, double topPx);
}
