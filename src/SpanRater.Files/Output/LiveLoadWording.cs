using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what a live load is, and what each part of it brings.</summary>
public static class LiveLoadWording
{
    /// <summary>A live load in one line.</summary>
    /// <param name="load">The live load.</param>
    /// <param name="units">The units to show.</param>
    public static string Describe(LiveLoad load, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(units);
        return load switch
        {
            Vehicle vehicle => VehiclesPage.Describe(vehicle, units),
            TrackedVehicle t => $"{Value(t.Weight, Quantity.Force, units)} on two tracks {Value(t.Length, Quantity.Length, units)} long, gauge {Value(t.Gauge, Quantity.Length, units)}",
            Crowd crowd => $"{Intensity(crowd.Intensity, units)} on every stretch that adds and on no other, {(crowd.Width is { } width ? $"{Value(width, Quantity.Length, units)} wide along the kerb" : "from kerb to kerb")}",
            Loading loading => Of(loading, units),
            _ => throw new ArgumentOutOfRangeException(nameof(load), load, "Every live load has a sentence."),
        };
    }

    /// <summary>What a loading is posted by, and beside it what it weighs, in US tons as postings are; null where it is not posted by a weight of its own.</summary>
    /// <param name="load">A live load.</param>
    public static string? PostedBy(LiveLoad load) => load is not Loading { PostedWeight: { } weight } loading
        ? null
        : $"posted by {PostingWording.TenthsOfTons(weight)} US ton{(loading.TrainWeight is { } train ? $", its {(loading.Trains.Count == 1 ? "train" : "heaviest train")} weighs {PostingWording.TenthsOfTons(train)} US ton" : ", it has no train")}";

    /// <summary>What a part is, in short.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units to show.</param>
    public static string Name(LivePart part, DisplayUnits units) => part switch
    {
        LivePart.Axles p => p.Vehicle.Name,
        LivePart.Tracks => "tracks",
        LivePart.OfLane p => $"lane load of {Value(p.Load.Intensity, Quantity.LineLoad, units)}",
        LivePart.PointOfLane p => $"{Value(p.Load, Quantity.Force, units)} with the lane load",
        LivePart.OfCrowd p => $"crowd of {Value(p.Load.Intensity, Quantity.Pressure, units)}",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "Every part has a name."),
    };

    /// <summary>Where a part stands along the deck.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units to show.</param>
    public static string Place(LivePart part, DisplayUnits units) => part switch
    {
        LivePart.Axles { Peak: var p } => $"front axle at {Value(p.Station, Quantity.Length, units)}, driving {Words.Of(p.Direction)}",
        LivePart.Tracks { Peak: var p } => Stretch(p.Stretch, units),
        LivePart.OfLane { Load: var l } => string.Join(" and ", l.Stretches.Select(s => Stretch(s, units))),
        LivePart.PointOfLane p => $"at {Value(p.Station, Quantity.Length, units)}",
        LivePart.OfCrowd { Load: var l } => string.Join(" and ", l.Stretches.Select(s => Stretch(s, units))),
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "Every part has a place."),
    };

    /// <summary>A stretch of the deck: "from 3.6 to 14.4 m".</summary>
    /// <param name="stretch">The stretch.</param>
    /// <param name="units">The units to show.</param>
    public static string Stretch(DeckStretch stretch, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(units);
        return $"from {Short(units.From(Quantity.Length, stretch.Left))} to {Value(stretch.Right, Quantity.Length, units)}";
    }

    private static string Of(Loading loading, DisplayUnits units)
    {
        string trains = loading.Trains.Count == 1 ? VehiclesPage.DescribeWithName(loading.Trains[0], units) : $"the worst of {string.Join(", ", loading.Trains.Select(t => t.Name))}";
        if (loading.Lane is not { } lane)
        {
            return trains;
        }

        string points = (lane.PointOnChords, lane.PointOnOthers) switch
        {
            (null, null) => "",
            ({ } chords, { } others) when chords != others => $" with {Value(chords, Quantity.Force, units)} on chords and {Value(others, Quantity.Force, units)} on everything else",
            _ => $" with {Value(lane.PointFor(isChord: true)!.Value, Quantity.Force, units)}",
        };
        string uniform = $"a lane load of {Intensity(lane.Intensity, units)}{points}{(lane.TakesImpact ? ", which takes impact" : "")}";
        return loading.Trains.Count == 0 ? uniform : lane.StandsAlone ? $"{trains}, or {uniform}, whichever is worse" : $"{trains}, together with {uniform}";
    }

    private static string Intensity(LoadIntensity intensity, DisplayUnits units) => intensity switch
    {
        ConstantLineLoad line => Value(line.Load, Quantity.LineLoad, units),
        ConstantPressure area => Value(area.Pressure, Quantity.Pressure, units),
        _ => $"an intensity by the loaded length ({intensity.Name})",
    };

    private static string Value(double si, Quantity quantity, DisplayUnits units) => $"{Short(units.From(quantity, si))} {units.Symbol(quantity)}";

    private static string Short(double value) => Math.Round(value, 3).ToString(CultureInfo.InvariantCulture);
}
