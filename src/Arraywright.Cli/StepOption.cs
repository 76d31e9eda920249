using System.CommandLine;
using System.Globalization;
using Arraywright.Climate;

namespace Arraywright.Cli;

/// <summary>The length of a step that a year or a day is computed in.</summary>
internal sealed class StepOption
{
    private readonly Option<int?> _minutes = new("--step")
    {
        Description = "length of a step: 1 to 60 minutes; the sun moves on within the weather's hours",
        HelpName = "MINUTES",
        CustomParser = result =>
        {
            string text = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int minutes) && minutes is >= 1 and <= 60 && 60 % minutes == 0)
            {
                return minutes;
            }

            result.AddError($"--step: found \"{text}\"; expected whole minutes that divide an hour, such as 1, 5, 15 or 30");
            return null;
        },
    };

    /// <summary>Adds the option.</summary>
    public StepOption(Command command) => command.Add(_minutes);

    /// <summary>The length asked for, h; null for the weather's own.</summary>
    public double? Hours(ParseResult parse) => parse.GetValue(_minutes) / 60.0;

    /// <summary>Says so where the weather's steps cannot be cut into such.</summary>
    public bool Refuses(Host host, ParseResult parse, WeatherYear weather)
    {
        if (Hours(parse) is not { } stepH || stepH >= weather.StepH || FinerWeather.Divides(weather, stepH))
        {
            return false;
        }

        host.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"arraywright: --step: the weather's steps of {weather.StepH * 60:0.##} minutes cannot be cut into steps of {stepH * 60:0} minutes; expected a whole part of them"));
        return true;
    }
}
