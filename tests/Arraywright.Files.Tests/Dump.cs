using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Arraywright.Electrical;

namespace Arraywright.Files.Tests;

/// <summary>Everything that a value holds, as text: two plans are equal when their dumps are.</summary>
internal static class Dump
{
    public static string Of(object? value)
    {
        StringBuilder text = new();
        Append(text, value, "");
        return text.ToString();
    }

    /// <summary>Every double anywhere in the value.</summary>
    public static IEnumerable<double> Doubles(object? value) => value switch
    {
        null or string or Wiring => [],
        double number => [number],
        IEnumerable items => items.Cast<object?>().SelectMany(Doubles),
        _ when IsSimple(value) => [],
        _ => Properties(value).SelectMany(property => Doubles(property.GetValue(value))),
    };

    private static void Append(StringBuilder text, object? value, string path)
    {
        switch (value)
        {
            case null or string:
            case not null when IsSimple(value):
                text.Append(path).Append(" = ").Append(Convert.ToString(value, CultureInfo.InvariantCulture) ?? "null").Append('\n');
                break;
            case Wiring wiring:
                text.Append(path).Append(" = ").Append(WiringText.Print(wiring)).Append('\n');
                break;
            case IEnumerable items:
                int index = 0;
                foreach (object? item in items)
                {
                    Append(text, item, $"{path}[{index++}]");
                }

                text.Append(path).Append(" has ").Append(index).Append('\n');
                break;
            default:
                foreach (PropertyInfo property in Properties(value))
                {
                    Append(text, property.GetValue(value), $"{path}.{property.Name}");
                }

                break;
        }
    }

    private static bool IsSimple(object value) => value.GetType().IsPrimitive || value is Enum or DateTime;

    private static PropertyInfo[] Properties(object value) =>
        [.. value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0)];
}
