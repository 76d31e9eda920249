using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Sky;

namespace Arraywright.Files.Weather;

/// <summary>One row as the file has it; null where the file says that a figure is missing.</summary>
internal readonly record struct RawStep(int Line, DateTime Ends, double? GlobalWPerM2, double? BeamWPerM2, double? DiffuseWPerM2, double? AirC, double? WindMPerS);

/// <summary>Turns rows into weather: mends what a stated rule allows, refuses the rest, and tells of both.</summary>
internal sealed class RawWeather(string file, WeatherPlace place, double utcOffsetH, int stepMinutes, string source)
{
    /// <summary>So many steps in a row may be missing and are drawn straight between their neighbours.</summary>
    public const int LongestGap = 3;

    /// <summary>A little under zero is a sensor's offset at night, W/m².</summary>
    private const double SensorOffsetWPerM2 = -20;

    private const int MostFaults = 50;

    private readonly List<Fault> _faults = [];
    private readonly List<string> _repairs = [];
    private List<RawStep> _rows = [];

    public bool IsFull => _faults.Count >= MostFaults;

    /// <summary>Coldest air that the source knows of besides its rows, °C.</summary>
    public double? ColdestKnownC { get; init; }

    /// <summary>The line that tells the place.</summary>
    public int PlaceLine { get; init; } = 1;

    /// <summary>The place of the plan that the weather is for; null where there is no plan.</summary>
    public Place? PlannedAt { get; init; }

    public int StepMinutes => stepMinutes;

    public WeatherPlace Place => place;

    public double UtcOffsetH => utcOffsetH;

    /// <summary>Whether a figure stands for missing, as many programs write it whatever the format.</summary>
    public static bool IsFill(double figure) => figure is -999 or -9999 or -99999;

    public void Refuse(int line, int column, string found, string expected, string? hint = null)
    {
        if (!IsFull)
        {
            _faults.Add(new Fault(file, line, column, found, expected, hint));
        }
    }

    /// <summary>Tells what was mended, if anything was.</summary>
    public void Tell(int count, string what, int? firstLine = null)
    {
        if (count > 0)
        {
            _repairs.Add($"{count} × {what}{(firstLine is { } line ? $" (first in line {line})" : "")}.");
        }
    }

    /// <summary>Tells of something odd that was taken as it stands.</summary>
    public void Tell(string remark) => _repairs.Add(remark);

    public void Add(in RawStep row) => _rows.Add(row);

    public WeatherReading Finished()
    {
        if (PlanPlace.TooFar(place, PlannedAt, file, PlaceLine) is { } far)
        {
            _faults.Add(far);
        }

        if (_rows.Count == 0 && _faults.Count == 0)
        {
            Refuse(1, 1, "no rows of weather", "one row for each hour");
        }

        if (_faults.Count > 0 || RowsInOrder.Of(_rows, this) is not { } rows)
        {
            return WeatherReading.Refused(InFileOrder());
        }

        _rows = rows;
        SunCompletion.Complete(_rows, this);
        double[] global = Column("global irradiance", row => row.GlobalWPerM2, 0, 1800, isSun: true);
        double[] beam = Column("beam irradiance", row => row.BeamWPerM2, 0, 1400, isSun: true);
        double[] diffuse = Column("diffuse irradiance", row => row.DiffuseWPerM2, 0, 1400, isSun: true);
        double[] air = Column("air temperature", row => row.AirC, -90, 60, isSun: false);
        double[] wind = Column("wind", row => row.WindMPerS, 0, 100, isSun: false, CellTemperature.UsualWindMPerS);
        if (_faults.Count == 0)
        {
            _repairs.AddRange(PlanPlace.Remarks(place, PlannedAt));
            WeatherSense.Check(this, _rows, global);
        }

        if (_faults.Count > 0)
        {
            return WeatherReading.Refused(InFileOrder());
        }

        var steps = ImmutableArray.CreateBuilder<WeatherStep>(_rows.Count);
        for (int i = 0; i < _rows.Count; i++)
        {
            steps.Add(new WeatherStep(_rows[i].Ends, global[i], beam[i], diffuse[i], air[i], wind[i]));
        }

        WeatherYear year = new(place, steps.MoveToImmutable(), stepMinutes / 60.0, utcOffsetH, source, [.. _repairs]) { ColdestKnownC = ColdestKnownC };
        return new WeatherReading(year, []);
    }

