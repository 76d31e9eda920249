namespace Arraywright.Gear;

/// <summary>What the cells of a panel are made of, as far as it changes a typical figure.</summary>
public enum Technology
{
    /// <summary>Crystalline silicon of a kind not stated.</summary>
    CrystallineSilicon,

    /// <summary>Monocrystalline silicon with passivated rear (PERC).</summary>
    MonoPerc,

    /// <summary>Multicrystalline, or older monocrystalline, silicon.</summary>
    Multicrystalline,

    /// <summary>n-type silicon with tunnel-oxide contacts (TOPCon).</summary>
    TopCon,

    /// <summary>Silicon heterojunction.</summary>
    Heterojunction,

    /// <summary>n-type silicon with all contacts at the back.</summary>
    BackContact,

    /// <summary>Cadmium telluride thin film.</summary>
    CadmiumTelluride,

    /// <summary>Copper indium gallium selenide thin film.</summary>
    Cigs,

    /// <summary>Amorphous silicon thin film, one or more junctions.</summary>
    AmorphousSilicon,
}
