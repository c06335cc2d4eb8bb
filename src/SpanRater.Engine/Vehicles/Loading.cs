namespace SpanRater;

/// <summary>
/// A loading that is more than one train: of several vehicles the worst counts, or they follow one another as one train, with or
/// without a lane load. A lane load that brings its own concentrated load stands in place of the vehicles (H, HS); one without
/// acts together with each of them (HL-93, lane-type legal loads).
/// </summary>
/// <param name="Name">Name, unique among all catalogues in use.</param>
/// <param name="Class">What it is rated as.</param>
/// <param name="Trains">The vehicles of which the worst counts; one where they follow one another.</param>
/// <param name="Lane">Its lane load, or null.</param>
/// <param name="Source">Where it is from.</param>
public sealed record Loading(string Name, VehicleClass Class, IReadOnlyList<Vehicle> Trains, LaneLoad? Lane, string Source)
    : LiveLoad(Name, Class, Source)
{
    /// <summary>The loading belongs to decks longer than this [m]; null where it belongs to every deck.</summary>
    public double? DeckOver { get; init; }

    /// <summary>Whether it belongs to trusses with a support between their ends only.</summary>
    public bool ForInteriorSupports { get; init; }

    /// <summary>Weight that its rating factor is applied to in a posting [N]; null where there is none.</summary>
    public double? PostedWeight { get; init; }

    /// <summary>Weight of its heaviest train, times its part in it [N]; null where it has no train.</summary>
    public double? TrainWeight => Trains.Count == 0 ? null : Trains.Max(t => t.Train.Weight);

    /// <summary>Whether the loading belongs to a truss: by the length of its deck, and by its supports.</summary>
    /// <param name="truss">The truss.</param>
    public bool BelongsTo(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        return (DeckOver is not { } over || (truss.Stations.Count > 0 && truss.Stations[^1] - truss.Stations[0] > over))
            && (!ForInteriorSupports || truss.Joints.Count(j => j.Support is not null) > 2);
    }
}
