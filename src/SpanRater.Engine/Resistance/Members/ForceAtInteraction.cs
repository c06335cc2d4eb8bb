using MathNet.Numerics.RootFinding;

namespace SpanRater;

/// <summary>Finds the force at which an interaction of force and moment reaches its limit, the moment growing with the force.</summary>
internal static class ForceAtInteraction
{
    private const double Accuracy = 1e-14;
    private const int MostSteps = 500;

    /// <summary>The one force in (0, most] at which an excess passes from below 0 to above.</summary>
    /// <param name="excess">Interaction less its limit, in any measure that keeps its sign and is continuous.</param>
    /// <param name="most">A force at which the excess is not negative [N].</param>
    /// <exception cref="ArithmeticException">No force is found; the excess is not what was said of it.</exception>
    public static double Find(Func<double, double> excess, double most)
    {
        if (!(excess(most) > 0))
        {
            return most;
        }

        return Brent.TryFindRoot(part => excess(part * most), 0, 1, Accuracy, MostSteps, out double root)
            ? root * most
            : throw new ArithmeticException("The force at which the interaction reaches its limit was not found.");
    }
}
