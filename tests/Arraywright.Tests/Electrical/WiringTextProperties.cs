using Arraywright.Electrical;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Electrical;

public sealed class WiringTextProperties
{
    [Fact]
    public void What_is_printed_reads_back_to_the_canonical_form() => Gens.Wiring.Sample(wiring =>
        WiringText.TryParse(WiringText.Print(wiring), out Wiring? read, out _) && read == WiringText.Canonical(wiring));

    [Fact]
    public void Printing_twice_changes_nothing() => Gens.Wiring.Sample(wiring =>
    {
        string printed = WiringText.Print(wiring);
        return WiringText.TryParse(printed, out Wiring? read, out _) && WiringText.Print(read) == printed;
    });

    [Fact]
    public void The_order_of_parts_does_not_matter() => Gens.ShuffledWiring.Sample(pair =>
        WiringText.Print(pair.Wiring) == WiringText.Print(pair.Shuffled)
        && WiringText.Canonical(pair.Wiring) == WiringText.Canonical(pair.Shuffled));

    [Fact]
    public void The_canonical_form_keeps_every_panel() => Gens.Wiring.Sample(wiring =>
        wiring.Panels.Order(StringComparer.Ordinal).SequenceEqual(WiringText.Canonical(wiring).Panels.Order(StringComparer.Ordinal)));

    [Fact]
    public void The_canonical_form_nests_no_joining_in_its_like() => Gens.Wiring.Sample(wiring =>
        AlternatesAndSorts(WiringText.Canonical(wiring)));

    [Fact]
    public void The_canonical_form_is_the_same_circuit() => Gens.Wiring.Sample(wiring =>
        Math.Abs(Ohm(wiring) - Ohm(WiringText.Canonical(wiring))) < 1e-9 * Ohm(wiring));

    [Fact]
    public void Any_text_is_read_or_faulted_within_its_bounds() => Gen.String.Sample(IsReadOrFaulted);

    [Fact]
    public void Any_mixture_of_signs_is_read_or_faulted_within_its_bounds() =>
        Gen.OneOf("a", "b7", "3", "3*", "4096*", "+", "|", "(", ")", " ", "*", "-", "\n", ".", "é", "\ud83d")
            .Array[0, 30].Select(string.Concat).Sample(IsReadOrFaulted, iter: 20_000);

    [Fact]
    public void A_wiring_with_one_character_changed_is_read_or_faulted() =>
        Gen.Select(Gens.Wiring, Gen.Double.Unit, Gen.Char).Sample((wiring, where, character) =>
        {
            char[] text = WiringText.Print(wiring).ToCharArray();
            text[(int)(where * (text.Length - 1))] = character;
            return IsReadOrFaulted(new string(text));
        });

    private static bool IsReadOrFaulted(string text) => WiringText.TryParse(text, out Wiring? wiring, out WiringTextFault? fault)
        ? fault is null && wiring.Panels.Count() <= WiringText.MostPanels && WiringText.Canonical(wiring) == wiring
        : wiring is null && fault.Position >= 0 && fault.Position <= text.Length && fault.Found.Length > 0 && fault.Expected.Length > 0;

    private static bool AlternatesAndSorts(Wiring wiring) => wiring switch
    {
        Wiring.Series series => series.Parts.Length > 1 && series.Parts.All(part => part is not Wiring.Series && AlternatesAndSorts(part)),
        Wiring.Parallel parallel => parallel.Parts.Length > 1 && parallel.Parts.All(part => part is not Wiring.Parallel && AlternatesAndSorts(part)),
        _ => true,
    };

    /// <summary>The resistance of the tree if each kind of panel were a resistor of its own value, Ω: an independent witness of the circuit.</summary>
    private static double Ohm(Wiring wiring) => wiring switch
    {
        Wiring.Single single => 1 + Array.IndexOf(Gens.PanelNames, single.Panel),
        Wiring.Series series => series.Parts.Sum(Ohm),
        Wiring.Parallel parallel => 1 / parallel.Parts.Sum(part => 1 / Ohm(part)),
        _ => throw new InvalidOperationException("A wiring is a panel, a series or a parallel."),
    };
}
