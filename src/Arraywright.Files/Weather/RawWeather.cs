using System.Collections.Immutable;
using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>One row as the file has it; null where the file says that a figure is missing.</summary>
internal readonly record struct RawStep(int Line, DateTime Ends, double? GlobalWPerM2, double? BeamWPerM2, double? DiffuseWPerM2, double? AirC, double? WindMPerS);

/// <summary>Turns rows into weather: mends what a stated rule allows, refuses the rest, and tells of both.</summary>
internal sealed class RawWeather(string file, WeatherPlace place, double utcOffsetH, double stepH, string source)
{
    /// <summary>So many steps in a row may be missing and are drawn straight between their neighbours.</summary>
    private const int LongestGap = 3;

    /// <summary>A little under zero is a sensor's offset at night, W/m².</summary>
    private const double SensorOffsetWPerM2 = -20;

    private const int MostFaults = 50;

    private readonly List<Fault> _faults = [];
    private readonly List<string> _repairs = [];
    private readonly List<RawStep> _rows = [];
    private int _offsets;
    private int _filled;
    private int _doubles;

    public bool IsFull => _faults.Count >= MostFaults;

    public void Refuse(int line, int column, string found, string expected, string? hint = null)
    {
        if (!IsFull)
        {
            _faults.Add(new Fault(file, line, column, found, expected, hint));
        }
    }

    public void Add(in RawStep row)
    {
        if (_rows.Count > 0 && row.Ends == _rows[^1].Ends)
        {
            _doubles++;
            return;
        }

        if (_rows.Count > 0 && row.Ends.Year == _rows[^1].Ends.Year && row.Ends < _rows[^1].Ends)
        {
            Refuse(row.Line, 1, $"{row.Ends:MM-dd HH:mm} after {_rows[^1].Ends:MM-dd HH:mm}", "rows in order of time", "sort the file, or fetch it again");
        }

        _rows.Add(row);
    }

    public WeatherReading Finished()
    {
        if (_rows.Count == 0)
        {
            Refuse(1, 1, "no rows of weather", "one row for each hour");
            return WeatherReading.Refused(_faults);
        }

        double[] global = Column("global irradiance", row => row.GlobalWPerM2, 0, 1800, isSun: true);
        double[] beam = Column("beam irradiance", row => row.BeamWPerM2, 0, 1400, isSun: true);
        double[] diffuse = Column("diffuse irradiance", row => row.DiffuseWPerM2, 0, 1400, isSun: true);
        double[] air = Column("air temperature", row => row.AirC, -90, 60, isSun: false);
        double[] wind = Column("wind", row => row.WindMPerS, 0, 100, isSun: false);
        if (_faults.Count == 0)
        {
            WeatherSense.Check(this, place, utcOffsetH, stepH, [.. _rows.Select(row => row.Ends)], global, _rows[^1].Line);
        }

        if (_faults.Count > 0)
        {
            return WeatherReading.Refused(_faults);
        }

        Told(_offsets, "irradiance a little under zero taken as zero");
        Told(_filled, "missing figures drawn straight between their neighbours");
        Told(_doubles, "rows with the time of the row before left out");
        var steps = ImmutableArray.CreateBuilder<WeatherStep>(_rows.Count);
        for (int i = 0; i < _rows.Count; i++)
        {
            steps.Add(new WeatherStep(_rows[i].Ends, global[i], beam[i], diffuse[i], air[i], wind[i]));
        }

        return new WeatherReading(new WeatherYear(place, steps.MoveToImmutable(), stepH, utcOffsetH, source, [.. _repairs]), []);
    }

    private void Told(int count, string what)
    {
        if (count > 0)
        {
            _repairs.Add($"{count} × {what}.");
        }
    }

    private double[] Column(string name, Func<RawStep, double?> pick, double low, double high, bool isSun)
    {
        double[] values = new double[_rows.Count];
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
                _offsets++;
            }

            if (!(value >= low && value <= high))
            {
                string? hint = name == "air temperature" && value is > 180 and < 340 ? "these look like kelvin: take 273.15 off" : null;
                Refuse(_rows[i].Line, 1, $"{name} {value}", $"{name} from {low} to {high}", hint);
            }

            Bridge(name, values, known, i, value);
            values[i] = value;
            known = i;
        }

        if (known < 0)
        {
            Refuse(_rows[0].Line, 1, $"no {name} in the whole file", $"{name} in every row");
        }
        else if (known < values.Length - 1)
        {
            Bridge(name, values, known, values.Length, values[known]);
        }

        return values;
    }

    private void Bridge(string name, double[] values, int before, int after, double afterValue)
    {
        int gap = after - before - 1;
        if (gap == 0)
        {
            return;
        }

        if (gap > LongestGap)
        {
            Refuse(_rows[before + 1].Line, 1, $"{gap} rows without {name}", $"at most {LongestGap} in a row", "fetch the file again, or fill it from another source");
            return;
        }

        double beforeValue = before >= 0 ? values[before] : afterValue;
        for (int i = 1; i <= gap; i++)
        {
            values[before + i] = beforeValue + ((afterValue - beforeValue) * i / (gap + 1));
            _filled++;
        }
    }
}
