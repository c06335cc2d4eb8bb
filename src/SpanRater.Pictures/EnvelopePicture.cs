using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Largest tension and compression of each member as bars on either side of zero, compression hatched.</summary>
public static class EnvelopePicture
{
    /// <summary>Draws the bars, role by role, each with its figure.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="forces">Largest tension and compression by member, tension positive [N]; null where there is none.</param>
    /// <param name="pointedOut">Position of the member that is pointed out; null for none.</param>
    /// <param name="units">Units shown.</param>
    public static Drawing Of(Truss truss, IReadOnlyList<(double? Tension, double? Compression)> forces, int? pointedOut, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(forces);
        ArgumentNullException.ThrowIfNull(units);
        return EnvelopeBars.Of(truss, forces, pointedOut, units).Drawing;
    }
}
