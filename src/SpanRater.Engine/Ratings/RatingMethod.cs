namespace SpanRater;

/// <summary>How a rating row takes part in naming what governs.</summary>
public enum Governance
{
    /// <summary>The lowest of these rows governs.</summary>
    Governs,

    /// <summary>Governs only where no row of the first kind was rated.</summary>
    GovernsForWantOfOthers,

    /// <summary>Has its own governing row.</summary>
    Inventory,
}

/// <summary>A level at which a class of vehicles is rated.</summary>
/// <param name="Name">inventory, operating, legal, emergency or permit.</param>
/// <param name="LiveFactor">Factor on the live load [-]; null where a datum for it is missing.</param>
/// <param name="Governance">How its rows take part in naming what governs.</param>
public sealed record RatingLevel(string Name, double? LiveFactor, Governance Governance);

/// <summary>Factors on dead load, by whether it adds to the effect sought or relieves it [-].</summary>
/// <param name="Components">Components, adding.</param>
/// <param name="WearingSurface">Wearing surface, adding.</param>
/// <param name="RelievingComponents">Components, relieving.</param>
/// <param name="RelievingWearingSurface">Wearing surface, relieving.</param>
public sealed record DeadFactors(double Components, double WearingSurface, double RelievingComponents, double RelievingWearingSurface)
{
    /// <summary>The factor on the components' dead load.</summary>
    /// <param name="effect">Its effect, positive in the sense rated.</param>
    public double OnComponents(double effect) => effect < 0 ? RelievingComponents : Components;

    /// <summary>The factor on the wearing surface.</summary>
    /// <param name="effect">Its effect, positive in the sense rated.</param>
    public double OnWearingSurface(double effect) => effect < 0 ? RelievingWearingSurface : WearingSurface;
}

/// <summary>What holds for a class of vehicles in every method.</summary>
/// <param name="HasImpact">False where no dynamic allowance is applied.</param>
/// <param name="MostLanes">Lanes loaded at once; null for as many as fit.</param>
/// <param name="HasPresence">False where no presence factor is applied.</param>
public sealed record ClassRule(bool HasImpact, int? MostLanes, bool HasPresence);

/// <summary>
/// A rating method is one object: levels, factors, impact, presence and which capacity it takes, each with its source.
/// Nothing else asks which method it is; a further method is a further file and a line in <see cref="All"/>. The method of the user's
/// own factors, <see cref="PartialFactorRating"/>, is made from them.
/// </summary>
public abstract class RatingMethod
{
    /// <summary>The methods whose factors are built in.</summary>
    public static IReadOnlyList<RatingMethod> All { get; } =
        [new LoadAndResistanceFactorRating(), new LoadFactorRating(), new AllowableStressRating()];

    /// <summary>Short name: LRFR, LFR, ASR or partial factors.</summary>
    public abstract string Name { get; }

    /// <summary>The name in words.</summary>
    public abstract string FullName { get; }

    /// <summary>What a given capacity holds already.</summary>
    public abstract CapacityMeaning GivenCapacityMeaning { get; }

    /// <summary>The clauses that the equation and the factors are from.</summary>
    public abstract IReadOnlyList<Clause> Basis { get; }

    /// <summary>The same in one line, with what is from memory; of a method of the user's own what the user says.</summary>
    public virtual string Source => Clauses.Sources(Basis);

    /// <summary>The user's own factors, of which the method is made; null where its factors are built in.</summary>
    public virtual PartialFactors? OwnFactors => null;

    /// <summary>Factors on dead load.</summary>
    public abstract DeadFactors DeadFactors { get; }

    /// <summary>Presence factor by number of loaded lanes, from one lane up; the last holds for more [-].</summary>
    protected abstract IReadOnlyList<double> PresenceFactors { get; }

