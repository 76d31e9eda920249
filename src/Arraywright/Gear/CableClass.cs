namespace Arraywright.Gear;

/// <summary>How a cable is made.</summary>
public enum CableClass
{
    /// <summary>Fine tinned strands, for panel leads and portable arrays: solar cable after EN 50618, IEC 60228 class 5.</summary>
    Flexible,

    /// <summary>Few plain strands, for fixed wiring: IEC 60228 class 2.</summary>
    Fixed,
}

/// <summary>Where a cable lies.</summary>
public enum Laying
{
    /// <summary>In free air, apart from its pair.</summary>
    FreeAir,

    /// <summary>On the ground, a wall or a roof, plus and minus touching.</summary>
    Surface,

    /// <summary>In a conduit or trunking.</summary>
    Conduit,
}
