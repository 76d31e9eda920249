namespace Arraywright;

/// <summary>Work done side by side where there are threads. Its pieces touch nothing of each other, so that no result depends on how many there are.</summary>
internal static class Threads
{
    /// <summary>Whether there are any: a browser's program has but one.</summary>
    public static bool AreMany => !OperatingSystem.IsBrowser();

    /// <summary>Does each piece of a work.</summary>
    /// <param name="pieces">How many.</param>
    /// <param name="work">Does one, by its number.</param>
    public static void ForAll(int pieces, Action<int> work)
    {
        if (pieces == 1 || !AreMany)
        {
            for (int i = 0; i < pieces; i++)
            {
                work(i);
            }
        }
        else
        {
            Parallel.For(0, pieces, work);
        }
    }
}
