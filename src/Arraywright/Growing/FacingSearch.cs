namespace Arraywright.Growing;

/// <summary>Finds the best facing to 1° of tilt and 2° of azimuth.</summary>
/// <remarks>
/// The whole sky is looked at in steps of 15° and 30° on a few days; from the best of these, steps are halved on the same days, and the best
/// then walks on over all days until no neighbour is better. Tilts and azimuths of the search are whole degrees, so that equal runs are shared.
/// </remarks>
internal static class FacingSearch
{
    private const int CoarseTiltDeg = 15;
    private const int CoarseAzimuthDeg = 30;
    private const int Starts = 3;

    /// <summary>The best facing; null where it makes no difference.</summary>
    /// <param name="exact">All days.</param>
    /// <param name="few">A few of them.</param>
    public static Facing? Best(FacingRuns exact, FacingRuns few)
    {
        List<Facing> sky = [few.Of(0, 0)];
        for (int tilt = CoarseTiltDeg; tilt <= 90; tilt += CoarseTiltDeg)
        {
            for (int azimuth = 0; azimuth < 360; azimuth += CoarseAzimuthDeg)
            {
                sky.Add(few.Of(tilt, azimuth));
            }
        }

        if (IsLevel(sky))
        {
            return null;
        }

        Facing start = sky.OrderByDescending(facing => facing.DeliveredKWh).Take(Starts)
            .Select(facing => Climb(few, facing, 8))
            .MaxBy(facing => facing.DeliveredKWh)!;
        return Climb(exact, exact.Of(start.TiltDeg, start.AzimuthDeg), 2);
    }

    /// <summary>The best tilt facing one way; null where it makes no difference.</summary>
    public static Facing? BestTilt(FacingRuns exact, FacingRuns few, double azimuthDeg)
    {
        Facing[] line = [.. Enumerable.Range(0, (90 / CoarseTiltDeg) + 1).Select(i => few.Of(i * CoarseTiltDeg, azimuthDeg))];
        if (IsLevel(line))
        {
            return null;
        }

        Facing start = Climb(few, line.MaxBy(facing => facing.DeliveredKWh)!, 8, turns: false);
        return Climb(exact, exact.Of(start.TiltDeg, azimuthDeg), 2, turns: false);
    }

    private static bool IsLevel(IEnumerable<Facing> facings) =>
        !(facings.Max(facing => facing.DeliveredKWh) > facings.Min(facing => facing.DeliveredKWh) * (1 + 1e-9));

    /// <summary>Goes to the best neighbour as long as one is better, then halves the step, down to 1° and 2°.</summary>
    private static Facing Climb(FacingRuns runs, Facing from, int stepDeg, bool turns = true)
    {
        Facing best = from;
        while (stepDeg >= 1)
        {
            Facing next = Neighbours(best, stepDeg, turns).Select(at => runs.Of(at.TiltDeg, at.AzimuthDeg)).MaxBy(facing => facing.DeliveredKWh)!;
            if (next.DeliveredKWh > best.DeliveredKWh)
            {
                best = next;
            }
            else
            {
                stepDeg /= 2;
            }
        }

        return best;
    }

    private static IEnumerable<(double TiltDeg, double AzimuthDeg)> Neighbours(Facing at, int stepDeg, bool turns)
    {
        for (int up = -1; up <= 1; up++)
        {
            for (int side = turns ? -1 : 0; side <= (turns ? 1 : 0); side++)
            {
                if (up != 0 || side != 0)
                {
                    yield return (Math.Clamp(at.TiltDeg + (up * stepDeg), 0, 90), (at.AzimuthDeg + (2 * side * stepDeg) + 360) % 360);
                }
            }
        }
    }
}
