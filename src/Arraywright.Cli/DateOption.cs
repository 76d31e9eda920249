using System.CommandLine;
using Arraywright.Files.Quantities;

namespace Arraywright.Cli;

/// <summary>A day of the year on the command line.</summary>
internal static class DateOption
{
    /// <summary>The option <c>--date</c>.</summary>
    public static Option<DateOnly?> Create(string description, bool required) => new("--date")
    {
        Description = description,
        HelpName = "[YYYY-]MM-DD",
        Required = required,
        CustomParser = result =>
        {
            string text = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
            if (DayText.TryRead(text, out DateOnly date))
            {
                return date;
            }

            result.AddError($"--date: found \"{text}\"; expected a day such as 06-21 or 2026-06-21");
            return null;
        },
    };
}
