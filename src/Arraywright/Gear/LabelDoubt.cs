namespace Arraywright.Gear;

/// <summary>A label figure that cannot be true (<paramref name="Refused"/>) or that is odd enough to ask about.</summary>
/// <param name="Panel">The kind of panel.</param>
/// <param name="Field">Plan key of the figure, such as "vmp".</param>
/// <param name="Message">What is wrong, as a practitioner would say it, with the figures.</param>
/// <param name="Refused">True when no panel can be made from it.</param>
public sealed record LabelDoubt(string Panel, string Field, string Message, bool Refused);
