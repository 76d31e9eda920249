using Arraywright.Files.Drafts;
using CsCheck;

namespace Arraywright.Files.Tests;

public sealed class PlanDraftTests
{
    [Fact]
    public void What_the_writer_of_plans_writes_a_draft_writes_again_byte_for_byte() => PlanTexts.Any.Sample(
        text =>
        {
            string written = PlanWriter.Write(Plans.Read(text));
            Assert.Equal(written, Draft(written).Write().Text);
        },
        iter: 300);

    [Fact]
    public void A_draft_of_any_plan_reads_as_the_same_plan() => PlanTexts.Any.Sample(
        text => Assert.Equal(Dump.Of(Plans.Read(text)), Dump.Of(Plans.Read(Draft(text).Write().Text))),
        iter: 300);

    [Fact]
    public void A_value_keeps_the_unit_it_was_written_in_and_its_fault_finds_its_path()
    {
        PlanDraft draft = Draft("panels:\n  - { name: a, count: 2, voc: 22.9 V, isc: 6.72 A, imp: 6.35 A }\ninputs:\n  - { name: i, max_voltage: 50 V }\n");
        draft.Set("cable/length", "25 ft");
        draft.Set("inputs/0/max_power/value", "400");
        draft.Set("panels/0/vmp", "18.9 V");
        DraftWriting written = draft.Write();
        Assert.Contains("cable:\n  length: 25 ft\n", written.Text, StringComparison.Ordinal);
        Assert.Contains("    isc: 6.72 A\n    vmp: 18.9 V\n    imp: 6.35 A\n", written.Text, StringComparison.Ordinal);
        Fault fault = Assert.Single(PlanFile.Read(written.Text, "plan").Faults);
        Assert.Equal("inputs/0/max_power/value", written.PathByLine[fault.Line]);
    }

    [Fact]
    public void A_limit_is_a_figure_until_somebody_stands_behind_it()
    {
        PlanDraft draft = Draft("inputs:\n  - name: i\n    max_power: 400 W\n");
        Assert.Equal("400 W", draft["inputs/0/max_power/value"]);
        draft.Set("inputs/0/max_power/evidence", "maker");
        Assert.Contains("    max_power:\n      value: 400 W\n      evidence: maker\n", draft.Write().Text, StringComparison.Ordinal);
        draft.Set("inputs/0/max_power/evidence", "");
        Assert.Contains("    max_power: 400 W\n", draft.Write().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Items_come_and_go()
    {
        PlanDraft draft = new();
        Assert.Equal(0, draft.AddItem("panels"));
        draft.Set("panels/0/name", "a");
        draft.AddItem("panels");
        draft.Set("panels/1/name", "b");
        draft.RemoveItem("panels", 0);
        Assert.Equal("panels:\n  - name: b\n", draft.Write().Text);
        draft.RemoveItem("panels", 0);
        Assert.Equal("", draft.Write().Text);
    }

    [Fact]
    public void Any_text_in_any_field_is_written_so_that_it_reads_back() => Gen.String[Gen.Char[' ', '~'], 1, 30].Where(text => text.Trim().Length > 0).Sample(text =>
    {
        PlanDraft draft = new();
        draft.Set("plan", text);
        draft.AddItem("panels");
        draft.Set("panels/0/voc", text);
        draft.AddItem("inputs");
        draft.Set("inputs/0/wiring", text);
        PlanDraft again = Draft(draft.Write().Text);
        Assert.Equal((text.Trim(), text.Trim(), text.Trim()), (again["plan"], again["panels/0/voc"], again["inputs/0/wiring"]));
    });

    private static PlanDraft Draft(string text)
    {
        (PlanDraft? draft, IReadOnlyList<Fault> faults) = PlanDraft.Read(text, "plan");
        Assert.Empty(faults);
        return draft!;
    }
}
