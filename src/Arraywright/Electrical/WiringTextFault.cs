namespace Arraywright.Electrical;

/// <summary>Where and why a text is not a wiring.</summary>
/// <param name="Position">Index in the text, from 0; the length of the text when it ends too early.</param>
/// <param name="Found">What stands there, printable and short: <c>')'</c>, <c>5000</c>, <c>the end</c>.</param>
/// <param name="Expected">What should stand there instead.</param>
public sealed record WiringTextFault(int Position, string Found, string Expected);
