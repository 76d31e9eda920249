using Arraywright.Gear;

namespace Arraywright.Presentation.Terminal;

/// <summary>What a person who wires by the picture alone must know of fuses, connectors and sockets.</summary>
public static class PartsWords
{
    /// <summary>Where the string fuses go; empty where none is needed.</summary>
    public static string Fuses(Assignment assignment)
    {
        (double SizeA, int String)[] fuses = [.. Fused(assignment)];
        if (fuses.Length == 0)
        {
            return "";
        }

        return IsAlike(assignment, fuses)
            ? $"A {Size(fuses[0].SizeA)} gPV fuse goes into the + lead of each string."
            : $"gPV fuses go into + leads: {string.Join(", ", fuses.Select(fuse => $"{Size(fuse.SizeA)} into string {fuse.String}"))}.";
    }

    /// <summary>The fuses of a whole design as part of a sentence, ", with a 12 A fuse in each string"; empty where none is needed.</summary>
    public static string WithFuses(Design design)
    {
        Assignment[] fused = [.. design.Assignments.Where(assignment => Fused(assignment).Any())];
        Assignment[] used = [.. design.Assignments.Where(assignment => assignment.Wiring is not null)];
        return fused.Length == 0 ? ""
            : used.Length == 1 && IsAlike(fused[0], [.. Fused(fused[0])]) ? $", with a {Size(Fused(fused[0]).First().SizeA)} fuse in each string"
            : ", with the string fuses drawn";
    }

    /// <summary>What connectors and socket must bear, where no rating of them is stated, so that no rule could judge them; empty where they are judged.</summary>
    public static string MustBear(DcInput input, Assignment assignment)
    {
        string? which = (input.ConnectorA, input.SocketA) switch
        {
            (null, null) => "Connectors, adapter and the unit's socket",
            (null, _) => "Connectors",
            (_, null) => "The unit's socket and its adapter",
            _ => null,
        };
        return which is null || assignment.Wiring is null ? "" : $"{which} must bear {Figures.Of(assignment.IscDesignA, "A")} in strong sun; no rating is stated, so read it on them.";
    }

    private static IEnumerable<(double SizeA, int String)> Fused(Assignment assignment) =>
        assignment.StringFusesA.Select((sizeA, index) => (SizeA: sizeA ?? 0, String: index + 1)).Where(fuse => fuse.SizeA > 0);

    private static bool IsAlike(Assignment assignment, (double SizeA, int String)[] fuses) =>
        fuses.Length == assignment.StringFusesA.Length && fuses.DistinctBy(fuse => fuse.SizeA).Count() == 1;

    private static string Size(double sizeA) => Figures.Stated(sizeA, "A");
}
