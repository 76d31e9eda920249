namespace Arraywright.Page.Shell;

/// <summary>The screens, by the name they have in the address.</summary>
internal static class Screen
{
    public const string Start = "start", Plan = "plan", Try = "try", Sun = "sun", Build = "build", File = "file";

    /// <summary>In the order of the menu, with their English names.</summary>
    public static IReadOnlyList<(string Name, string Title)> All { get; } =
        [(Start, "Start"), (Plan, "Plan"), (Try, "Try by hand"), (Sun, "Sun"), (Build, "Build"), (File, "File")];
}
