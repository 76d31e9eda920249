namespace Arraywright.Electrical;

/// <summary>Least squares in a few unknowns held between bounds.</summary>
/// <remarks>
/// D. W. Marquardt, J. Soc. Indust. Appl. Math. 11 (1963) 431, with his scaling of the diagonal, and an active set for the bounds:
/// an unknown at its bound that would leave it sits out the step.
/// </remarks>
internal static class LeastSquares
{
    private const int MostSteps = 500;
    private const double MostDamping = 1e18;

    /// <summary>Fills residuals and their derivatives (row by row, one row a residual) at given unknowns.</summary>
    public delegate void Model(ReadOnlySpan<double> unknowns, Span<double> residuals, Span<double> derivatives);

    /// <summary>Walks downhill from a start until no step lowers the sum of squares.</summary>
    /// <param name="model">The residuals; they may overflow away from the solution: such a step is refused.</param>
    /// <param name="count">Number of residuals.</param>
    /// <param name="unknowns">Start between the bounds; on return, the best found.</param>
    /// <param name="least">Lower bounds.</param>
    /// <param name="most">Upper bounds.</param>
    /// <returns>Sum of squares at the best found, and whether the walk ended by itself.</returns>
    public static (double SumOfSquares, bool Converged) Minimise(
        Model model, int count, Span<double> unknowns, ReadOnlySpan<double> least, ReadOnlySpan<double> most)
    {
        int n = unknowns.Length;
        double[] residuals = new double[count], derivatives = new double[count * n];
        double[] gradient = new double[n], normal = new double[n * n], damped = new double[n * n], step = new double[n], trial = new double[n];
        model(unknowns, residuals, derivatives);
        double sum = SumOfSquares(residuals);
        double damping = 1e-3;
        for (int walked = 0; walked < MostSteps; walked++)
        {
            Normal(residuals, derivatives, gradient, normal);
            bool lower = false;
            while (!lower)
            {
                Damp(normal, gradient, unknowns, least, most, damping, damped, step);
                if (Cholesky(damped, step))
                {
                    for (int i = 0; i < n; i++)
                    {
                        trial[i] = Math.Clamp(unknowns[i] + step[i], least[i], most[i]);
                    }

                    model(trial, residuals, derivatives);
                    lower = SumOfSquares(residuals) < sum;
                }

                damping = lower ? Math.Max(1e-14, damping * 0.1) : damping * 5;
                if (damping > MostDamping)
                {
                    return (sum, true);
                }
            }

            trial.CopyTo(unknowns);
            sum = SumOfSquares(residuals);
        }

        return (sum, false);
    }

    private static double SumOfSquares(ReadOnlySpan<double> residuals)
    {
        double sum = 0;
        foreach (double residual in residuals)
        {
            sum += residual * residual;
        }

        return sum;
    }

    /// <summary>JᵀJ and Jᵀr.</summary>
    private static void Normal(ReadOnlySpan<double> residuals, ReadOnlySpan<double> derivatives, Span<double> gradient, Span<double> normal)
    {
        int n = gradient.Length;
        gradient.Clear();
        normal.Clear();
        for (int row = 0; row < residuals.Length; row++)
        {
            ReadOnlySpan<double> d = derivatives.Slice(row * n, n);
            for (int i = 0; i < n; i++)
            {
                gradient[i] += d[i] * residuals[row];
                for (int j = 0; j < n; j++)
                {
                    normal[(i * n) + j] += d[i] * d[j];
                }
            }
        }
    }

    /// <summary>The damped equations of the next step; an unknown pressed against its bound gets the step 0.</summary>
    private static void Damp(
        ReadOnlySpan<double> normal, ReadOnlySpan<double> gradient, ReadOnlySpan<double> unknowns,
        ReadOnlySpan<double> least, ReadOnlySpan<double> most, double damping, Span<double> damped, Span<double> step)
    {
        int n = step.Length;
        normal.CopyTo(damped);
        for (int i = 0; i < n; i++)
        {
            step[i] = -gradient[i];
            damped[(i * n) + i] *= 1 + damping;
            bool pressed = (unknowns[i] <= least[i] && gradient[i] > 0) || (unknowns[i] >= most[i] && gradient[i] < 0);
            if (pressed || damped[(i * n) + i] == 0)
            {
                step[i] = 0;
                for (int j = 0; j < n; j++)
                {
                    damped[(i * n) + j] = 0;
                    damped[(j * n) + i] = 0;
                }

                damped[(i * n) + i] = 1;
            }
        }
    }

    /// <summary>Solves a symmetric system in place; false when it is not positive definite to working precision.</summary>
    private static bool Cholesky(Span<double> matrix, Span<double> vector)
    {
        int n = vector.Length;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double rest = matrix[(i * n) + j];
                for (int k = 0; k < j; k++)
                {
                    rest -= matrix[(i * n) + k] * matrix[(j * n) + k];
                }

                if (i == j && !(rest > 0))
                {
                    return false;
                }

                matrix[(i * n) + j] = i == j ? Math.Sqrt(rest) : rest / matrix[(j * n) + j];
            }
        }

        Substitute(matrix, vector);
        return true;
    }

    /// <summary>Forward then backward through the triangle.</summary>
    private static void Substitute(ReadOnlySpan<double> triangle, Span<double> vector)
    {
        int n = vector.Length;
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < i; k++)
            {
                vector[i] -= triangle[(i * n) + k] * vector[k];
            }

            vector[i] /= triangle[(i * n) + i];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            for (int k = i + 1; k < n; k++)
            {
                vector[i] -= triangle[(k * n) + i] * vector[k];
            }

            vector[i] /= triangle[(i * n) + i];
        }
    }
}