    private IReadOnlyList<Fault> InFileOrder() => [.. _faults.OrderBy(static fault => fault.Line).ThenBy(static fault => fault.Column)];

    /// <summary>One figure of all rows, gaps bridged.</summary>
    /// <param name="name">The figure, as faults call it.</param>
    /// <param name="pick">Takes it from a row.</param>
    /// <param name="low">Least plausible.</param>
    /// <param name="high">Most plausible.</param>
    /// <param name="isSun">Whether a little under zero is a sensor's offset.</param>
    /// <param name="usual">Taken for longer gaps; null to refuse them.</param>
    private double[] Column(string name, Func<RawStep, double?> pick, double low, double high, bool isSun, double? usual = null)
    {
        double[] values = new double[_rows.Count];
        Mended offsets = default, filled = default, assumed = default;
        int known = -1;
        for (int i = 0; i < values.Length; i++)
        {
            if (pick(_rows[i]) is not { } value)
            {
                continue;
            }

            if (isSun && value < 0 && value >= SensorOffsetWPerM2)
            {
                value = 0;
                offsets = offsets.And(_rows[i].Line);
            }

            if (!(value >= low && value <= high))
            {
                Refuse(_rows[i].Line, 1, $"{name} {value} at {_rows[i].Ends:yyyy-MM-dd HH:mm}", $"{name} from {low} to {high}", HintFor(name, value));
            }

            Bridge(known, i, value);
            values[i] = value;
            known = i;
        }

        if (known < 0 && usual is null)
        {
            Refuse(_rows[0].Line, 1, $"no {name} in the whole file", $"{name} in every row");
        }
        else if (known < values.Length - 1)
        {
            Bridge(known, values.Length, known < 0 ? 0 : values[known]);
        }

        Tell(offsets.Count, $"{name} a little under zero taken as zero", offsets.FirstLine);
        Tell(filled.Count, $"missing {name} drawn straight between its neighbours", filled.FirstLine);
        Tell(assumed.Count, $"missing {name} taken as {usual:0} m/s", assumed.FirstLine);
        return values;

        void Bridge(int before, int after, double afterValue)
        {
            int gap = after - before - 1;
            if (gap > LongestGap && usual is null)
            {
                Refuse(_rows[before + 1].Line, 1, $"{gap} rows without {name}", $"at most {LongestGap} in a row", "fetch the file again, or fill it from another source");
                return;
            }

            double beforeValue = before >= 0 ? values[before] : afterValue;
            for (int i = 1; i <= gap; i++)
            {
                bool isLong = gap > LongestGap;
                values[before + i] = isLong ? usual!.Value : beforeValue + ((afterValue - beforeValue) * i / (gap + 1));
                (assumed, filled) = isLong ? (assumed.And(_rows[before + i].Line), filled) : (assumed, filled.And(_rows[before + i].Line));
            }
        }
    }

    private static string? HintFor(string name, double value) =>
        name != "air temperature" ? null
        : value is > 180 and < 340 ? "these look like kelvin: take 273.15 off"
        : value is > 60 and < 140 ? "these look like degrees Fahrenheit: (F - 32) / 1.8 gives C"
        : null;

    /// <summary>How many rows one rule mended, and the first of them.</summary>
    private readonly record struct Mended(int Count, int FirstLine)
    {
        public Mended And(int line) => new(Count + 1, Count == 0 ? line : FirstLine);
    }
}
