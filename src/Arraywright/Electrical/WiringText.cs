using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace Arraywright.Electrical;

/// <summary>The written form of a <see cref="Wiring"/>: <c>2*a + (b | c) | 3*d</c>.</summary>
/// <remarks>
/// <c>+</c> joins in series, <c>|</c> in parallel and binds less tightly, <c>3*x</c> is three of the same in series, where x is a panel
/// or a bracket. A name is letters, digits and hyphens and may begin with a digit or be all digits: digits are a count only where a
/// star follows, so <c>3*120</c> is three panels called 120. Spaces and line ends between the signs mean nothing.
/// <para>
/// Order never matters electrically, so every wiring has one canonical form: series within series and parallel within parallel are
/// flattened, and parts are sorted: single panels by name (ordinal), then series, then parallels, each by its parts in turn, the shorter
/// first when one begins like the other. Equal parts therefore stand side by side. Repeated parts of a series print as <c>3*a</c>,
/// repeated branches of a parallel are written out.
/// </para>
/// </remarks>
public static class WiringText
{
    /// <summary>Most panels a written wiring may have.</summary>
    public const int MostPanels = 4096;

    /// <summary>Most brackets that may be open at once.</summary>
    public const int DeepestNesting = 64;

    /// <summary>The same circuit in canonical form; equal for all wirings that differ in order or brackets only.</summary>
    public static Wiring Canonical(Wiring wiring) => wiring switch
    {
        Wiring.Series series => Wiring.InSeries(Sorted<Wiring.Series>(series.Parts, static inner => inner.Parts)),
        Wiring.Parallel parallel => Wiring.InParallel(Sorted<Wiring.Parallel>(parallel.Parts, static inner => inner.Parts)),
        _ => wiring,
    };

    /// <summary>The canonical form in writing. Reads back to <see cref="Canonical"/> as long as its names and size are those of a plan.</summary>
    public static string Print(Wiring wiring)
    {
        StringBuilder text = new();
        Append(text, Canonical(wiring));
        return text.ToString();
    }

    /// <summary>Reads a wiring, in canonical form whatever the order it was written in.</summary>
    /// <param name="text">Any text at all; nothing makes this throw.</param>
    /// <param name="wiring">The wiring; null when the text is not one.</param>
    /// <param name="fault">The first thing that is wrong; null when nothing is. Names are not looked up: an unknown one is no fault here.</param>
    public static bool TryParse(string text, [NotNullWhen(true)] out Wiring? wiring, [NotNullWhen(false)] out WiringTextFault? fault)
    {
        WiringParser parser = new(text);
        wiring = parser.Read() is { } read ? Canonical(read) : null;
        fault = parser.Fault;
        return wiring is not null;
    }

    private static List<Wiring> Sorted<T>(ImmutableArray<Wiring> parts, Func<T, ImmutableArray<Wiring>> partsOf)
        where T : Wiring
    {
        List<Wiring> flat = new(parts.Length);
        foreach (Wiring part in parts)
        {
            Wiring canonical = Canonical(part);
            if (canonical is T same)
            {
                flat.AddRange(partsOf(same));
            }
            else
            {
                flat.Add(canonical);
            }
        }

        flat.Sort(WiringOrder.Compare);
        return flat;
    }

    private static void Append(StringBuilder text, Wiring wiring)
    {
        switch (wiring)
        {
            case Wiring.Single single:
                text.Append(single.Panel);
                break;
            case Wiring.Series series:
                AppendSeries(text, series.Parts);
                break;
            case Wiring.Parallel parallel:
                AppendParallel(text, parallel.Parts);
                break;
        }
    }

    private static void AppendSeries(StringBuilder text, ImmutableArray<Wiring> parts)
    {
        int next;
        for (int i = 0; i < parts.Length; i = next)
        {
            next = i + 1;
            while (next < parts.Length && WiringOrder.Compare(parts[i], parts[next]) == 0)
            {
                next++;
            }

            text.Append(i == 0 ? "" : " + ");
            if (next - i > 1)
            {
                text.Append(next - i).Append('*');
            }

            bool bracketed = parts[i] is Wiring.Parallel;
            text.Append(bracketed ? "(" : "");
            Append(text, parts[i]);
            text.Append(bracketed ? ")" : "");
        }
    }

    private static void AppendParallel(StringBuilder text, ImmutableArray<Wiring> parts)
    {
        for (int i = 0; i < parts.Length; i++)
        {
            text.Append(i == 0 ? "" : " | ");
            Append(text, parts[i]);
        }
    }
}
