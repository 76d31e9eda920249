namespace Arraywright.Energy;

/// <summary>The levels of power from the label to the battery, each after what its name says has been taken off.</summary>
public enum Stage
{
    /// <summary>Label watts in proportion to the sun in the plane of the panels.</summary>
    Label,

    /// <summary>Less what glass reflects, the horizon hides and dirt keeps off.</summary>
    Incidence,

    /// <summary>The circuit's own power at 25 °C: panels are a little less efficient in weak sun.</summary>
    WeakSun,

    /// <summary>At the cells' temperature.</summary>
    Heat,

    /// <summary>In shade.</summary>
    Shade,

    /// <summary>At the panels' terminals, wired as they are.</summary>
    Mismatch,

    /// <summary>At the input, if it limited nothing.</summary>
    Cable,

    /// <summary>With the input's current limit.</summary>
    CurrentLimit,

    /// <summary>With its power limit, and what a unit's inputs share.</summary>
    PowerLimit,

    /// <summary>With its voltage window and start voltage: into the input.</summary>
    VoltageWindow,

    /// <summary>After conversion and the unit's own use.</summary>
    Conversion,

    /// <summary>What found room: into the battery or straight to the load.</summary>
    BatteryFull,
}
