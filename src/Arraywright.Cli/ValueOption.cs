using System.CommandLine;
using Arraywright.Files.Asking;

namespace Arraywright.Cli;

/// <summary>An option of a question on the command line.</summary>
internal static class ValueOption
{
    /// <summary>The option; what is wrong with its value is told with what was expected.</summary>
    /// <param name="asked">What it takes.</param>
    /// <param name="about">What it means here, where the verb has words of its own.</param>
    public static Option<T?> Create<T>(AskedOption<T> asked, string? about = null)
        where T : struct
    {
        string name = "--" + asked.Name;
        return new Option<T?>(name)
        {
            Description = about ?? asked.About,
            HelpName = asked.ValueName,
            CustomParser = result =>
            {
                string text = string.Join(' ', result.Tokens.Select(token => token.Value));
                T? value = asked.Read(text);
                if (value is null)
                {
                    result.AddError($"{name}: {asked.Refused(text)}");
                }

                return value;
            },
        };
    }
}
