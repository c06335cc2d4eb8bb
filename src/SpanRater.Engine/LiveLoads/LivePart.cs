namespace SpanRater;

/// <summary>One part of what a live load brings to an effect: axles, a patch, a lane load, its concentrated load, or a crowd.</summary>
/// <param name="Force">
/// Signed effect, tension positive [N]: of the whole vehicle or of one lane on one truss, without impact; of a crowd that of one
/// metre of its width [N/m].
/// </param>
/// <param name="LoadedLength">Length of the stretch of the line that the formula for impact takes [m].</param>
public abstract record LivePart(double Force, double LoadedLength)
{
    /// <summary>The axles of a vehicle.</summary>
    /// <param name="Vehicle">The vehicle.</param>
    /// <param name="Peak">Where it stood.</param>
    /// <param name="LoadedLength">Length of the stretch that holds the vehicle [m].</param>
    public sealed record Axles(Vehicle Vehicle, Peak Peak, double LoadedLength) : LivePart(Peak.Force, LoadedLength);

    /// <summary>The tracks of a tracked vehicle.</summary>
    /// <param name="Vehicle">The vehicle.</param>
    /// <param name="Peak">Where they lay.</param>
    /// <param name="LoadedLength">Length of the stretch that holds the tracks [m].</param>
    public sealed record Tracks(TrackedVehicle Vehicle, PatchPeak Peak, double LoadedLength) : LivePart(Peak.Force, LoadedLength);

    /// <summary>The uniform load of a lane.</summary>
    /// <param name="Lane">The lane load.</param>
    /// <param name="Load">Its intensity and where it lies.</param>
    public sealed record OfLane(LaneLoad Lane, AdverseLoad Load) : LivePart(Load.Effect, Load.Length);

    /// <summary>The concentrated load that goes with a lane load.</summary>
    /// <param name="Lane">The lane load.</param>
    /// <param name="Load">The load [N].</param>
    /// <param name="Station">Where it stands [m].</param>
    /// <param name="Ordinate">Ordinate there [-].</param>
    /// <param name="LoadedLength">All adverse length, as of the lane load [m].</param>
    public sealed record PointOfLane(LaneLoad Lane, double Load, double Station, double Ordinate, double LoadedLength) : LivePart(Load * Ordinate, LoadedLength);

    /// <summary>A crowd.</summary>
    /// <param name="Crowd">The crowd.</param>
    /// <param name="Load">Its intensity and where it stands.</param>
    public sealed record OfCrowd(Crowd Crowd, AdverseLoad Load) : LivePart(Load.Effect, Load.Length);
}

/// <summary>What acts together, for one effect in one sense.</summary>
/// <param name="Parts">The parts; at least one.</param>
public sealed record LiveEffect(IReadOnlyList<LivePart> Parts)
{
    /// <summary>Sum of the parts, each whole, on one truss, without impact [N].</summary>
    public double Force => Parts.Sum(p => p.Force);
}
