namespace Arraywright.Gear;

/// <summary>What panels of one technology are like: a typical figure to fill a gap with, the usual range outside which one asks, and the possible range outside which one refuses.</summary>
/// <remarks>
/// Typical coefficients are the middle of datasheet ranges, from memory (no published table): open-circuit voltage PERC −0.26 to −0.30 %/K,
/// multicrystalline and older mono −0.30 to −0.36, TOPCon −0.24 to −0.27, heterojunction −0.22 to −0.26, back contact −0.22 to −0.27,
/// CdTe −0.24 to −0.28, CIGS −0.26 to −0.32, a-Si −0.28 to −0.36; short-circuit current +0.03 to +0.06, CIGS from +0.01, a-Si to +0.10.
/// The usual ranges are wider on purpose, so that no genuine label is questioned: they hold the labels of every decade, from memory too.
/// The possible ranges are common knowledge of the trade: what cells of the technology have never done in a product.
/// Coefficients are fractions (1/K).
/// </remarks>
internal sealed record TypicalFigures
{
    /// <summary>Name in a sentence.</summary>
    public required string Name { get; init; }

    /// <summary>Typical change of open-circuit voltage, 1/K, and the usual range.</summary>
    public required (double Typical, Band Usual) OpenCircuitPerK { get; init; }

    /// <summary>Typical change of short-circuit current, 1/K, and the usual range.</summary>
    public required (double Typical, Band Usual) ShortCircuitPerK { get; init; }

    /// <summary>Usual change of power, 1/K.</summary>
    public required Band UsualPowerPerK { get; init; }

    /// <summary>Open-circuit voltage of one cell, V: typical; where one of the customary cell counts should land, null where there are none; usual; possible.</summary>
    public required (double Typical, Band? Likely, Band Usual, Band Possible) CellV { get; init; }

    /// <summary>Voltage at maximum power over open-circuit voltage, usual.</summary>
    public required Band UsualVoltageRatio { get; init; }

    /// <summary>Current at maximum power over short-circuit current, usual.</summary>
    public required Band UsualCurrentRatio { get; init; }

    /// <summary>Maximum power over Voc × Isc: usual, possible.</summary>
    public required (Band Usual, Band Possible) FillFactor { get; init; }

    /// <summary>Of what the fill factor lacks to 1, the share that lies in the voltage: 1 − Vmp/Voc = share × (1 − fill factor).</summary>
    public required double VoltageShare { get; init; }

    /// <summary>True for films on glass or foil, which behave unlike crystalline panels in heat and come without their bypass diodes.</summary>
    public bool IsThinFilm { get; init; }

    /// <summary>The figures of a technology.</summary>
    public static TypicalFigures Of(Technology technology) => technology switch
    {
        Technology.MonoPerc => Crystalline("PERC") with
        {
            OpenCircuitPerK = (-0.0028, new(-0.0040, -0.0022)),
            CellV = (0.675, new(0.62, 0.72), new(0.59, 0.74), CrystallineCellV),
        },
        Technology.Multicrystalline => Crystalline("multicrystalline") with
        {
            OpenCircuitPerK = (-0.0033, new(-0.0042, -0.0024)),
            CellV = (0.615, new(0.58, 0.66), new(0.54, 0.70), CrystallineCellV),
        },
        Technology.TopCon => Crystalline("TOPCon") with
        {
            OpenCircuitPerK = (-0.00255, new(-0.0035, -0.0020)),
            ShortCircuitPerK = (0.00045, CrystallineShortCircuitPerK),
            CellV = (0.715, new(0.68, 0.75), new(0.64, 0.77), CrystallineCellV),
        },
        Technology.Heterojunction => Crystalline("heterojunction") with
        {
            OpenCircuitPerK = (-0.0024, new(-0.0035, -0.0018)),
            ShortCircuitPerK = (0.0004, CrystallineShortCircuitPerK),
            CellV = (0.735, new(0.70, 0.76), new(0.66, 0.78), CrystallineCellV),
        },
        Technology.BackContact => Crystalline("back-contact") with
        {
            OpenCircuitPerK = (-0.00245, new(-0.0036, -0.0018)),
            ShortCircuitPerK = (0.0004, CrystallineShortCircuitPerK),
            CellV = (0.70, new(0.66, 0.75), new(0.62, 0.77), CrystallineCellV),
        },
        Technology.CadmiumTelluride => CadmiumTelluride,
        Technology.Cigs => Cigs,
        Technology.AmorphousSilicon => AmorphousSilicon,
        _ => Crystalline("crystalline silicon"),
    };

    private static Band CrystallineCellV => new(0.45, 0.80);

    private static Band CrystallineShortCircuitPerK => new(0.0001, 0.0010);

    /// <summary>Crystalline silicon of a kind not stated; the named kinds differ from it in a few figures.</summary>
    private static TypicalFigures Crystalline(string name) => new()
    {
        Name = name,
        OpenCircuitPerK = (-0.0031, new(-0.0042, -0.0018)),
        ShortCircuitPerK = (0.0005, CrystallineShortCircuitPerK),
        UsualPowerPerK = new(-0.0055, -0.0022),
        CellV = (0.65, new(0.59, 0.73), new(0.54, 0.78), CrystallineCellV),
        UsualVoltageRatio = new(0.74, 0.89),
        UsualCurrentRatio = new(0.85, 0.985),
        FillFactor = (new(0.67, 0.86), new(0.45, 0.88)),
        VoltageShare = 0.79,
    };

    private static TypicalFigures CadmiumTelluride => new()
    {
        Name = "cadmium telluride",
        OpenCircuitPerK = (-0.0026, new(-0.0036, -0.0018)),
        ShortCircuitPerK = (0.0004, new(0, 0.0010)),
        UsualPowerPerK = new(-0.0042, -0.0020),
        CellV = (0.83, null, new(0.70, 0.95), new(0.50, 1.10)),
        UsualVoltageRatio = new(0.68, 0.88),
        UsualCurrentRatio = new(0.80, 0.97),
        FillFactor = (new(0.56, 0.82), new(0.40, 0.86)),
        VoltageShare = 0.70,
        IsThinFilm = true,
    };

    private static TypicalFigures Cigs => new()
    {
        Name = "CIGS",
        OpenCircuitPerK = (-0.0029, new(-0.0042, -0.0020)),
        ShortCircuitPerK = (0.00025, new(0, 0.0008)),
        UsualPowerPerK = new(-0.0055, -0.0022),
        CellV = (0.63, null, new(0.46, 0.78), new(0.35, 0.90)),
        UsualVoltageRatio = new(0.66, 0.87),
        UsualCurrentRatio = new(0.78, 0.97),
        FillFactor = (new(0.53, 0.80), new(0.40, 0.84)),
        VoltageShare = 0.70,
        IsThinFilm = true,
    };

    /// <summary>One to three junctions in each cell, so that a cell has 0.8 to 2.4 V.</summary>
    private static TypicalFigures AmorphousSilicon => new()
    {
        Name = "amorphous silicon",
        OpenCircuitPerK = (-0.0032, new(-0.0046, -0.0020)),
        ShortCircuitPerK = (0.0008, new(0, 0.0015)),
        UsualPowerPerK = new(-0.0042, -0.0012),
        CellV = (0.87, null, new(0.75, 2.45), new(0.50, 2.80)),
        UsualVoltageRatio = new(0.60, 0.84),
        UsualCurrentRatio = new(0.72, 0.93),
        FillFactor = (new(0.47, 0.75), new(0.35, 0.80)),
        VoltageShare = 0.68,
        IsThinFilm = true,
    };
}
