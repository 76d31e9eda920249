using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;
using Arraywright.Gear;

namespace Arraywright.Files.Writing;

/// <summary>Owned and priced parts as the plan file has them.</summary>
internal static class PartsWriting
{
    public static void Write(YamlLines lines, OwnedPart owned)
    {
        WriteType(lines, owned.Type);
        bool isCable = owned.Type.Kind == PartKind.Cable;
        lines.Add(PartKeys.Count, isCable ? null : owned.Count.ToString());
        lines.Add(PartKeys.Length, isCable ? Figures.Of(owned.LengthM, PartKeys.Length) : null);
    }

    public static void Write(YamlLines lines, PartPrice price, string? currency)
    {
        WriteType(lines, price.Type);
        lines.Add(PartKeys.Price, $"{Decimals.Shifted(price.Price, 0)} {currency}");
    }

    private static void WriteType(YamlLines lines, PartType type)
    {
        lines.Add(PartKeys.Part, PartKeys.Part.Options[(int)type.Kind]);
        lines.Add(PartKeys.Size, Figures.Of(type.AreaMm2, PartKeys.Size));
        lines.Add(PartKeys.Ways, type.Ways?.ToString());
        lines.Add(PartKeys.Rating, Figures.Of(type.RatingA, PartKeys.Rating));
    }
}
