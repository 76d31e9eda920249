using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Arraywright.Electrical;

namespace Arraywright.Files;

/// <summary>Figures on their way into JSON: finite, or not at all.</summary>
internal static class JsonFigures
{
    /// <summary>Indented, line feeds on every machine, and plain °, ² and × instead of escapes.</summary>
    public static JsonWriterOptions Options { get; } = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>A named figure; null is written as null.</summary>
    public static void Figure(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } figure)
        {
            json.WritePropertyName(name);
            json.WriteRawValue(Written(name, figure));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>A named list of figures, null where there is none.</summary>
    public static void OptionalFigures(this Utf8JsonWriter json, string name, ImmutableArray<double?> values)
    {
        json.WriteStartArray(name);
        foreach (double? value in values)
        {
            if (value is { } figure)
            {
                json.WriteRawValue(Written(name, figure));
            }
            else
            {
                json.WriteNullValue();
            }
        }

        json.WriteEndArray();
    }

    /// <summary>A named list of figures on one line.</summary>
    public static void Figures(this Utf8JsonWriter json, string name, ImmutableArray<double> values)
    {
        StringBuilder text = new("[");
        for (int i = 0; i < values.Length; i++)
        {
            text.Append(i == 0 ? "" : ", ").Append(Written(name, values[i]));
        }

        json.WritePropertyName(name);
        json.WriteRawValue(text.Append(']').ToString());
    }

    /// <summary>A point of a curve.</summary>
    public static void Point(this Utf8JsonWriter json, CurvePoint point)
    {
        json.WriteStartObject();
        json.Figure("voltage_v", point.VoltageV);
        json.Figure("current_a", point.CurrentA);
        json.Figure("power_w", point.PowerW);
        json.WriteEndObject();
    }

    /// <summary>Twelve digits: beyond any measurement, and without the dust of binary arithmetic (45.8, not 45.800000000000004).</summary>
    private static string Written(string name, double value)
    {
        if (!double.IsFinite(value))
        {
            throw new InvalidOperationException($"A result is not a finite number: {name} is {value.ToString(CultureInfo.InvariantCulture)}.");
        }

        return value == 0 ? "0" : value.ToString("G12", CultureInfo.InvariantCulture);
    }
}
