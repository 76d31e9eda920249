namespace Arraywright.Sky;

/// <summary>A place as the sun's path needs it.</summary>
public readonly record struct Site
{
    /// <summary>A place with its air.</summary>
    /// <param name="latitudeDeg">Degrees, north positive, −90 to 90.</param>
    /// <param name="longitudeDeg">Degrees, east positive, −180 to 180.</param>
    /// <param name="elevationM">Metres above the sea, −1000 to 9000.</param>
    /// <param name="pressurePa">Air pressure, Pa, for refraction, 0 to 120,000.</param>
    /// <param name="airC">Air temperature, °C, for refraction, −100 to 70.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place on Earth.</exception>
    public Site(double latitudeDeg, double longitudeDeg, double elevationM, double pressurePa, double airC)
    {
        Check(latitudeDeg, -90, 90, nameof(latitudeDeg));
        Check(longitudeDeg, -180, 180, nameof(longitudeDeg));
        Check(elevationM, -1000, 9000, nameof(elevationM));
        Check(pressurePa, 0, 120_000, nameof(pressurePa));
        Check(airC, -100, 70, nameof(airC));
        (LatitudeDeg, LongitudeDeg, ElevationM, PressurePa, AirC) = (latitudeDeg, longitudeDeg, elevationM, pressurePa, airC);
    }

    /// <summary>Degrees, north positive.</summary>
    public double LatitudeDeg { get; }

    /// <summary>Degrees, east positive.</summary>
    public double LongitudeDeg { get; }

    /// <summary>Metres above the sea.</summary>
    public double ElevationM { get; }

    /// <summary>Air pressure, Pa.</summary>
    public double PressurePa { get; }

    /// <summary>Air temperature, °C.</summary>
    public double AirC { get; }

    /// <summary>A place in the standard atmosphere at its height and 12 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place on Earth.</exception>
    public static Site Of(double latitudeDeg, double longitudeDeg, double elevationM) =>
        new(latitudeDeg, longitudeDeg, elevationM, AirMass.StandardPressurePa(Math.Clamp(elevationM, -1000, 9000)), 12);

    private static void Check(double value, double low, double high, string name)
    {
        if (!(value >= low && value <= high))
        {
            throw new ArgumentOutOfRangeException(name, value, $"From {low} to {high}.");
        }
    }
}
