using Arraywright.Electrical;
using Arraywright.Gear;
using CsCheck;

namespace Arraywright.Tests.Electrical;

/// <summary>Random labels.</summary>
internal static class Labels
{
    /// <summary>Any that a panel might carry: 3 to 250 V, 0.1 to 20 A, fill factor 0.45 to 0.86, Vmp/Voc 0.6 to 0.9, Imp/Isc 0.6 to 0.98, −0.2 to −0.45 %/K.</summary>
    public static readonly Gen<LabelPoints> Plausible =
        from vocV in Gen.Double[3, 250]
        from iscA in Gen.Double[0.1, 20]
        from fillFactor in Gen.Double[0.45, 0.86]
        from voltageShare in Gen.Double[Math.Max(0.6, fillFactor / 0.98), Math.Min(0.9, fillFactor / 0.6)]
        from vocPercentPerK in Gen.Double[-0.45, -0.2]
        from iscPercentPerK in Gen.Double[0, 0.1]
        from technology in Gen.Enum<Technology>()
        let cells = Math.Max(1, (int)(vocV / 0.7))
        select new LabelPoints(
            iscA, vocV, voltageShare * vocV, fillFactor / voltageShare * iscA, vocPercentPerK / 100 * vocV, iscPercentPerK / 100 * iscA, cells, technology);

    /// <summary>Any that describes a panel at all, sensible or not.</summary>
    public static readonly Gen<LabelPoints> Possible =
        from vocV in Gen.Double[0.01, 2000]
        from iscA in Gen.Double[0.001, 2000]
        from voltageShare in Gen.Double[1e-6, 1 - 1e-6]
        from currentShare in Gen.Double[1e-6, 1 - 1e-6]
        from vocPercentPerK in Gen.Double[-5, 2]
        from iscPercentPerK in Gen.Double[-1, 1]
        from technology in Gen.Enum<Technology>()
        select new LabelPoints(
            iscA, vocV, voltageShare * vocV, currentShare * iscA, vocPercentPerK / 100 * vocV, iscPercentPerK / 100 * iscA, 1, technology);

    /// <summary>The whole range of conditions the model is made for.</summary>
    public static readonly Gen<Conditions> Conditions =
        Gen.Select(Gen.Double[0, 1500], Gen.Double[-60, 110], (irradiance, cellC) => new Conditions(irradiance, cellC));
}
