using Arraywright.Files;
using Arraywright.Page.Shell;
using Microsoft.AspNetCore.Components.Forms;

namespace Arraywright.Page.Document;

/// <summary>Opens a file that a person chose; whatever it holds, it is read or refused.</summary>
internal static class OpenedFile
{
    private const long MostBytes = 1 << 20;

    public static async Task TakeAsync(AppState state, IBrowserFile file)
    {
        if (file.Size > MostBytes)
        {
            state.Refuse(new Fault(file.Name, 1, 1, $"a file of {file.Size} bytes", "a plan, at most 1 MiB"));
            return;
        }

        using MemoryStream bytes = new();
        try
        {
            await using Stream stream = file.OpenReadStream(MostBytes);
            await stream.CopyToAsync(bytes);
        }
        catch (IOException)
        {
            state.Refuse(new Fault(file.Name, 1, 1, "a file that cannot be read", "a plan file"));
            return;
        }

        if (PlanText.Decode(bytes.ToArray(), file.Name, out IReadOnlyList<Fault> faults) is not { } text)
        {
            state.Refuse([.. faults]);
            return;
        }

        state.FileName = file.Name;
        state.Open(text);
        if (state.Refused.Count == 0)
        {
            await state.ShowAsync(Screen.Plan);
        }
    }
}
