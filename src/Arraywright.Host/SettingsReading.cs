using System.Globalization;
using System.Net;

namespace Arraywright.Host;

/// <summary>Reads the settings from the arguments that the verb <c>serve</c> passes on.</summary>
internal static class SettingsReading
{
    /// <summary>The settings; null, with what is wrong, for an argument that is none.</summary>
    public static HostSettings? Read(IReadOnlyList<string> args, out string wrong)
    {
        HostSettings settings = new();
        wrong = "";
        foreach (string arg in args)
        {
            string[] parts = arg.Split('=', 2);
            HostSettings? next = parts.Length == 2 ? With(settings, parts[0], parts[1]) : null;
            if (next is null)
            {
                wrong = $"found \"{arg}\"; expected arguments as `arraywright serve` passes them, such as --port=8080";
                return null;
            }

            settings = next;
        }

        return settings;
    }

    private static HostSettings? With(HostSettings settings, string name, string value) => name switch
    {
        "--listen" when IPAddress.TryParse(value, out IPAddress? address) => settings with { Listen = address },
        "--port" when Whole(value) is { } port and <= 65535 => settings with { Port = port },
        "--base" => settings with { BasePath = value },
        "--page" => settings with { PageFolder = value },
        "--name" => settings with { Names = [.. settings.Names, value] },
        "--origin" => settings with { Origins = [.. settings.Origins, value] },
        "--proxy" => settings with { IsBehindProxy = value == "true" },
        "--rate" when Whole(value) is { } rate and > 0 => settings with { RatePerS = rate },
        "--limit" when Whole(value) is { } seconds and > 0 => settings with { LimitS = seconds },
        _ => null,
    };

    private static int? Whole(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : null;
}
