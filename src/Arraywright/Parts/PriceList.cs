using Arraywright.Gear;

namespace Arraywright.Parts;

/// <summary>What the plan says parts cost, and which of them it says are at hand.</summary>
internal sealed class PriceList(Plan plan)
{
    /// <summary>Sizes this close are the same cable, fraction.</summary>
    private const double Same = 0.005;

    /// <summary>Price of one, or of a metre; null when the plan does not say. A price that says exactly which part goes before one for all of its kind.</summary>
    public double? Of(PartType part) =>
        plan.PartPrices.Where(price => Serves(price.Type, part, isThickerEnough: false)).OrderByDescending(price => Detail(price.Type)).FirstOrDefault()?.Price;

    /// <summary>How many are at hand.</summary>
    public int Owned(PartType part) => plan.Owned.Where(owned => Serves(owned.Type, part, isThickerEnough: true)).Sum(owned => owned.Count);

    /// <summary>How many metres are at hand.</summary>
    public double OwnedM(PartType part) => plan.Owned.Where(owned => Serves(owned.Type, part, isThickerEnough: true)).Sum(owned => owned.LengthM);

    private static bool Serves(PartType offered, PartType wanted, bool isThickerEnough) =>
        offered.Kind == wanted.Kind
        && (offered.Ways is null || offered.Ways == wanted.Ways)
        && (offered.RatingA is null || offered.RatingA == wanted.RatingA)
        && (offered.AreaMm2 is not { } areaMm2 || wanted.AreaMm2 is not { } wantedMm2
            || (areaMm2 >= wantedMm2 * (1 - Same) && (isThickerEnough || areaMm2 <= wantedMm2 * (1 + Same))));

    private static int Detail(PartType type) => (type.AreaMm2 is null ? 0 : 1) + (type.Ways is null ? 0 : 1) + (type.RatingA is null ? 0 : 1);
}
