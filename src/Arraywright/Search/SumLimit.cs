namespace Arraywright.Search;

/// <summary>What label amps or watts may add up to at most to be within a limit.</summary>
/// <remarks>
/// Panels are added up here in another order than a rule adds them, so the last bits differ. A sum that is exactly at its limit must not
/// be refused for them: the search forgives as much as the rules do, and the rules have the last word. Volts are forgiven nothing.
/// </remarks>
internal static class SumLimit
{
    private const double Rounding = 1 + 1e-9;

    /// <summary>The most, in the unit of the limit; infinite for an infinite limit.</summary>
    public static double Of(double limit) => limit * Rounding;
}
