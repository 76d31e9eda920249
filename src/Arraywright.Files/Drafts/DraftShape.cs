using Arraywright.Files.Keys;

namespace Arraywright.Files.Drafts;

/// <summary>Which keys may stand where, for a draft: the one table of keys, looked up by path.</summary>
internal static class DraftShape
{
    /// <summary>The keys that may stand below a key; null where a value stands.</summary>
    public static PlanSection? Below(PlanKey? key) => key switch
    {
        SectionKey section => section.Section,
        ListKey list => list.Section,
        LimitKey => LimitKeys.Section,
        ShadeKey => ShadeHoursKeys.Section,
        LoadKey => LoadHoursKeys.Section,
        _ => null,
    };

    /// <summary>The key at the end of a path; null where the plan has none such.</summary>
    public static PlanKey? Key(string path)
    {
        PlanSection? section = RootKeys.Section;
        PlanKey? key = null;
        foreach (string step in path.Split('/'))
        {
            if (!IsIndex(step))
            {
                key = section?.Find(step);
                section = Below(key);
            }
        }

        return key;
    }

    /// <summary>Whether a step of a path counts items.</summary>
    public static bool IsIndex(string step) => step.Length > 0 && char.IsAsciiDigit(step[0]);
}
