namespace Arraywright.Gear;

/// <summary>The range a figure lies in, ends included.</summary>
internal readonly record struct Band(double Low, double High)
{
    /// <summary>False for a value that is not a number.</summary>
    public bool Holds(double value) => value >= Low && value <= High;
}
