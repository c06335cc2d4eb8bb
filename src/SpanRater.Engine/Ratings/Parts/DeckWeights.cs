namespace SpanRater;

/// <summary>What is not known of the weight of the floor, without which no part of it is rated.</summary>
internal static class DeckWeights
{
    /// <summary>What is not known of the weight of the deck.</summary>
    public static IEnumerable<MissingDatum> Missing(Floor floor) => floor.Components is null || floor.WearingSurface is null
        ? [new MissingDatum.DeckWeight(floor.Components is null, floor.WearingSurface is null)]
        : [];

    /// <summary>What is not known of the weight of the beams that come onto a floorbeam, or through it onto its hangers.</summary>
    public static IEnumerable<MissingDatum> MissingOfBeams(Floor floor, FloorPart part)
    {
        IEnumerable<MissingDatum> Of(PartKind kind, IEnumerable<(string Name, double Weight)> beams) =>
            floor.NotGiven.Contains(kind) ? [new MissingDatum.BeamWeight(kind, null)] : beams.Where(b => b.Weight == 0).Select(b => new MissingDatum.BeamWeight(kind, b.Name));
        IEnumerable<MissingDatum> stringers = Of(PartKind.Stringer, floor.Stringers.Select(s => (s.Name, s.OwnWeight)));
        return part is HangerPart hanger
            ? stringers.Concat(Of(PartKind.Floorbeam, floor.Parts.OfType<FloorbeamPart>().Where(b => b.At.Intersect(hanger.At).Any()).Select(b => (b.Name, b.OwnWeight))))
            : stringers;
    }
}