    /// <summary>The method of that short name, whatever its case, or null.</summary>
    /// <param name="name">LRFR, LFR or ASR.</param>
    public static RatingMethod? Find(string name) => All.FirstOrDefault(m => string.Equals(m.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Deck length above which legal loads have a lane-type form as well [m]; null where the method has none.</summary>
    public virtual double? LaneTypeLegalLoadAbove => null;

    /// <summary>Whether a posting rule belongs to the method.</summary>
    public virtual bool HasPosting => true;

    /// <summary>The published table of what one stringer takes of a wheel.</summary>
    public virtual DistributionTable Distribution => DistributionTable.WheelLines;

    /// <summary>How the safe load of a legal type follows from its factor.</summary>
    public virtual PostingRule LegalPosting => PostingRule.FactorTimesWeight;

    /// <summary>The levels at which a class of vehicles is rated.</summary>
    /// <param name="vehicleClass">The class.</param>
    /// <param name="settings">What the bridge says: truck traffic, permit factor.</param>
    public abstract IReadOnlyList<RatingLevel> LevelsOf(VehicleClass vehicleClass, RatingSettings settings);

    /// <summary>The method's own dynamic allowance [-].</summary>
    /// <param name="loadedLength">Length of the stretch of the member's own line that holds the vehicle [m].</param>
    public abstract double Impact(double loadedLength);

    /// <summary>
    /// Deck length above which the riding surface may lower the allowance of members that run along the span [m]; null where the
    /// method does not ask for the surface.
    /// </summary>
    public virtual double? SurfaceCountsAbove => null;

    /// <summary>The allowance by the riding surface [-]; null where the method's own holds.</summary>
    /// <param name="surface">The riding surface.</param>
    public virtual double? ImpactOn(RidingSurface surface) => null;

    /// <summary>The given capacity that the rating equation takes.</summary>
    /// <param name="sense">Sense rated.</param>
    /// <param name="level">Level rated.</param>
    public abstract GivenCapacity CapacityFor(Sense sense, RatingLevel level);

    /// <summary>How the method makes the strength of members at a level from sections and materials; null where capacities are given.</summary>
    /// <param name="level">The level.</param>
    public virtual StrengthRules? StrengthsAt(RatingLevel level) => null;

    /// <summary>Whether a member carries more at one level than at another.</summary>
    public virtual bool StrengthGoesByLevel => false;

    /// <summary>Whether the live-load factor of a class rests on an unknown truck traffic.</summary>
    /// <param name="vehicleClass">The class.</param>
    public virtual bool UsesTruckTraffic(VehicleClass vehicleClass) => false;

    /// <summary>The clause of a load's live-load factor that the user is asked to look up; null where there is no doubt of it.</summary>
    /// <param name="load">The vehicle, loading or crowd.</param>
    public virtual Clause? DoubtOf(LiveLoad load) => null;

    /// <summary>Why a class has no live-load factor.</summary>
    /// <param name="vehicleClass">The class.</param>
    public virtual NotRatedReason WithoutLiveFactor(VehicleClass vehicleClass) => new NotRatedReason.NoPermitFactor();

    /// <summary>Presence factor [-].</summary>
    /// <param name="lanes">Loaded lanes, at least one.</param>
    public double Presence(int lanes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lanes, 1);
        return PresenceFactors[Math.Min(lanes, PresenceFactors.Count) - 1];
    }

    /// <summary>Impact, lanes and presence of a class.</summary>
    /// <param name="vehicleClass">The class.</param>
    public virtual ClassRule RuleOf(VehicleClass vehicleClass) => vehicleClass switch
    {
        VehicleClass.Emergency or VehicleClass.Farm => new ClassRule(HasImpact: true, MostLanes: 1, HasPresence: true),
        VehicleClass.Permit => new ClassRule(HasImpact: true, MostLanes: 1, HasPresence: false),
        VehicleClass.Maintenance => new ClassRule(HasImpact: false, MostLanes: 1, HasPresence: true),
        VehicleClass.Crowd => new ClassRule(HasImpact: false, MostLanes: 1, HasPresence: false),
        _ => new ClassRule(HasImpact: true, MostLanes: null, HasPresence: true),
    };

    /// <summary>Dead-load factors with what the bridge sets in their place.</summary>
    /// <param name="settings">What the bridge says.</param>
    public DeadFactors DeadFactorsWith(RatingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return DeadFactors with
        {
            RelievingComponents = settings.RelievingComponents ?? DeadFactors.RelievingComponents,
            RelievingWearingSurface = settings.RelievingWearingSurface ?? DeadFactors.RelievingWearingSurface,
        };
    }

    /// <summary>
    /// 50/(L + 125), at most 0.30, L in feet. Source: AASHTO Standard Specifications for Highway Bridges, 17th ed. (2002),
    /// 3.8.2.1, from memory.
    /// </summary>
    /// <param name="loadedLength">Loaded length [m].</param>
    protected static double ImpactByLength(double loadedLength) => Math.Min(0.30, 50 / ((loadedLength / 0.3048) + 125));

    /// <summary>Every class at inventory and operating level.</summary>
    /// <param name="inventory">Factor on the live load at inventory level [-].</param>
    /// <param name="operating">Factor on the live load at operating level [-].</param>
    /// <param name="governance">How the operating rows take part in naming what governs.</param>
    protected static IReadOnlyList<RatingLevel> InventoryAndOperating(double inventory, double operating, Governance governance = Governance.Governs) =>
        [new("inventory", inventory, Governance.Inventory), new("operating", operating, governance)];
}
