using Arraywright.Files;
using Arraywright.Page.Compute;
using Arraywright.Page.Document;
using Arraywright.Page.Words;
using Microsoft.JSInterop;

namespace Arraywright.Page.Shell;

/// <summary>What all screens share: the plan, its answer, the screen shown, the settings.</summary>
internal sealed class AppState(IJSObjectReference script) : IDisposable
{
    private const int KeptVersions = 60;

    private CancellationTokenSource _answering = new();
    private DateTime _changed;
    private Question? _answered;

    public IJSObjectReference Script { get; } = script;

    public PlanDocument Document { get; } = new();

    public DeskClient Desk { get; } = new(script);

    public Language Words { get; private set; } = Language.Of("en");

    public Settings Settings { get; private set; } = Settings.Default;

    /// <summary>One of <see cref="Shell.Screen"/>.</summary>
    public string Screen { get; private set; } = Shell.Screen.Start;

    /// <summary>The answer shown; of an earlier state of the plan while <see cref="IsAnswering"/>.</summary>
    public AnswerSheet? Answer { get; private set; }

    /// <summary>Whether the answer shown is of a plan or of conditions that have changed since: its verdict must not be read as one on those of now.</summary>
    public bool IsOld => Answer is not null && _answered != Ask(QuestionKind.Plan);

    public PictureSheet? Pictures { get; private set; }

    /// <summary>The circuit of the same wiring; empty where it is still to come.</summary>
    public string? Diagram { get; private set; }

    /// <summary>Why there is no answer; null where there is one or none was asked for.</summary>
    public string? Refusal { get; private set; }

    public bool IsAnswering { get; private set; }

    /// <summary>Whether verdict, wiring, drawing, curve and meter are those of the best wiring of the plan as it is now.</summary>
    public bool IsSettled { get; private set; }

    /// <summary>Whether the best wiring is certain, and what is still looked for is only what else there is to choose from.</summary>
    public bool IsBestFound => Answer is { Stage: AnswerStage.Best } && !IsOld;

    /// <summary>From the last change of the plan to its whole answer, ms; 0 before the first.</summary>
    public double WholeMs { get; private set; }

    /// <summary>Whether a new build waits to be taken.</summary>
    public bool IsUpdateReady { get; set; }

    /// <summary>What a link or file was refused for.</summary>
    public IReadOnlyList<Fault> Refused { get; private set; } = [];

    /// <summary>Name a saved file gets.</summary>
    public string FileName { get; set; } = "plan.yaml";

    /// <summary>Sun for the meter, W/m²; null for strong sun.</summary>
    public double? IrradianceWPerM2 { get; private set; }

    /// <summary>Air for the meter, °C; null for a mild day.</summary>
    public double? AirC { get; private set; }

    /// <summary>Raised when anything shown has changed.</summary>
    public event Action? Changed;

    /// <summary>The page's words for English ones.</summary>
    public string T(string english) => Words[english];

    /// <summary>Begins: settings, the plan that was open, and the worker.</summary>
    public async Task BeginAsync(string fragment)
    {
        Document.Changed += () => _ = AfterChangeAsync();
        Desk.Changed += Tell;
        Settings = new Settings(
            await Script.InvokeAsync<string?>("setting", "language") ?? "en",
            await Script.InvokeAsync<string?>("setting", "units") == "us",
            await Script.InvokeAsync<string?>("setting", "theme") ?? "");
        Words = Language.Of(Settings.Language);
        await Script.InvokeVoidAsync("setLook", Settings.Theme, Words.Code);
        StoredVersion[] kept = await Script.InvokeAsync<StoredVersion[]>("versions");
        if (kept.Length > 0 && !fragment.StartsWith(PlanLink.Mark, StringComparison.Ordinal))
        {
            Document.Open(kept[0].Text);
        }

        await GoAsync(fragment);
    }

    /// <summary>What the first sight of the page need not wait for: the worker, and the copy for work with no signal.</summary>
    public async Task BeginWorkAsync()
    {
        await Desk.StartAsync();
        await Script.InvokeVoidAsync("ready");
    }

    /// <summary>Shows the screen that a fragment names, or takes the plan it holds.</summary>
    public async Task GoAsync(string fragment)
    {
        if (fragment.StartsWith(PlanLink.Mark, StringComparison.Ordinal))
        {
            Open(PlanLink.Read(fragment));
            await ShowAsync(Refused.Count == 0 ? Shell.Screen.Plan : Shell.Screen.Start);
            return;
        }

        string? known = Shell.Screen.All.FirstOrDefault(screen => screen.Name == fragment).Name;
        Screen = known ?? (Document.IsEmpty ? Shell.Screen.Start : Shell.Screen.Plan);
        Tell();
    }

    /// <summary>Shows a screen from its top.</summary>
    public async Task ShowAsync(string screen)
    {
        Screen = screen;
        await Script.InvokeVoidAsync("setFragment", screen);
        Tell();
        await Script.InvokeVoidAsync("toTop");
    }

