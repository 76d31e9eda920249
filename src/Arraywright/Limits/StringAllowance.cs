using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits.Rules;

namespace Arraywright.Limits;

/// <summary>What strings may be and what may stand beside them: the rules' own limits, ahead of any whole wiring.</summary>
/// <param name="context">Labels, extremes and circuit; the wiring in it does not matter.</param>
/// <param name="worst">The worst that the rules may say: <see cref="Level.Go"/> or <see cref="Level.Ask"/>.</param>
public sealed class StringAllowance(RuleContext context, Level worst)
{
    /// <summary>A search makes thousands of strings of the same few positions, by reference: each is looked at once.</summary>
    private readonly Dictionary<Wiring, Position> _known = new(ReferenceEqualityComparer.Instance);

    /// <summary>Most label short-circuit amps that the strings beside a string may offer together.</summary>
    /// <param name="alone">The string: a panel, or positions in series.</param>
    /// <returns>A; infinite where nothing is held, negative where it may not be connected at all.</returns>
    public double BesideA(Wiring alone)
    {
        Position whole;
        if (alone is Wiring.Series series)
        {
            whole = Known(series.Parts[0]);
            for (int i = 1; i < series.Parts.Length; i++)
            {
                whole = whole.InSeriesWith(Known(series.Parts[i]));
            }
        }
        else
        {
            whole = Known(alone);
        }

        return Figures.Over(whole.Cold.HigherV, whole.SystemV) ? double.NegativeInfinity : whole.Room.BesideA(context.Rules, worst);
    }

    /// <summary>The most that <see cref="BesideA(Wiring)"/> gives for any string that holds a panel, A.</summary>
    public static double BesideA(Panel panel, Level worst) => BackFeedRoom.BesideA(panel, worst);

    /// <summary>Cold volts that no string with a panel may pass, V; infinite where nothing is held.</summary>
    public static double SystemV(Panel panel, Level worst) => SystemVoltageRule.MostV(panel, worst);

    private Position Known(Wiring position)
    {
        if (!_known.TryGetValue(position, out Position known))
        {
            known = new Position(
                ColdVoltage.BothWays(position, context),
                position.Panels.Min(name => SystemV(context.Panel(name), worst)),
                BackFeedRoom.Of(position, context));
            _known.Add(position, known);
        }

        return known;
    }

    /// <summary>A position of a string, or several of them.</summary>
    private readonly record struct Position(ColdPanelVolts Cold, double SystemV, BackFeedRoom Room)
    {
        public Position InSeriesWith(Position next) => new(Cold.InSeriesWith(next.Cold), Math.Min(SystemV, next.SystemV), Room.InSeriesWith(next.Room));
    }
}
