using System.CommandLine;
using Arraywright.Files.Asking;
using Arraywright.Planning;

namespace Arraywright.Cli;

/// <summary>The plan, the conditions and the manners that verbs share; each verb adds those it has.</summary>
internal sealed class PlanOptions
{
    private readonly Argument<string> _plan = new("PLAN") { Description = "the plan file; - reads it from standard input" };
    private readonly Option<bool> _json = new("--json") { Description = "only JSON on standard output" };
    private readonly Option<bool> _quiet = new("--quiet") { Description = "only the answer: one line, no remarks, no bar" };
    private readonly Option<bool> _noColor = new("--no-color") { Description = "no colour, also not on a terminal" };
    private readonly Option<double?> _irradiance = ValueOption.Create(AskedOptions.Irradiance);
    private readonly Option<double?> _cell = ValueOption.Create(AskedOptions.Cell);
    private readonly Option<double?> _air = ValueOption.Create(AskedOptions.Air);
    private readonly Option<double?> _wind = ValueOption.Create(AskedOptions.Wind);

    /// <summary>Adds the plan file.</summary>
    public PlanOptions WithPlan(Command command)
    {
        command.Add(_plan);
        return this;
    }

    /// <summary>Adds what every verb that prints a result takes.</summary>
    public PlanOptions WithManners(Command command)
    {
        command.Add(_json);
        command.Add(_quiet);
        command.Add(_noColor);
        return this;
    }

    /// <summary>Adds the conditions.</summary>
    public PlanOptions WithConditions(Command command)
    {
        command.Add(_irradiance);
        command.Add(_cell);
        command.Add(_air);
        command.Add(_wind);
        _cell.Validators.Add(result =>
        {
            if (result.GetResult(_air) is not null)
            {
                result.AddError("--cell and --air exclude each other: the temperature of the cells, or that of the air to compute it from");
            }
        });
        _wind.Validators.Add(result =>
        {
            if (result.GetResult(_air) is null)
            {
                result.AddError("--wind serves to compute the cells' temperature from the air's: it needs --air");
            }
        });
        return this;
    }

    /// <summary>The path of the plan.</summary>
    public string Path(ParseResult parse) => parse.GetRequiredValue(_plan);

    /// <summary>How the result is to be written.</summary>
    public Manners Manners(ParseResult parse) => new(parse.GetValue(_json), parse.GetValue(_quiet), parse.GetValue(_noColor));

    /// <summary>The stated conditions.</summary>
    public PlannerOptions Planner(ParseResult parse) =>
        new(new StatedConditions(parse.GetValue(_irradiance), parse.GetValue(_cell), parse.GetValue(_air), parse.GetValue(_wind)));
}
