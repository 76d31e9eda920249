using Arraywright.Files.Drafts;

namespace Arraywright.Page.Forms;

/// <summary>Names for what is new in a plan: every name in it differs.</summary>
internal static class NewName
{
    private static readonly string[] NamedLists = ["panels", "candidates", "inputs", "units"];

    /// <summary>The first free name of a kind: "panel-1", "panel-2".</summary>
    public static string Of(PlanDraft draft, string kind)
    {
        HashSet<string> taken = [.. NamedLists
            .SelectMany(list => Enumerable.Range(0, draft.Count(list)).Select(i => draft[$"{list}/{i}/name"] ?? "")).Select(name => name.ToUpperInvariant())];
        int number = 1;
        while (taken.Contains($"{kind}-{number}".ToUpperInvariant()))
        {
            number++;
        }

        return $"{kind}-{number}";
    }
}
