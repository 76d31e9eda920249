using Microsoft.AspNetCore.Components;

namespace Arraywright.Page.Shell;

/// <summary>A component that shows some of the shared state, and draws itself again when that changes.</summary>
public abstract class ScreenBase : ComponentBase, IDisposable
{
    [CascadingParameter]
    internal AppState State { get; set; } = null!;

    /// <summary>The page's words for English ones.</summary>
    protected string T(string english) => State.T(english);

    /// <inheritdoc/>
    protected override void OnInitialized() => State.Changed += Redraw;

    /// <inheritdoc/>
    public void Dispose()
    {
        State.Changed -= Redraw;
        GC.SuppressFinalize(this);
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
