using Arraywright.Files;
using Arraywright.Files.Drafts;
using Arraywright.Gear;

namespace Arraywright.Page.Document;

/// <summary>The one plan that every screen shows and changes: its text, and what follows from it.</summary>
/// <remarks>The text is what is saved, shared and computed from. A form changes it through <see cref="Edit"/>; a file that nobody edits stays as it is, byte for byte.</remarks>
internal sealed class PlanDocument
{
    private const string FileName = "plan";
    private const int MostVersions = 200;

    private readonly List<string> _undo = [];
    private readonly List<string> _redo = [];
    private IReadOnlyDictionary<int, string> _pathByLine = new Dictionary<int, string>();
    private string? _merging;

    /// <summary>The plan file as it stands; empty while there is none.</summary>
    public string Text { get; private set; } = "";

    /// <summary>The same as a form sees it.</summary>
    public PlanDraft Draft { get; private set; } = new();

    /// <summary>The plan; null while something in it is wrong.</summary>
    public Plan? Plan { get; private set; }

    /// <summary>Everything wrong with it.</summary>
    public IReadOnlyList<Fault> Faults { get; private set; } = [];

    /// <summary>Whether there is a plan at all.</summary>
    public bool IsEmpty => Text.Length == 0;

    public bool CanUndo => _undo.Count > 0;

    public bool CanRedo => _redo.Count > 0;

    /// <summary>Raised after every change.</summary>
    public event Action? Changed;

    /// <summary>Puts a text in place of the plan, unless it cannot be a plan at all: then everything stays as it is.</summary>
    /// <returns>Why it was refused; empty when it was taken.</returns>
    public IReadOnlyList<Fault> Open(string text)
    {
        (PlanDraft? draft, IReadOnlyList<Fault> faults) = PlanDraft.Read(text, FileName);
        if (draft is null)
        {
            return faults;
        }

        Remember(null);
        Take(text, draft, LinesOf(text, draft));
        return [];
    }

    /// <summary>Changes the plan as a form does.</summary>
    /// <param name="change">What to change.</param>
    /// <param name="where">The field: strokes in one field are undone together. Null for a step of its own.</param>
    public void Edit(Action<PlanDraft> change, string? where = null)
    {
        Remember(where);
        change(Draft);
        DraftWriting written = Draft.Write();
        Take(written.Text, Draft, written.PathByLine);
    }

    /// <summary>Goes back one step.</summary>
    public void Undo() => Step(_undo, _redo);

    /// <summary>Goes forward again.</summary>
    public void Redo() => Step(_redo, _undo);

    /// <summary>What is wrong at a field, in one sentence; null where nothing is.</summary>
    public string? FaultAt(string path)
    {
        foreach (Fault fault in Faults)
        {
            if (_pathByLine.GetValueOrDefault(fault.Line) == path)
            {
                return $"{fault.Expected}{(fault.Hint is null ? "" : $"; {fault.Hint}")}";
            }
        }

        return null;
    }

    /// <summary>The path a fault is at; null where it is no single field's.</summary>
    public string? PathOf(Fault fault) => _pathByLine.GetValueOrDefault(fault.Line);

    /// <summary>What is possible but odd about a label figure; null where nothing is.</summary>
    public string? DoubtAt(string path)
    {
        string[] steps = path.Split('/');
        if (Plan is null || steps is not [var list, var item, var field] || Draft[$"{list}/{item}/name"] is not { } name)
        {
            return null;
        }

        IEnumerable<LabelDoubt> doubts = list switch
        {
            "panels" => Plan.Doubts,
            "candidates" => Plan.CandidateDoubts,
            _ => [],
        };
        return doubts.FirstOrDefault(doubt => doubt.Panel == name && doubt.Field == field)?.Message;
    }

    private void Take(string text, PlanDraft draft, IReadOnlyDictionary<int, string> pathByLine)
    {
        PlanReading reading = PlanFile.Read(text, FileName);
        (Text, Draft, Plan, Faults, _pathByLine) = (text, draft, reading.Plan, reading.Faults, pathByLine);
        Changed?.Invoke();
    }

    private void Remember(string? where)
    {
        if (where is not null && where == _merging)
        {
            return;
        }

        _merging = where;
        _redo.Clear();
        if (_undo.Count == 0 || _undo[^1] != Text)
        {
            _undo.Add(Text);
        }

        if (_undo.Count > MostVersions)
        {
            _undo.RemoveAt(0);
        }
    }

    private void Step(List<string> from, List<string> to)
    {
        if (from.Count == 0)
        {
            return;
        }

        _merging = null;
        string text = from[^1];
        from.RemoveAt(from.Count - 1);
        to.Add(Text);
        PlanDraft draft = text.Length == 0 ? new PlanDraft() : PlanDraft.Read(text, FileName).Draft ?? new PlanDraft();
        Take(text, draft, LinesOf(text, draft));
    }

    /// <summary>Where each field of a text stands: known for a text that the form wrote itself.</summary>
    private static IReadOnlyDictionary<int, string> LinesOf(string text, PlanDraft draft) =>
        draft.Write() is { } written && written.Text == text ? written.PathByLine : new Dictionary<int, string>();
}
