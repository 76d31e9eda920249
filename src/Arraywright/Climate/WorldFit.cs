using System.Buffers.Text;

namespace Arraywright.Climate;

/// <summary>The coefficients of the built-in climate, read once from the embedded world-fit.csv.</summary>
/// <remarks>
/// Our own least-squares fit to station values of CRU CL 2.0: New, Lister, Hulme, Makin (2002), "A high-resolution data set of surface climate
/// over global land areas", Climate Research 21:1-25. Reading takes well under a millisecond, and only happens when a plan names a place.
/// </remarks>
internal static class WorldFit
{
    /// <summary>Degree of the harmonics.</summary>
    public const int Degree = 16;

    /// <summary>Functions of a place: the harmonics, then height in km, then height times |sin latitude|.</summary>
    public const int Functions = ((Degree + 1) * (Degree + 1)) + 2;

    /// <summary>Mean, and cosine and sine of one and two cycles a year.</summary>
    private const int Waves = 5;

    private const int Variables = 3;

    private static readonly Lazy<double[]> Coefficients = new(Read);

    /// <summary>The yearly waves of air temperature, daily range and sunshine at a place, five figures each, one variable after the other.</summary>
    public static double[] WavesAt(double latitudeDeg, double longitudeDeg, double elevationM)
    {
        Span<double> functions = stackalloc double[Functions];
        SphericalHarmonics.Fill(Degree, latitudeDeg, longitudeDeg, functions);
        functions[^2] = elevationM / 1000;
        functions[^1] = elevationM / 1000 * Math.Abs(Math.Sin(latitudeDeg * Math.PI / 180));

        double[] coefficients = Coefficients.Value;
        double[] waves = new double[Variables * Waves];
        int next = 0;
        for (int variable = 0; variable < Variables; variable++)
        {
            foreach (double function in functions)
            {
                for (int wave = 0; wave < Waves; wave++)
                {
                    waves[(variable * Waves) + wave] += function * coefficients[next++];
                }
            }
        }

        return waves;
    }

    /// <summary>One of the variables of <see cref="WavesAt"/> in the middle of a month.</summary>
    /// <param name="waves">What <see cref="WavesAt"/> gave.</param>
    /// <param name="variable">0 air temperature, °C; 1 daily range, K; 2 sunshine, %.</param>
    /// <param name="month">1 to 12.</param>
    public static double InMonth(double[] waves, int variable, int month)
    {
        double angle = 2 * Math.PI * (month - 0.5) / 12;
        ReadOnlySpan<double> wave = waves.AsSpan(variable * Waves, Waves);
        return wave[0]
            + (wave[1] * Math.Cos(angle)) + (wave[2] * Math.Sin(angle))
            + (wave[3] * Math.Cos(2 * angle)) + (wave[4] * Math.Sin(2 * angle));
    }

    /// <summary>The last five fields of each line after the header; the lines are in the order that <see cref="WavesAt"/> walks.</summary>
    private static double[] Read()
    {
        using Stream stream = typeof(WorldFit).Assembly.GetManifestResourceStream("world-fit.csv")!;
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);

        double[] coefficients = new double[Variables * Functions * Waves];
        int next = 0;
        ReadOnlySpan<byte> rest = bytes.AsSpan(bytes.AsSpan().IndexOf((byte)'\n') + 1);
        while (next < coefficients.Length)
        {
            for (int label = 0; label < 4; label++)
            {
                rest = rest[(rest.IndexOf((byte)',') + 1)..];
            }

            for (int wave = 0; wave < Waves; wave++)
            {
                _ = Utf8Parser.TryParse(rest, out coefficients[next++], out int length);
                rest = rest[(length + 1)..];
            }
        }

        return coefficients;
    }
}
