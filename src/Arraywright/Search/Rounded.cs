namespace Arraywright.Search;

/// <summary>Sums of label figures against limits, forgiving as much as the rules forgive: no wiring is refused by the order it is added up in.</summary>
internal static class Rounded
{
    private const double Forgiven = 1e-9;

    /// <summary>The most that a sum may come to and still be at its limit.</summary>
    public static double Most(double limit) => limit * (1 + Forgiven);

    /// <summary>Whether a sum is at most its limit.</summary>
    public static bool Within(double sum, double limit) => sum <= Most(limit);
}
