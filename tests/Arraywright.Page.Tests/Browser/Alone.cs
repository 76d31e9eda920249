namespace Arraywright.Page.Tests.Browser;

/// <summary>Tests that measure: they run when the others have ended, one after another, so that the figures are of the page and not of its neighbours.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
