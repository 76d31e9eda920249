using Arraywright.Files.Keys;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the copper.</summary>
internal static class CableReader
{
    public static Cable Read(Fields root, List<Assumption> assumed)
    {
        Fields? fields = root.Group(RootKeys.Cable);
        Sourced<double> size = Given(fields, CableKeys.Size) ?? Defaults.CableSize(assumed);
        return new Cable(
            Given(fields, CableKeys.Length) ?? Defaults.CableLength(assumed),
            size,
            Given(fields, CableKeys.StringLength) ?? Defaults.StringLength(assumed),
            Given(fields, CableKeys.StringSize) ?? Defaults.StringSize(size.Value),
            Given(fields, CableKeys.Contact) ?? Defaults.Contact(assumed))
        {
            Class = (CableClass?)fields?.Choice(CableKeys.Class),
            Laying = (Laying?)fields?.Choice(CableKeys.Laying),
            AmbientC = fields?.Figure(CableKeys.Ambient),
            Bundled = fields?.Count(CableKeys.Bundled),
            TerminalC = fields?.Choice(CableKeys.Terminals) is { } mark ? 60 + (15 * mark) : null,
            MaxDropFraction = fields?.Figure(CableKeys.MaxDrop),
            ExtensionLengthM = fields?.Figure(CableKeys.ExtensionLength) ?? 0,
            ExtensionAreaMm2 = fields?.Figure(CableKeys.ExtensionSize),
        };
    }

    private static Sourced<double>? Given(Fields? fields, QuantityKey key) =>
        fields?.Figure(key) is { } figure ? Sourced.Given(figure) : null;
}
