namespace Arraywright.Energy;

/// <summary>What a panel, or a string of them, gives at most by itself in every step.</summary>
/// <param name="WholeW">At the mean of each step, W.</param>
/// <param name="BrightW">In its bright part, W: one array for each sun that says when that is.</param>
/// <param name="CloudedW">In its clouded part, W.</param>
internal sealed record PowerAlone(double[] WholeW, double[][] BrightW, double[][] CloudedW)
{
    /// <summary>Room for so many steps and suns.</summary>
    public static PowerAlone Dark(int steps, int suns) => new(new double[steps], Rows(steps, suns), Rows(steps, suns));

    private static double[][] Rows(int steps, int suns) => [.. Enumerable.Range(0, suns).Select(_ => new double[steps])];
}