    /// <summary>Opens a text from outside, or says why it is refused; the plan at hand stays then.</summary>
    public void Open(string? text)
    {
        Refused = text is null
            ? [new Fault("link", 1, 1, T("a link that holds no plan"), T("a link made by this page"))]
            : Document.Open(text);
        Tell();
    }

    /// <summary>Says why something from outside was not opened.</summary>
    public void Refuse(params IReadOnlyList<Fault> faults)
    {
        Refused = faults;
        Tell();
    }

    /// <summary>Forgets a refusal that was read.</summary>
    public void Dismiss()
    {
        Refused = [];
        Tell();
    }

    /// <summary>Changes what a person chose.</summary>
    public async Task ChooseAsync(Settings settings)
    {
        Settings = settings;
        Words = Language.Of(settings.Language);
        await Script.InvokeVoidAsync("setSetting", "language", settings.Language);
        await Script.InvokeVoidAsync("setSetting", "units", settings.IsUs ? "us" : "metric");
        await Script.InvokeVoidAsync("setSetting", "theme", settings.Theme);
        await Script.InvokeVoidAsync("setLook", settings.Theme, Words.Code);
        Tell();
    }

    /// <summary>Computes the meter for another moment.</summary>
    public async Task SetConditionsAsync(double? irradianceWPerM2, double? airC)
    {
        (IrradianceWPerM2, AirC) = (irradianceWPerM2, airC);
        await AnswerAsync();
    }

    /// <summary>Takes the weather file chosen in a field, and the plan then names it.</summary>
    /// <param name="id">Of the field.</param>
    /// <returns>False where none was chosen, or one too large.</returns>
    public async Task<bool> TakeWeatherAsync(string id)
    {
        if (await Script.InvokeAsync<string?>("takeWeather", id) is not { } name)
        {
            return false;
        }

        if (Document.Draft["place/weather"] is { } path && WeatherShelf.NameOf(path) == name)
        {
            await AnswerAsync();
        }
        else
        {
            Document.Edit(draft => draft.Set("place/weather", name));
        }

        return true;
    }

    /// <summary>Ends the search that runs for the answer.</summary>
    public async Task StopAsync()
    {
        await _answering.CancelAsync();
        IsAnswering = false;
        Refusal = T("Stopped. Change anything in the plan to begin again.");
        Tell();
    }

    /// <summary>A question about the plan as it stands.</summary>
    public Question Ask(string kind) => new() { Kind = kind, Text = Document.Text, IrradianceWPerM2 = IrradianceWPerM2, AirC = AirC };

    /// <summary>Tells every screen to draw itself again.</summary>
    public void Tell() => Changed?.Invoke();

    /// <inheritdoc/>
    public void Dispose() => _answering.Dispose();

    /// <summary>Kept first, as a tab may end at any moment; what is computed does not wait for the disk.</summary>
    private async Task AfterChangeAsync()
    {
        _changed = DateTime.UtcNow;
        Task keeping = Document.IsEmpty ? Task.CompletedTask : Script.InvokeAsync<bool>("keep", Document.Draft["plan"] ?? "", Document.Text, KeptVersions).AsTask();
        await AnswerAsync();
        await keeping;
    }

    private async Task AnswerAsync()
    {
        CancellationToken stop = Renew();
        Refusal = null;
        if (Document.Plan is null)
        {
            IsAnswering = false;
            Answer = null;
            (Pictures, Diagram) = (null, null);
            Tell();
            return;
        }

        (IsAnswering, IsSettled) = (true, false);
        IReadOnlyList<string?> before = Answer is { } shown ? [.. shown.Designs[0].Inputs.Select(input => input.Wiring)] : [];
        Question question = Ask(QuestionKind.Plan);
        await Desk.AskAsync(question with { Before = before }, reply => Take(question, reply), stop);
    }

    /// <summary>Ends what is being answered, at once: nothing may come between a change and its question.</summary>
    private CancellationToken Renew()
    {
        _answering.Cancel();
        _answering.Dispose();
        _answering = new CancellationTokenSource();
        return _answering.Token;
    }

    private void Take(Question question, Reply reply)
    {
        if (reply.Answer is { } answer)
        {
            (Answer, _answered, Refusal, IsAnswering) = (answer, question, null, answer.Stage != AnswerStage.Whole);
            if (!IsAnswering)
            {
                WholeMs = (DateTime.UtcNow - _changed).TotalMilliseconds;
            }
        }
        else if (reply.Refusal is { } refusal)
        {
            (Answer, Pictures, Diagram, Refusal, IsAnswering) = (null, null, null, refusal, false);
        }

        (Pictures, Diagram) = (reply.Pictures ?? Pictures, reply.Diagram ?? Diagram);
        IsSettled |= reply.IsSettled;
        Tell();
    }
}

/// <summary>A version of a plan kept on the device.</summary>
/// <param name="At">When, ms since 1970.</param>
/// <param name="Title">The plan's title.</param>
/// <param name="Text">The plan file.</param>
internal sealed record StoredVersion(double At, string Title, string Text);
