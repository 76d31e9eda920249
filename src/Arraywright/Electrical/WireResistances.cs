using Arraywright.Gear;

namespace Arraywright.Electrical;

/// <summary>The resistance of the copper and the contacts of one input's array.</summary>
/// <param name="RunOhm">Run from the array to the input, there and back, Ω.</param>
/// <param name="StringOhm">Own run of each string to the point where strings join, Ω.</param>
/// <param name="ContactOhm">One mated connector, Ω: one a panel, one more a branch of a parallel, one more at the input.</param>
public readonly record struct WireResistances(double RunOhm, double StringOhm, double ContactOhm)
{
    /// <summary>No resistance at all.</summary>
    public static WireResistances None { get; } = new(0, 0, 0);

    /// <summary>The resistances of a cable.</summary>
    public static WireResistances Of(Cable cable) => new(cable.RunOhm, cable.StringRunOhm, cable.ContactOhm.Value);
}
