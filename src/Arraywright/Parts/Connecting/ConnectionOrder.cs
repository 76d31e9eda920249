using System.Collections.Immutable;
using Arraywright.Limits;

namespace Arraywright.Parts.Connecting;

/// <summary>What one step of connecting is about.</summary>
public enum ConnectionAct
{
    /// <summary>Meter, tools, everything off.</summary>
    MakeReady,

    /// <summary>Polarity and volts of each panel by itself.</summary>
    CheckPanels,

    /// <summary>Panels joined to strings, ends left open.</summary>
    JoinString,

    /// <summary>Polarity and volts of each string, before it meets another.</summary>
    MeasureString,

    /// <summary>Strings joined side by side.</summary>
    JoinStrings,

    /// <summary>Polarity and volts of the whole array at the end of its run.</summary>
    MeasureArray,

    /// <summary>The run joined to the input.</summary>
    ConnectInput,

    /// <summary>The input switched on and read.</summary>
    SwitchOn,

    /// <summary>A second look, once everything is warm.</summary>
    LookAgain,
}

/// <summary>What a meter is to show at one point, in <see cref="Unit"/>.</summary>
/// <param name="Point">Where the probes are held: "string 1", or "store-a, amps".</param>
/// <param name="Unit">"V", "A" or "W".</param>
/// <param name="Standard">At 1000 W/m² and cells at 25 °C: label sums for open leads, the circuit for the rest.</param>
/// <param name="Now">Under the conditions of the order.</param>
/// <param name="Least">With hot cells in dim light, tolerance taken off; null where no such figure helps.</param>
/// <param name="Most">At the coldest, as the voltage limit is held against it; null where no such figure helps.</param>
public sealed record ExpectedReading(string Point, string Unit, double Standard, double Now, double? Least, double? Most);

/// <summary>One step of connecting.</summary>
/// <param name="Act">What it is about.</param>
/// <param name="Input">The input it belongs to; null where it belongs to all.</param>
/// <param name="Title">What it is for, in a few words.</param>
/// <param name="Do">What to do, one sentence an entry, in order.</param>
/// <param name="Expected">What the meter is to show; empty where nothing is measured.</param>
/// <param name="IfNot">What another reading means; null where nothing is measured.</param>
public sealed record ConnectionStep(
    ConnectionAct Act,
    string? Input,
    string Title,
    ImmutableArray<string> Do,
    ImmutableArray<ExpectedReading> Expected,
    string? IfNot);

/// <summary>Something never to do, and why.</summary>
/// <param name="What">The deed, as the rest of a sentence that begins with "Never".</param>
/// <param name="Why">What would happen.</param>
public sealed record Prohibition(string What, string Why);

/// <summary>How a design is put together safely: measured at every step, so that a slip is found before it can harm.</summary>
public sealed record ConnectionOrder
{
    /// <summary>The verdict on the design: with stop there are no steps, with ask they wait for an answer.</summary>
    public required Level Verdict { get; init; }

    /// <summary>What <see cref="ExpectedReading.Now"/> is reckoned at, for the first kind of panel connected.</summary>
    public required Conditions Now { get; init; }

    /// <summary>The steps in order.</summary>
    public required ImmutableArray<ConnectionStep> Steps { get; init; }

    /// <summary>The way back, in order.</summary>
    public required ImmutableArray<string> Undoing { get; init; }

    /// <summary>What must not be done, the most dangerous first.</summary>
    public required ImmutableArray<Prohibition> Never { get; init; }
}
