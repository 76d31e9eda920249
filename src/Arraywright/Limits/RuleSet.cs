namespace Arraywright.Limits;

/// <summary>After whose rules conductors, fuses and connectors are chosen.</summary>
public enum RuleSet
{
    /// <summary>NFPA 70 (NEC): article 690, 240.6, Tables 310.16 and 310.17, chapter 9 Table 8.</summary>
    Us,

    /// <summary>IEC 60364-7-712 and IEC 62548, with IEC 60228 and EN 50618 for the cable.</summary>
    Iec,
}
