namespace Arraywright.Energy;

/// <summary>Points in groups of least squares: always the same groups for the same points.</summary>
/// <remarks>
/// The group with the greatest sum of squares is split in two where least is left, until there are enough; the rounds of S. P. Lloyd, IEEE Transactions on
/// Information Theory 28 (1982) 129, then move each point to the nearest mean.
/// </remarks>
internal static class Partition
{
    private const int Rounds = 12;

    /// <summary>Group of each point, 0 to below <paramref name="most"/>; a group may be empty.</summary>
    /// <param name="coordinates">One array a coordinate, one entry a point.</param>
    /// <param name="most">Groups at most, 1 or more.</param>
    public static int[] Of(double[][] coordinates, int most)
    {
        int points = coordinates[0].Length;
        int[] group = new int[points];
        int[] order = new int[points];
        for (int i = 0; i < points; i++)
        {
            order[i] = i;
        }

        var parts = new List<Part>(most);
        if (points > 0)
        {
            parts.Add(Part.Of(coordinates, order, 0, points));
        }

        double[] keys = new double[points];
        while (parts.Count < most && Worst(parts) is var worst and >= 0)
        {
            (int from, int to) = (parts[worst].From, parts[worst].To);
            int cut = Cut(coordinates[parts[worst].Widest], order, keys, from, to);
            parts[worst] = Part.Of(coordinates, order, from, cut);
            parts.Add(Part.Of(coordinates, order, cut, to));
        }

        for (int part = 0; part < parts.Count; part++)
        {
            for (int at = parts[part].From; at < parts[part].To; at++)
            {
                group[order[at]] = part;
            }
        }

        MoveToNearest(coordinates, group, parts.Count);
        return group;
    }

    private static int Worst(List<Part> parts)
    {
        int worst = -1;
        double most = 0;
        for (int part = 0; part < parts.Count; part++)
        {
            if (parts[part].SumOfSquares > most)
            {
                (worst, most) = (part, parts[part].SumOfSquares);
            }
        }

        return worst;
    }

    /// <summary>Sorts a part by a coordinate and returns where to cut it in two with the least sum of squares in that coordinate.</summary>
    private static int Cut(double[] coordinate, int[] order, double[] keys, int from, int to)
    {
        double sum = 0;
        for (int at = from; at < to; at++)
        {
            keys[at] = coordinate[order[at]];
            sum += keys[at];
        }

        Array.Sort(keys, order, from, to - from);
        double mean = sum / (to - from);
        double below = 0;
        double best = -1;
        int cut = from + 1;
        for (int at = from; at < to - 1; at++)
        {
            below += keys[at] - mean;
            int count = at + 1 - from;
            double between = below * below / count / (to - from - count);
            if (between > best)
            {
                (best, cut) = (between, at + 1);
            }
        }

        return cut;
    }

    private static void MoveToNearest(double[][] coordinates, int[] group, int groups)
    {
        double[] means = new double[groups * coordinates.Length];
        double[] point = new double[coordinates.Length];
        bool moved = true;
        for (int round = 0; round < Rounds && moved; round++)
        {
            Means(coordinates, group, means);
            moved = false;
            for (int i = 0; i < group.Length; i++)
            {
                for (int axis = 0; axis < point.Length; axis++)
                {
                    point[axis] = coordinates[axis][i];
                }

                int nearest = Nearest(point, means, group[i]);
                moved |= nearest != group[i];
                group[i] = nearest;
            }
        }
    }

    private static int Nearest(double[] point, double[] means, int group)
    {
        double least = Distance(point, means, group * point.Length, double.PositiveInfinity);
        int nearest = group;
        for (int other = 0; other * point.Length < means.Length; other++)
        {
            double distance = Distance(point, means, other * point.Length, least);
            (nearest, least) = distance < least ? (other, distance) : (nearest, least);
        }

        return nearest;
    }

    /// <summary>Squared distance to the mean that begins at an index; anything above a bound is as good as another.</summary>
    private static double Distance(double[] point, double[] means, int at, double bound)
    {
        double sum = 0;
        for (int axis = 0; axis < point.Length && sum < bound; axis++)
        {
            double apart = point[axis] - means[at + axis];
            sum += apart * apart;
        }

        return sum;
    }

    /// <summary>The mean of each group, coordinate after coordinate; of an empty one infinity, which nothing is near.</summary>
    private static void Means(double[][] coordinates, int[] group, double[] means)
    {
        int axes = coordinates.Length;
        int[] counts = new int[means.Length / axes];
        Array.Clear(means);
        for (int i = 0; i < group.Length; i++)
        {
            counts[group[i]]++;
            for (int axis = 0; axis < axes; axis++)
            {
                means[(group[i] * axes) + axis] += coordinates[axis][i];
            }
        }

        for (int at = 0; at < means.Length; at++)
        {
            means[at] = counts[at / axes] > 0 ? means[at] / counts[at / axes] : double.PositiveInfinity;
        }
    }

    /// <summary>Points order[From..To] with their sum of squares about their mean, and the coordinate that has most of it.</summary>
    private readonly record struct Part(int From, int To, double SumOfSquares, int Widest)
    {
        public static Part Of(double[][] coordinates, int[] order, int from, int to)
        {
            double total = 0;
            double most = -1;
            int widest = 0;
            for (int axis = 0; axis < coordinates.Length; axis++)
            {
                double squares = Squares(coordinates[axis], order, from, to);
                total += squares;
                (widest, most) = squares > most ? (axis, squares) : (widest, most);
            }

            return new Part(from, to, total, widest);
        }

        private static double Squares(double[] coordinate, int[] order, int from, int to)
        {
            double sum = 0;
            for (int at = from; at < to; at++)
            {
                sum += coordinate[order[at]];
            }

            double mean = sum / (to - from);
            double squares = 0;
            for (int at = from; at < to; at++)
            {
                double apart = coordinate[order[at]] - mean;
                squares += apart * apart;
            }

            return squares;
        }
    }
}
