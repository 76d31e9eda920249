using Arraywright.Files.Keys;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;

namespace Arraywright.Files.Plans;

/// <summary>Says what is wrong with a key that does not belong where it stands.</summary>
internal static class UnknownKey
{
    /// <returns>The key that was probably meant; null when none is near.</returns>
    public static string? Add(YamlScalar key, PlanSection section, FaultList faults)
    {
        if (faults.IsFull)
        {
            return null;
        }

        string[] known = [.. section.Keys.Select(static candidate => candidate.Name)];
        string? near = Nearest.Of(key.Text, known);
        string hint = near is not null ? $"did you mean \"{near}\"?"
            : Elsewhere(key.Text, section) is { } other ? $"\"{key.Text}\" belongs to {other.Title}"
            : $"the keys here are {string.Join(", ", known)}";
        faults.Add(key, $"the unknown key {Quoted.Text(key.Text)}", $"a key of {section.Title}", hint);
        return near;
    }

    private static PlanSection? Elsewhere(string name, PlanSection here)
    {
        foreach (PlanSection section in RootKeys.All)
        {
            if (section != here && section.Find(name) is not null)
            {
                return section;
            }
        }

        return null;
    }
}
