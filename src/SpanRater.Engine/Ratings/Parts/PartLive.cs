namespace SpanRater;

/// <summary>One part of a live load as a part of the floor or a connection carries it: effect along the span × what of it acts across.</summary>
/// <param name="Along">Effect of the whole vehicle, lane or metre of crowd along the span [N or N·m].</param>
/// <param name="Across">What of it acts, presence in it: a share [-] or, of a moment across, an arm [m].</param>
/// <param name="Impact">Dynamic allowance on it.</param>
public abstract record PartLive(double Along, double Across, AppliedImpact Impact)
{
    /// <summary>Axles, or a lane load, on a stringer.</summary>
    /// <param name="Live">The load on the span.</param>
    /// <param name="Share">What one stringer takes of it.</param>
    /// <param name="IsLane">Whether it is the lane load's part, not that of the axles.</param>
    /// <param name="Along">Effect of the whole vehicle or lane [N or N·m].</param>
    /// <param name="Across">What one stringer takes [-].</param>
    /// <param name="Impact">Dynamic allowance on it.</param>
    public sealed record OnStringer(SpanLive Live, StringerTake Share, bool IsLane, double Along, double Across, AppliedImpact Impact) : PartLive(Along, Across, Impact)
    {
        /// <inheritdoc/>
        public override IEnumerable<Clause> Rests => Share.Table is { } table ? [table.Clause] : [];
    }

    /// <summary>A crowd or tracks on a part that spans along the bridge.</summary>
    /// <param name="Part">The load on the span: of a crowd for one metre of width.</param>
    /// <param name="Across">Width that the part carries [m], or its share of the tracks [-].</param>
    /// <param name="Impact">Dynamic allowance on it.</param>
    public sealed record OnStrip(LivePart Part, double Across, AppliedImpact Impact) : PartLive(Part.Force, Across, Impact);

    /// <summary>A reaction on a floorbeam, and the moment that it brings.</summary>
    /// <param name="Part">The reaction of a whole vehicle or lane, or of one metre of a crowd's width.</param>
    /// <param name="Placement">Where it stands across the deck.</param>
    /// <param name="Impact">Dynamic allowance on it.</param>
    public sealed record OnFloorbeam(LivePart Part, AcrossPlacement Placement, AppliedImpact Impact) : PartLive(Part.Force, Placement.Moment, Impact);

    /// <summary>A reaction on a trussed floorbeam, at its worst place on the influence line of an effect.</summary>
    /// <param name="Part">The reaction of a whole vehicle or lane, or of one metre of a crowd's width.</param>
    /// <param name="Placement">Where it stands across the deck; its moment is the line's: a share, or a moment with the compression in it.</param>
    /// <param name="Impact">Dynamic allowance on it.</param>
    public sealed record OnTrussed(LivePart Part, AcrossPlacement Placement, AppliedImpact Impact) : PartLive(Part.Force, Placement.Moment, Impact)
    {
        /// <summary>Whether its moment presses the lower side of the beam.</summary>
        public bool IsHogging { get; init; }

        /// <summary>Compression of the beam that goes with its moment, per reaction of one vehicle or lane, presence in it [-]; null where it is no moment, and of a crowd.</summary>
        public double? Pressing { get; init; }
    }

    /// <summary>A reaction on a floorbeam, and what of it comes to one end.</summary>
    /// <param name="Shared">The reaction and its share.</param>
    /// <param name="Ends">Equal pieces that share the end's force.</param>
    public sealed record AtEnd(SharedPart Shared, int Ends) : PartLive(Shared.Part.Force, Shared.Share / Ends, Shared.Impact);

    /// <summary>One wheel on a plank.</summary>
    /// <param name="Vehicle">The vehicle.</param>
    /// <param name="Wheel">The wheel on its span.</param>
    /// <param name="Brings">Moment or shear of the plank [N·m or N].</param>
    /// <param name="Presence">Presence factor [-].</param>
    /// <param name="Impact">Dynamic allowance on it.</param>
    public sealed record OnPlank(Vehicle Vehicle, PlankWheel Wheel, double Brings, double Presence, AppliedImpact Impact) : PartLive(Brings, Presence, Impact)
    {
        /// <summary>The same wheel of the vehicle made lighter or heavier, with the contact that it then has; the argument is the part of the vehicle.</summary>
        public required Func<double, OnPlank> Times { get; init; }

        /// <inheritdoc/>
        public override IEnumerable<Clause> Rests => Wheel.Clauses;
    }
    /// <summary>The effect without impact [N or N·m].</summary>
    public double Effect => Along * Across;

    /// <summary>A part of the load on a connection, by its influence line.</summary>
    /// <param name="Shared">The part and its share.</param>
    public sealed record InTruss(SharedPart Shared) : PartLive(Shared.Part.Force, Shared.Share, Shared.Impact);

    /// <summary>What the sharing of the load rests on.</summary>
    public virtual IEnumerable<Clause> Rests => [];

    /// <summary>The effect with impact [N or N·m].</summary>
    public double WithImpact => Effect * (1 + Impact.Value);
}
