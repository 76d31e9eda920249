namespace Arraywright.Files.Keys;

/// <summary>Finds what somebody probably meant to type.</summary>
internal static class Nearest
{
    /// <summary>The candidate nearest to <paramref name="typed"/>; null when none is near. Case, hyphens, spaces and underscores do not count.</summary>
    public static string? Of(string typed, IEnumerable<string> candidates)
    {
        // Nobody mistypes fifty letters; a longer text would only cost time.
        if (typed.Length > 50)
        {
            return null;
        }

        string plain = Plain(typed);
        string? best = null;
        int bestDistance = (plain.Length / 3) + 2;
        foreach (string candidate in candidates)
        {
            int distance = Distance(plain, Plain(candidate));
            if (distance < bestDistance && distance < candidate.Length)
            {
                (best, bestDistance) = (candidate, distance);
            }
        }

        return best;
    }

    private static string Plain(string text) =>
        text.ToLowerInvariant().Replace("_", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal);

    /// <summary>Letters to insert, remove, replace or swap with their neighbour (optimal string alignment).</summary>
    private static int Distance(string a, string b)
    {
        int[,] cost = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            for (int j = 0; j <= b.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Least(cost, a, b, i, j);
            }
        }

        return cost[a.Length, b.Length];
    }

    private static int Least(int[,] cost, string a, string b, int i, int j)
    {
        int least = Math.Min(Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1, cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
        return i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] ? Math.Min(least, cost[i - 2, j - 2] + 1) : least;
    }
}
