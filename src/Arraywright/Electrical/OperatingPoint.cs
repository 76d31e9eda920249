namespace Arraywright.Electrical;

/// <summary>What holds an operating point where it is.</summary>
public enum LimitedBy
{
    /// <summary>Nothing: it is the maximum power point.</summary>
    None,

    /// <summary>The input's current limit.</summary>
    Current,

    /// <summary>The input's power limit.</summary>
    Power,

    /// <summary>An end of the input's voltage window.</summary>
    Voltage,

    /// <summary>Its current or power limit would have to hold the array above the tracking window: what the input does there is not known, and nothing is counted.</summary>
    AboveWindow,

    /// <summary>The input does not run: too dark, or the array's voltage never reaches its window.</summary>
    Off,
}

/// <summary>What an input draws from the array.</summary>
/// <param name="VoltageV">Volts at the input.</param>
/// <param name="CurrentA">Amps drawn.</param>
/// <param name="PowerW">Watts taken.</param>
/// <param name="LimitedBy">What holds it there.</param>
/// <param name="UnlimitedPowerW">Watts the same array would give at its maximum power point.</param>
/// <param name="FirstHillPowerW">Watts that a simple tracker gets which climbs from the open-circuit side and stops at the first hill.</param>
public readonly record struct OperatingPoint(
    double VoltageV,
    double CurrentA,
    double PowerW,
    LimitedBy LimitedBy,
    double UnlimitedPowerW,
    double FirstHillPowerW);

/// <summary>What an input lets happen, as the solver sees it; infinite where nothing is stated.</summary>
/// <param name="MinV">Lower end of the tracking window, V.</param>
/// <param name="MaxV">Upper end of the tracking window, V.</param>
/// <param name="StartV">Open-circuit voltage needed to start, V.</param>
/// <param name="MaxA">Most current drawn, A.</param>
/// <param name="MaxW">Most power taken, W.</param>
public readonly record struct InputWindow(double MinV, double MaxV, double StartV, double MaxA, double MaxW)
{
    /// <summary>An input that limits nothing.</summary>
    public static InputWindow Open { get; } = new(0, double.PositiveInfinity, 0, double.PositiveInfinity, double.PositiveInfinity);
}
