
namespace Arraywright.Presentation;

/// <summary>The program as it names itself.</summary>
public static class ProgramVersion
{
    /// <summary>Name and version as one reports them.</summary>
    public static string Line { get; } = $"arraywright {typeof(Plan).Assembly.GetName().Version?.ToString(3)}";
}
