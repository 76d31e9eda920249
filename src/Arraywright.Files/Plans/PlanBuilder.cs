using System.Collections.Immutable;
using Arraywright.Files.Keys;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Sky;

namespace Arraywright.Files.Plans;

/// <summary>Builds a plan from its tree, one section after the other; each reports its own faults and reading goes on.</summary>
internal sealed class PlanBuilder(FaultList faults, bool mayNameFiles)
{
    /// <summary>The plan; meaningless when there is any fault, and null where it cannot even be put together.</summary>
    public Plan? Build(YamlMapping root, string fileName)
    {
        Fields fields = new(root, RootKeys.Section, faults);
        List<Assumption> assumed = [];
        string name = fields.Text(RootKeys.Plan) ?? TitleFrom(fileName);
        Place? place = PlaceReader.Read(fields, assumed, mayNameFiles);
        Goal goal = fields.Choice(RootKeys.Goal) is { } chosen ? (Goal)chosen : Defaults.Goal(fields.Has(RootKeys.Place), assumed);
        DaySpan? dates = fields.Days(RootKeys.Date);
        Mount mount = MountReader.Read(fields, place, assumed);
        SkyModel? sky = fields.Choice(RootKeys.Sky) is { } spread ? (SkyModel)spread : null;
        Cable cable = CableReader.Read(fields, assumed);

        NameRegister names = new();
        CurrencyRegister currency = new();
        PanelLabelReader labels = new(currency);
        StockReader panels = new(names, labels, mount, assumed);
        panels.Read(fields);
        CandidatesReader candidates = new(names, labels, mount);
        candidates.Read(fields);
        UnitsReader units = new(names, assumed);
        units.Read(fields);
        ImmutableArray<PlannedInput> inputs = new InputsReader(names, panels, units, assumed).Read(fields);
        RuleSet? rules = (RuleSet?)fields.Choice(RootKeys.Rules);
        ImmutableArray<OwnedPart> owned = PartsReader.ReadOwned(fields);
        ImmutableArray<PartPrice> prices = new PartsReader(currency).ReadPrices(fields);
        return faults.Count > 0 ? null : new Plan
        {
            Name = name,
            Goal = goal,
            Dates = dates,
            Place = place,
            Mount = mount,
            Sky = sky,
            Panels = [.. panels.Stocks],
            Candidates = [.. candidates.Stocks],
            Currency = currency.Code,
            Inputs = inputs,
            Units = [.. units.Units],
            Cable = cable,
            Rules = rules,
            Owned = owned,
            PartPrices = prices,
            Assumed = [.. assumed],
            Doubts = [.. panels.Doubts],
            CandidateDoubts = [.. candidates.Doubts],
        };
    }

    private static string TitleFrom(string fileName)
    {
        string stem = Path.GetFileNameWithoutExtension(fileName);
        return stem.Length == 0 ? "Plan" : stem;
    }
}
