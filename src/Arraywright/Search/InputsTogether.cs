namespace Arraywright.Search;

/// <summary>What is known or bounded of each input at a node, and what that makes in all: inputs of a unit are held to its most together.</summary>
internal sealed class InputsTogether(SearchProblem problem, PartBounds bounds)
{
    private readonly float[][] _inputW = [.. bounds.Covers.Select(cover => new float[cover.Cells.Lanes])];
    private readonly double[] _beside = new double[bounds.Covers[0].Cells.Lanes];

    /// <summary>Most that an input takes in each moment, W: a bound, or final once its strings are chosen.</summary>
    public Span<float> Of(int input) => _inputW[input];

    /// <summary>Takes for an input the bound of a whole part.</summary>
    public void Suppose(int input, int part)
    {
        int lanes = _inputW[input].Length;
        bounds.PartW[input].AsSpan(part * lanes, lanes).CopyTo(_inputW[input]);
    }

    /// <summary>Notes what the other inputs of the same unit take in each moment, and returns the weighted sum of all that the input at hand does not touch.</summary>
    public double Beside(int input)
    {
        int unit = problem.Inputs[input].Unit;
        double sum = 0;
        for (int moment = 0; moment < bounds.Shares.Length; moment++)
        {
            _beside[moment] = 0;
            double apart = 0;
            for (int other = 0; other < _inputW.Length; other++)
            {
                int otherUnit = problem.Inputs[other].Unit;
                if (other != input && otherUnit >= 0 && otherUnit == unit)
                {
                    _beside[moment] += _inputW[other][moment];
                }
                else if (other != input && otherUnit < 0)
                {
                    apart += _inputW[other][moment];
                }
            }

            sum += bounds.Shares[moment] * (apart + OtherUnits(unit, moment));
        }

        return sum;
    }

    private double OtherUnits(int unit, int moment)
    {
        double sum = 0;
        for (int otherUnit = 0; otherUnit < problem.UnitMaxW.Length; otherUnit++)
        {
            double togetherW = 0;
            for (int other = 0; other < _inputW.Length && otherUnit != unit; other++)
            {
                togetherW += problem.Inputs[other].Unit == otherUnit ? _inputW[other][moment] : 0;
            }

            sum += Math.Min(togetherW, problem.UnitMaxW[otherUnit]);
        }

        return sum;
    }

    /// <summary>Weighted sum of what an input and its unit take, when the input takes at most so much in each moment; after <see cref="Beside"/>.</summary>
    public double With(int input, ReadOnlySpan<float> mostW)
    {
        double unitW = bounds.UnitMaxW(input);
        ReadOnlySpan<double> shares = bounds.Shares;
        double sum = 0;
        for (int moment = 0; moment < shares.Length; moment++)
        {
            sum += shares[moment] * Math.Min(mostW[moment] + _beside[moment], unitW);
        }

        return sum;
    }
}
