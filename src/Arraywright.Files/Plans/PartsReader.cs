using System.Collections.Immutable;
using Arraywright.Files.Keys;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the parts that are owned, and what parts cost.</summary>
internal sealed class PartsReader(CurrencyRegister currency)
{
    public static ImmutableArray<OwnedPart> ReadOwned(Fields root)
    {
        var owned = ImmutableArray.CreateBuilder<OwnedPart>();
        foreach (Fields fields in root.Groups(RootKeys.Owned))
        {
            PartType? type = ReadType(fields);
            int? count = fields.Count(PartKeys.Count);
            double? lengthM = fields.Figure(PartKeys.Length);
            if (type is null)
            {
                continue;
            }

            bool isCable = type.Kind == PartKind.Cable;
            Refuse(fields, isCable ? PartKeys.Count : PartKeys.Length, isCable ? "cable goes by its length" : "only cable has a length");
            if (isCable && !fields.Has(PartKeys.Length))
            {
                fields.Faults.Add(fields.Whole, "cable without \"length\"", $"\"length\", {PartKeys.Length.Expected}", "metres of one conductor at hand");
            }

            owned.Add(new OwnedPart(type, isCable ? 0 : count ?? 1, lengthM ?? 0));
        }

        return owned.ToImmutable();
    }

    public ImmutableArray<PartPrice> ReadPrices(Fields root)
    {
        var prices = ImmutableArray.CreateBuilder<PartPrice>();
        foreach (Fields fields in root.Groups(RootKeys.Prices))
        {
            if (ReadType(fields) is { } type && currency.Read(fields, PartKeys.Price) is { } price)
            {
                prices.Add(new PartPrice(type, price));
            }
        }

        return prices.ToImmutable();
    }

    private static PartType? ReadType(Fields fields)
    {
        PartKind? kind = (PartKind?)fields.Choice(PartKeys.Part);
        double? areaMm2 = fields.Figure(PartKeys.Size);
        int? ways = fields.Count(PartKeys.Ways);
        double? ratingA = fields.Figure(PartKeys.Rating);
        if (kind is null)
        {
            return null;
        }

        RefuseUnless(kind == PartKind.Cable, fields, PartKeys.Size, "only cable has a size");
        RefuseUnless(kind == PartKind.BranchConnector, fields, PartKeys.Ways, "only a branch connector has ways");
        RefuseUnless(kind == PartKind.Fuse, fields, PartKeys.Rating, "only a fuse is told apart by its rating; for a socket write \"socket\" at its input");
        return new PartType(kind.Value, areaMm2, ways, ratingA);
    }

    private static void RefuseUnless(bool fits, Fields fields, PlanKey key, string hint)
    {
        if (!fits)
        {
            Refuse(fields, key, hint);
        }
    }

    private static void Refuse(Fields fields, PlanKey key, string hint)
    {
        if (fields.Has(key))
        {
            fields.Faults.Add(fields.PlaceOf(key), fields.PlaceOf(key).Described, $"no \"{key.Name}\" for this part", hint);
        }
    }
}
