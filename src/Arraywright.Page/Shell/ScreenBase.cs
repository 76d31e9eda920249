using Microsoft.AspNetCore.Components;

namespace Arraywright.Page.Shell;

/// <summary>A component that shows some of the shared state, and draws itself again when that changes.</summary>
public abstract class ScreenBase : ComponentBase, IDisposable
{
    [CascadingParameter]
    internal AppState State { get; set; } = null!;

    /// <summary>The page's words for English ones.</summary>
    protected string T(string english) => State.T(english);

    /// <summary>Does what a change asks for, before it is drawn.</summary>
    protected virtual Task OnChangedAsync() => Task.CompletedTask;

    /// <inheritdoc/>
    protected override void OnInitialized() => State.Changed += Redraw;

    /// <inheritdoc/>
    public void Dispose()
    {
        State.Changed -= Redraw;
        GC.SuppressFinalize(this);
    }

    private void Redraw() => _ = InvokeAsync(RedrawAsync);

    private async Task RedrawAsync()
    {
        Task changed = OnChangedAsync();
        StateHasChanged();
        await changed;
    }
}
