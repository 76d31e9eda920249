using System.Collections;
using System.Globalization;
using System.Reflection;

namespace Arraywright.Testing;

/// <summary>A result taken apart into all it says, every number to its last bit, to compare two of them by.</summary>
public static class EveryFigure
{
    private const BindingFlags Members = BindingFlags.Public | BindingFlags.Instance;

    /// <summary>One line a value: its path in the result, and its bits or text.</summary>
    public static List<string> In(object result)
    {
        List<string> lines = [];
        Collect(result, "", lines);
        return lines;
    }

    private static void Collect(object? value, string path, List<string> lines)
    {
        switch (value)
        {
            case null:
                lines.Add(path + ": null");
                break;
            case double figure:
                lines.Add(string.Create(CultureInfo.InvariantCulture, $"{path}: {figure:R} {BitConverter.DoubleToInt64Bits(figure):X16}"));
                break;
            case string or Enum or IFormattable:
                lines.Add(string.Create(CultureInfo.InvariantCulture, $"{path}: {value}"));
                break;
            case bool flag:
                lines.Add($"{path}: {flag}");
                break;
            case IEnumerable many:
                int index = 0;
                foreach (object? one in many)
                {
                    Collect(one, $"{path}[{index++}]", lines);
                }

                break;
            default:
                // What can be set is what it holds; the rest follows from it, and may lead round in circles.
                foreach (PropertyInfo property in value.GetType().GetProperties(Members).Where(property => property.CanWrite && property.GetIndexParameters().Length == 0))
                {
                    Collect(property.GetValue(value), $"{path}.{property.Name}", lines);
                }

                break;
        }
    }
}
