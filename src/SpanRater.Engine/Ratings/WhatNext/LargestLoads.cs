namespace SpanRater;

/// <summary>The largest load of a kind that still passes.</summary>
/// <param name="Load">What was rated: an axle of a unit weight, a crowd of a unit pressure, or the vehicle itself.</param>
/// <param name="Level">Name of the level.</param>
/// <param name="Lowest">The row that sets it; null where nothing is rated.</param>
/// <param name="IsAtMost">Whether it may be less, since members that are loaded have no capacity.</param>
/// <param name="Reason">Why there is none; null where there is one.</param>
public sealed record LargestLoad(LiveLoad Load, string Level, RatingRow? Lowest, bool IsAtMost, NotRatedReason? Reason)
{
    /// <summary>How much of the load rated passes [-]; null where there is none.</summary>
    public double? Scale => Lowest?.Passes;
}

/// <summary>
/// The largest crowd, the largest single axle and each vehicle scaled until the lowest factor is 1, by the levels of the method. With them alone on the bridge:
/// one axle stands in one lane, a crowd where it is worst.
/// </summary>
public sealed class LargestLoads
{
    /// <summary>The axle that is rated, 10 kN.</summary>
    public const double UnitAxle = 10_000;

    /// <summary>The crowd that is rated, 1 kPa.</summary>
    public const double UnitPressure = 1_000;

    /// <summary>What the axle is called.</summary>
    public const string AxleName = "single axle";

    /// <summary>What the crowd is called.</summary>
    public const string CrowdName = "crowd";

    private LargestLoads(BridgeRating rating, IReadOnlyList<LiveLoad> loads)
    {
        Rating = rating;
        Loads = [.. loads.SelectMany(l => rating.Method.LevelsOf(l.Class, rating.Bridge.Rating).Select(level => Of(rating, l, level.Name)))];
    }

    /// <summary>The rating of the loads.</summary>
    public BridgeRating Rating { get; }

    /// <summary>What passes: the single axle, the crowd, then the vehicles in the order asked, each at its levels.</summary>
    public IReadOnlyList<LargestLoad> Loads { get; }

    /// <summary>The largest loads of a bridge.</summary>
    /// <param name="bridge">The bridge; it must have the dead load case DC.</param>
    /// <param name="method">The method.</param>
    /// <param name="vehicles">The vehicles to scale.</param>
    /// <param name="stop">Ends the work between two vehicles.</param>
    /// <exception cref="OperationCanceledException">It was told to stop.</exception>
    public static Outcome<LargestLoads> Of(Bridge bridge, RatingMethod method, IReadOnlyList<LiveLoad> vehicles, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(vehicles);
        LiveLoad[] loads = [Axle(AxleClass(vehicles)), People(), .. vehicles];
        return BridgeRater.Rate(bridge, method, loads, stop).TryGet(out BridgeRating? rating, out Refusal? refusal) ? new LargestLoads(rating, loads) : refusal;
    }

    /// <summary>One axle of 10 kN, its wheels 6 ft apart.</summary>
    /// <param name="vehicleClass">The class that it is rated as.</param>
    public static Vehicle Axle(VehicleClass vehicleClass) => new(AxleName, vehicleClass, new AxleTrain([UnitAxle], []), Vehicle.StandardGauge, "10 kN, scaled");

    /// <summary>A crowd of 1 kPa over the whole roadway, where it is worst.</summary>
    public static Crowd People() => new(CrowdName, VehicleClass.Crowd, new ConstantPressure(UnitPressure, "1 kPa, scaled"), null, "1 kPa, scaled");

    /// <summary>The class that a single axle is rated as: farm, one lane as legal; where no road vehicle is asked for, maintenance.</summary>
    /// <param name="vehicles">The vehicles asked for.</param>
    public static VehicleClass AxleClass(IReadOnlyList<LiveLoad> vehicles) =>
        vehicles.Any(v => v.Class is not (VehicleClass.Maintenance or VehicleClass.Crowd)) || vehicles.Count == 0 ? VehicleClass.Farm : VehicleClass.Maintenance;

    private static LargestLoad Of(BridgeRating rating, LiveLoad load, string level)
    {
        RatingRow[] rows = [.. rating.Rows.Where(r => r.Vehicle == load && r.Level.Name == level)];
        NotRatedReason? reason = rows.FirstOrDefault(r => r.IsAboutItsVehicle)?.Reason;
        RatingRow? lowest = reason is null ? rows.Where(r => r.Passes is not null).MinBy(r => Math.Round(r.Passes!.Value, 9)) : null;
        return new LargestLoad(load, level, lowest, rows.Any(r => r.LacksCapacity), reason);
    }
}
