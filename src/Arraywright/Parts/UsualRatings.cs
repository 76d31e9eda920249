namespace Arraywright.Parts;

/// <summary>Ratings that parts usually have. All common practice, none a promise: what is printed on the part counts.</summary>
internal static class UsualRatings
{
    /// <summary>A single-pole locking connector on 4 mm² or 12 AWG, and a branch connector's output, A.</summary>
    public const double ConnectorA = 30;

    /// <summary>The weakest plug in use, a barrel plug of 5.5 × 2.1 mm, A.</summary>
    public const double WeakestSocketA = 5;

    /// <summary>Copper of the leads that panels come with, mm².</summary>
    public const double LeadMm2 = 4;

    /// <summary>Sockets of units by the current they usually bear.</summary>
    public const string Sockets = "barrel plug 5.5 mm: 5 to 8 A, 8 mm: 8 to 10 A; two-pole keyed bullet plug of the 30 A class: 15 to 20 A, of the 60 A class: 30 A; genderless 50 A block: 50 A";

    /// <summary>Connectors by the current they usually bear.</summary>
    public const string Connectors = "on 2.5 mm² or 14 AWG: 20 to 25 A; on 4 mm² or 12 AWG: 30 A; on 10 mm² or 8 AWG: 50 to 70 A; older moulded branch connectors: 15 to 20 A";

    /// <summary>Volts for direct current by which connectors, fuses and switches are sold: generations of solar gear (IEC 62852 up to 1500 V), V.</summary>
    private static ReadOnlySpan<double> Volts => [600, 1000, 1500];

    /// <summary>Amps by which direct-current switches are sold, A.</summary>
    private static ReadOnlySpan<double> SwitchesA => [16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250];

    /// <summary>The lowest usual rating in volts that is enough; null above all.</summary>
    public static double? ForV(double voltageV) => Smallest(Volts, voltageV);

    /// <summary>The smallest usual switch that is enough; null above all.</summary>
    public static double? SwitchForA(double currentA) => Smallest(SwitchesA, currentA);

    private static double? Smallest(ReadOnlySpan<double> ratings, double needed)
    {
        foreach (double rating in ratings)
        {
            if (rating >= needed)
            {
                return rating;
            }
        }

        return null;
    }
}
