using System.CommandLine;
using System.Globalization;
using System.Net;

namespace Arraywright.Cli.Verbs;

/// <summary>The page and the JSON interface on this machine.</summary>
internal static class ServeVerb
{
    public static Command Create(Host host)
    {
        Command command = new("serve", "Serves the page and the JSON interface on this machine, until Ctrl-C.");
        Option<string?> listen = Checked("--listen", "ADDRESS", "the address to listen on (else 127.0.0.1, which only this machine reaches); 0.0.0.0 for every one", "an address such as 127.0.0.1, 0.0.0.0 or ::1", text => IPAddress.TryParse(text, out _));
        Option<string?> port = Checked("--port", "N", "the port (else 8080); 0 for any that is free", "a whole number from 0 to 65535", text => IsWhole(text, 0, 65535));
        Option<string?> basePath = Checked("--base", "PATH", "the path to serve under, such as /arraywright (else the root)", "a path such as /arraywright, of letters, digits, - and _", IsPath);
        Option<string?> page = Checked("--page", "FOLDER", "the folder of the published page (else the one beside the command)", "a folder with an index.html", folder => File.Exists(Path.Combine(folder, "index.html")));
        Option<string[]> name = Several("--name", "NAME", "a name that requests may be for, beside localhost, such as sun.example.org; again for another");
        Option<string[]> origin = Several("--origin", "URL", "a site whose pages may ask, such as https://example.org; again for another (else none)");
        Option<bool> proxy = new("--proxy") { Description = "a proxy on this machine is in front: believe what it says of who asks" };
        Option<string?> rate = Checked("--rate", "N", "questions a second that one client may ask (else 10); this machine itself may ask faster", "a whole number from 1 to 10000", text => IsWhole(text, 1, 10000));
        Option<string?> limit = Checked("--limit", "SECONDS", "the longest that one question is computed for (else 20)", "a whole number from 1 to 3600", text => IsWhole(text, 1, 3600));
        Option<string?>[] single = [listen, port, basePath, page, rate, limit];
        foreach (Option option in new Option[] { listen, port, basePath, page, name, origin, proxy, rate, limit })
        {
            command.Add(option);
        }

        command.SetAction(parse => HostProgram.Run(
            host,
            [
                .. single.Where(option => parse.GetValue(option) is not null).Select(option => $"{option.Name}={parse.GetValue(option)!.TrimEnd('/')}"),
                .. (parse.GetValue(name) ?? []).Select(value => $"--name={value}"),
                .. (parse.GetValue(origin) ?? []).Select(value => $"--origin={value.TrimEnd('/')}"),
                .. parse.GetValue(proxy) ? ["--proxy=true"] : Array.Empty<string>(),
            ]));
        return command;
    }

    private static Option<string?> Checked(string name, string value, string about, string expected, Func<string, bool> isRight) => new(name)
    {
        Description = about,
        HelpName = value,
        CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(token => token.Value));
            if (isRight(text))
            {
                return text;
            }

            result.AddError($"{name}: found \"{text}\"; expected {expected}");
            return null;
        },
    };

    private static Option<string[]> Several(string name, string value, string about) => new(name) { Description = about, HelpName = value };

    private static bool IsWhole(string text, int least, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= least && value <= most;

    private static bool IsPath(string text) =>
        text.StartsWith('/') && text.TrimEnd('/').Split('/').Skip(1).All(part => part.Length > 0 && part.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_'));
}
