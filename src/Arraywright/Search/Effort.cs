namespace Arraywright.Search;

/// <summary>Counts the work of a search, so that it ends at the same place on every machine, and hears when it is called off.</summary>
/// <remarks>The unit is a node: bounding one partial wiring. What else takes time is counted as the nodes it takes as long as.</remarks>
/// <param name="budget">Nodes the search may take.</param>
/// <param name="calledOff">Ends it early.</param>
/// <param name="whole">What this is a share of; null for none.</param>
internal sealed class Effort(long budget, CancellationToken calledOff, Effort? whole = null)
{
    /// <summary>An exact circuit, in nodes: measured.</summary>
    public const int Circuit = 40;

    /// <summary>All rules asked about one wiring, in nodes: measured.</summary>
    public const int Verdict = 200;

    /// <summary>Nodes spent.</summary>
    public long Spent { get; private set; }

    /// <summary>Nodes left.</summary>
    public long Left => Math.Max(budget - Spent, 0);

    /// <summary>Whether somebody called it off.</summary>
    public bool IsCalledOff => calledOff.IsCancellationRequested;

    /// <summary>Notes work done.</summary>
    public void Spend(long nodes)
    {
        Spent += nodes;
        whole?.Spend(nodes);
    }

    /// <summary>Notes a piece of work that is of no use unless all of it is done.</summary>
    /// <exception cref="OperationCanceledException">The search is called off.</exception>
    public void SpendOrGiveUp(long nodes)
    {
        calledOff.ThrowIfCancellationRequested();
        Spend(nodes);
    }

    /// <summary>A share of what is left, for a piece of the search that must leave some for the others.</summary>
    public Effort Share(double share) => new((long)(share * Left), calledOff, this);
}
