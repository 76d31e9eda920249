using Arraywright.Files.Keys;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the panels that might be bought. What their labels leave out is told where they are used, not with the plan.</summary>
internal sealed class CandidatesReader(NameRegister names, PanelLabelReader labels, Mount mount)
{
    public List<PanelStock> Stocks { get; } = [];

    public List<LabelDoubt> Doubts { get; } = [];

    public void Read(Fields root)
    {
        foreach (Fields fields in root.Groups(RootKeys.Candidates))
        {
            string name = names.New(fields, PanelKeys.Name) ?? "unnamed";
            Panel? panel = labels.Read(fields, name, Doubts);
            Shade shade = ShadeReader.Read(fields, panel);
            Mount? own = MountReader.ReadOwn(fields, mount);
            if (panel is not null)
            {
                Stocks.Add(new PanelStock(panel, 1, shade, own));
            }
        }
    }
}
