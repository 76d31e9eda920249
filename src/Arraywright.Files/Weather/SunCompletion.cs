using Arraywright.Sky;

namespace Arraywright.Files.Weather;

/// <summary>Works out which of global, beam and diffuse sun a row lacks from those it has.</summary>
/// <remarks>Where only the global is there, its split is after Erbs, Klein and Duffie, Solar Energy 28 (1982) 293.</remarks>
internal static class SunCompletion
{
    /// <summary>Under this mean sine of the sun's elevation beam sun is not divided out: the quotient would be noise.</summary>
    private const double LowestSine = 0.03;

    public static void Complete(List<RawStep> rows, RawWeather raw)
    {
        SunPath? path = null;
        int split = 0, firstSplit = 0, worked = 0, firstWorked = 0;
        for (int i = 0; i < rows.Count; i++)
        {
            RawStep row = rows[i];
            bool hasGlobal = row.GlobalWPerM2.HasValue, hasBeam = row.BeamWPerM2.HasValue, hasDiffuse = row.DiffuseWPerM2.HasValue;
            if (hasGlobal ? hasBeam && hasDiffuse : !(hasBeam && hasDiffuse))
            {
                continue;
            }

            path ??= new SunPath(Site.Of(raw.Place.LatitudeDeg, raw.Place.LongitudeDeg, raw.Place.ElevationM));
            (double sine, double facingW) = SunOver(path, row.Ends, raw);
            bool onlyGlobal = hasGlobal && !hasBeam && !hasDiffuse;
            rows[i] = !hasGlobal ? row with { GlobalWPerM2 = (row.BeamWPerM2 * sine) + row.DiffuseWPerM2 }
                : onlyGlobal ? Split(row, sine, facingW)
                : hasBeam ? row with { DiffuseWPerM2 = Math.Max(0, row.GlobalWPerM2!.Value - (row.BeamWPerM2!.Value * sine)) }
                : row with { BeamWPerM2 = Beam(row.GlobalWPerM2!.Value - row.DiffuseWPerM2!.Value, sine, facingW) };
            if (onlyGlobal)
            {
                firstSplit = split++ == 0 ? row.Line : firstSplit;
            }
            else
            {
                firstWorked = worked++ == 0 ? row.Line : firstWorked;
            }
        }

        raw.Tell(split, "beam and diffuse sun split from the global after Erbs, Klein and Duffie (1982)", firstSplit);
        raw.Tell(worked, "one of global, beam and diffuse sun worked out from the other two", firstWorked);
    }

    private static RawStep Split(in RawStep row, double sine, double facingW)
    {
        double global = row.GlobalWPerM2!.Value;
        if (global <= 0 || sine <= 0)
        {
            return row with { BeamWPerM2 = 0, DiffuseWPerM2 = global };
        }

        double beam = Beam(global * (1 - BeamDiffuseSplit.DiffuseShare(global / (sine * facingW))), sine, facingW);
        return row with { BeamWPerM2 = beam, DiffuseWPerM2 = global - (beam * sine) };
    }

    private static double Beam(double onFlatW, double sine, double facingW) =>
        sine < LowestSine ? 0 : Math.Clamp(onFlatW / sine, 0, 0.85 * facingW);

    /// <summary>Mean sine of the sun's elevation over a step, night taken as 0, and its irradiance outside the air on a plane that faces it.</summary>
    private static (double Sine, double FacingWPerM2) SunOver(SunPath path, DateTime ends, RawWeather raw)
    {
        int parts = Math.Max(1, raw.StepMinutes / 15);
        double begins = SunClock.JulianDay(ends) - ((raw.UtcOffsetH + (raw.StepMinutes / 60.0)) / 24);
        double sum = 0, facingW = 0;
        for (int part = 0; part < parts; part++)
        {
            SunPosition sun = path.At(begins + ((part + 0.5) / parts * raw.StepMinutes / 1440.0));
            sum += Math.Max(0, Math.Sin(sun.GeometricElevationDeg * Math.PI / 180));
            facingW = sun.ExtraterrestrialWPerM2;
        }

        return (sum / parts, facingW);
    }
}
