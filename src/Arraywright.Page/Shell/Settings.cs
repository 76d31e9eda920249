namespace Arraywright.Page.Shell;

/// <summary>What a person chose for this device.</summary>
/// <param name="Language">Code of the page's language.</param>
/// <param name="IsUs">Whether lengths are asked in feet, cables in gauges, temperatures in degrees Fahrenheit.</param>
/// <param name="Theme">"light", "dark", or empty for what the device says.</param>
internal sealed record Settings(string Language, bool IsUs, string Theme)
{
    public static Settings Default { get; } = new("en", false, "");
}
