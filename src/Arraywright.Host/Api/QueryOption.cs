using Arraywright.Files.Asking;

namespace Arraywright.Host.Api;

/// <summary>An option in the address of a question; the same names as on the command line.</summary>
/// <param name="Name">Its name.</param>
/// <param name="About">What it means.</param>
/// <param name="JsonType">Its type, as JSON Schema calls it.</param>
/// <param name="IsRequired">True where the question cannot be asked without it.</param>
internal abstract record QueryOption(string Name, string About, string JsonType, bool IsRequired)
{
    /// <summary>What is wrong with a text; null for nothing.</summary>
    public abstract string? Fault(string text);
}

/// <summary>An option with a value that the command has too.</summary>
internal sealed record ValueOption<T>(AskedOption<T> Asked, string JsonType, bool IsRequired = false)
    : QueryOption(Asked.Name, Asked.About.Replace("--", "", StringComparison.Ordinal), JsonType, IsRequired)
    where T : struct
{
    /// <inheritdoc/>
    public override string? Fault(string text) => Asked.Read(text) is null ? Asked.Refused(text) : null;
}

/// <summary>A name that is in the plan.</summary>
internal sealed record NameOption(string Name, string About) : QueryOption(Name, About, "string", IsRequired: false)
{
    /// <inheritdoc/>
    public override string? Fault(string text) => text.Length is > 0 and <= 100 ? null : "found no name; expected one of the plan";
}

/// <summary>Yes or no.</summary>
internal sealed record FlagOption(string Name, string About) : QueryOption(Name, About, "boolean", IsRequired: false)
{
    /// <inheritdoc/>
    public override string? Fault(string text) => text is "true" or "false" ? null : $"found \"{text}\"; expected true or false";
}
