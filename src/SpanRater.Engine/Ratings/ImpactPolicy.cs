namespace SpanRater;

/// <summary>How even the riding surface is, approaches and joints included.</summary>
public enum RidingSurface
{
    /// <summary>Smooth at approaches, deck and joints.</summary>
    Smooth,

    /// <summary>Minor deviations or depressions.</summary>
    MinorDeviations,

    /// <summary>Anything worse, or not known.</summary>
    Rough,
}

/// <summary>Why an allowance is what it is.</summary>
public enum ImpactReason
{
    /// <summary>The method's own.</summary>
    OfMethod,

    /// <summary>Given in place of the method's own.</summary>
    Given,

    /// <summary>By the condition of the riding surface.</summary>
    BySurface,

    /// <summary>None, since vehicles are taken to cross at crawl speed.</summary>
    AtCrawl,

    /// <summary>None on this class of vehicles.</summary>
    NoneOnClass,

    /// <summary>None on timber.</summary>
    NoneOnTimber,

    /// <summary>None on this lane load.</summary>
    NoneOnLane,
}

/// <summary>A dynamic allowance and why it is so.</summary>
/// <param name="Value">The allowance [-].</param>
/// <param name="Reason">Why.</param>
public readonly record struct AppliedImpact(double Value, ImpactReason Reason);

/// <summary>
/// The dynamic allowance of a part of the live load on a member. What never takes one comes first: crowds, timber, lane loads that
/// stand for no truck; then what the bridge gives, crawl speed, the riding surface, and the method's own.
/// </summary>
/// <param name="method">The method.</param>
/// <param name="settings">What the bridge says.</param>
/// <param name="deckLength">Length of the deck [m].</param>
internal sealed class ImpactPolicy(RatingMethod method, RatingSettings settings, double deckLength)
{
    /// <summary>The policy of a bridge by a method.</summary>
    public static ImpactPolicy Of(Bridge bridge, RatingMethod method) => new(method, bridge.Rating, bridge.Truss.Stations[^1] - bridge.Truss.Stations[0]);

    /// <summary>The allowance of a part of a live load.</summary>
    /// <param name="vehicleClass">Class of the live load.</param>
    /// <param name="member">The member.</param>
    /// <param name="part">The part.</param>
    public AppliedImpact Of(VehicleClass vehicleClass, Member member, LivePart part) => Of(vehicleClass, member.IsTimber, member.IsLongitudinal, part);

    /// <summary>The same on any part of the bridge.</summary>
    /// <param name="vehicleClass">Class of the live load.</param>
    /// <param name="isTimber">Whether the part is of timber.</param>
    /// <param name="isLongitudinal">Whether it is a member of a truss that runs along the span.</param>
    /// <param name="part">The part of the live load.</param>
    public AppliedImpact Of(VehicleClass vehicleClass, bool isTimber, bool isLongitudinal, LivePart part) => part switch
    {
        LivePart.OfCrowd => new AppliedImpact(0, ImpactReason.NoneOnClass),
        LivePart.OfLane { Lane: { } lane } => OfLane(vehicleClass, isTimber, lane, part.LoadedLength, isLongitudinal),
        LivePart.PointOfLane { Lane: { } lane } => OfLane(vehicleClass, isTimber, lane, part.LoadedLength, isLongitudinal),
        _ => Of(vehicleClass, isTimber, isLongitudinal, part.LoadedLength),
    };

    /// <summary>The allowance of a lane load.</summary>
    public AppliedImpact OfLane(VehicleClass vehicleClass, bool isTimber, LaneLoad lane, double loadedLength, bool isLongitudinal = false) =>
        lane.TakesImpact ? Of(vehicleClass, isTimber, isLongitudinal, loadedLength) : new AppliedImpact(0, ImpactReason.NoneOnLane);

    /// <summary>The allowance of a vehicle.</summary>
    /// <param name="vehicleClass">Class of the vehicle.</param>
    /// <param name="member">The member.</param>
    /// <param name="loadedLength">Length of the stretch of its line that holds the vehicle [m].</param>
    public AppliedImpact Of(VehicleClass vehicleClass, Member member, double loadedLength) => Of(vehicleClass, member.IsTimber, member.IsLongitudinal, loadedLength);

    /// <summary>The allowance of a vehicle on any part of the bridge.</summary>
    public AppliedImpact Of(VehicleClass vehicleClass, bool isTimber, bool isLongitudinal, double loadedLength)
    {
        if (isTimber)
        {
            return new AppliedImpact(0, ImpactReason.NoneOnTimber);
        }

        if (vehicleClass == VehicleClass.Crowd)
        {
            return new AppliedImpact(0, ImpactReason.NoneOnClass);
        }

        if (settings.Impact is { } given)
        {
            return new AppliedImpact(given, ImpactReason.Given);
        }

        if (!method.RuleOf(vehicleClass).HasImpact)
        {
            return new AppliedImpact(0, ImpactReason.NoneOnClass);
        }

        if (settings.CrawlSpeed is not null)
        {
            return new AppliedImpact(0, ImpactReason.AtCrawl);
        }

        return settings.Surface is { } surface && vehicleClass != VehicleClass.Design && isLongitudinal
            && deckLength > method.SurfaceCountsAbove && method.ImpactOn(surface) is { } bySurface
            ? new AppliedImpact(bySurface, ImpactReason.BySurface)
            : new AppliedImpact(method.Impact(loadedLength), ImpactReason.OfMethod);
    }
}
