namespace SpanRater;

/// <summary>Something assumed, or done in place of what was asked, that the reader of a rating must see.</summary>
public abstract record Stamp
{
    private Stamp()
    {
    }

    /// <summary>There is no wearing surface: case DW is not given.</summary>
    public sealed record NoWearingSurface() : Stamp;

    /// <summary>Truck traffic is not given: the live-load factor for the heaviest traffic is used.</summary>
    /// <param name="LiveFactor">The factor used [-].</param>
    public sealed record UnknownTruckTraffic(double LiveFactor) : Stamp;

    /// <summary>Given capacities are used as they stand.</summary>
    /// <param name="Meaning">What they are.</param>
    public sealed record GivenCapacities(CapacityMeaning Meaning) : Stamp;

    /// <summary>The floor brings more dead load to a panel point than the dead load case has there: one of the two is wrong.</summary>
    /// <param name="Joint">Name of the panel point.</param>
    /// <param name="OfFloor">What the floor's parts bring to one truss there [N].</param>
    /// <param name="OfCase">What case DC of the truss has there [N].</param>
    public sealed record FloorOutweighsTruss(string Joint, double OfFloor, double OfCase) : Stamp;

    /// <summary>The dynamic allowance was given and replaces the method's own.</summary>
    /// <param name="Impact">The allowance [-].</param>
    /// <param name="OfMethod">The most that the method's own comes to [-].</param>
    public sealed record GivenImpact(double Impact, double OfMethod) : Stamp;

    /// <summary>Vehicles are taken to cross at crawl speed, without impact.</summary>
    /// <param name="Enforced">How that is enforced, as given.</param>
    public sealed record CrawlSpeed(string Enforced) : Stamp;

    /// <summary>The riding surface lowers the dynamic allowance of members that run along the span.</summary>
    /// <param name="Surface">The riding surface, as given.</param>
    /// <param name="Impact">The allowance [-].</param>
    public sealed record RidingSurfaceCounts(RidingSurface Surface, double Impact) : Stamp;

    /// <summary>A riding surface is given, and no allowance changes by it.</summary>
    /// <param name="Surface">The riding surface, as given.</param>
    public sealed record RidingSurfaceWithoutEffect(RidingSurface Surface) : Stamp;

    /// <summary>Wheels may stand nearer to a kerb, or are kept farther from it, than the standard has it.</summary>
    /// <param name="WheelToKerb">Distance given [m].</param>
    public sealed record GivenWheelToKerb(double WheelToKerb) : Stamp;

    /// <summary>Members of timber take no impact.</summary>
    public sealed record NoImpactOnTimber() : Stamp;

    /// <summary>The share of a truss was given and replaces the lever rule.</summary>
    /// <param name="Share">The share [-].</param>
    /// <param name="Reason">Why it was given; null where no reason is given.</param>
    public sealed record GivenShare(double Share, string? Reason) : Stamp;

    /// <summary>A vehicle stands nearer to the kerb than asked, since it does not fit otherwise.</summary>
    /// <param name="Vehicle">The vehicle.</param>
    /// <param name="WheelToKerb">Distance used [m].</param>
    public sealed record NearerToKerb(string Vehicle, double WheelToKerb) : Stamp;

    /// <summary>The roadway has more lanes than vehicles of this width fit abreast: fewer were loaded.</summary>
    /// <param name="Vehicle">The vehicle.</param>
    /// <param name="Lanes">Lanes of the roadway.</param>
    /// <param name="Loaded">Vehicles that fit abreast.</param>
    public sealed record FewerAbreast(string Vehicle, int Lanes, int Loaded) : Stamp;

    /// <summary>Emergency vehicles are rated alone on the bridge.</summary>
    public sealed record EmergencyAlone() : Stamp;

    /// <summary>Long decks also take a lane-type legal load, which was not asked for.</summary>
    /// <param name="DeckLength">Length of the deck [m].</param>
    public sealed record NoLaneTypeLegalLoad(double DeckLength) : Stamp;

    /// <summary>A live-load factor rests on a clause in doubt, and nobody has looked it up.</summary>
    /// <param name="Clause">The clause.</param>
    /// <param name="Value">The factor used [-].</param>
    public sealed record DefaultToConfirm(Clause Clause, double Value) : Stamp;

    /// <summary>The live-load factor of emergency vehicles was given and replaces the one in doubt.</summary>
    /// <param name="Given">The factor used [-].</param>
    /// <param name="Own">The method's own [-].</param>
    public sealed record GivenEmergencyFactor(double Given, double Own) : Stamp;

    /// <summary>A live-load factor rests on a clause in doubt, and the user says that it has been looked up.</summary>
    /// <param name="Clause">The clause.</param>
    /// <param name="Value">The factor used [-].</param>
    public sealed record ConfirmedByUser(Clause Clause, double Value) : Stamp;

    /// <summary>A strength is assumed by year, since it is not known.</summary>
    /// <param name="Material">Name of the material.</param>
    /// <param name="Kind">What it is.</param>
    /// <param name="Built">Year of building; null where the row holds for any year.</param>
    /// <param name="Row">The row.</param>
    public sealed record StrengthByYear(string Material, MaterialKind Kind, int? Built, PublishedStrength Row) : Stamp;

    /// <summary>A timber has values of its own, which are taken as they are for its service and size.</summary>
    /// <param name="Material">Name of the material.</param>
    /// <param name="IsWet">Whether it is wet in service.</param>
    public sealed record OwnTimberValues(string Material, bool IsWet) : Stamp;

    /// <summary>The condition is not given: the condition factor is that of a poor one.</summary>
    /// <param name="Factor">The factor [-].</param>
    public sealed record ConditionNotGiven(double Factor) : Stamp;

    /// <summary>Heads of eyebars are not measured: their bodies alone are rated.</summary>
    /// <param name="Members">Names of the members.</param>
    public sealed record HeadsNotMeasured(string Members) : Stamp;

    /// <summary>Members more slender than the standard allows; no strength is taken off for it.</summary>
    /// <param name="Members">Their names.</param>
    /// <param name="Worst">The most slender of them.</param>
    public sealed record TooSlender(string Members, SlendernessWarning Worst) : Stamp;

    /// <summary>What the deck weighs on the parts of the floor.</summary>
    /// <param name="Components">Weight per area of the deck [Pa].</param>
    /// <param name="WearingSurface">Weight per area of the wearing surface [Pa].</param>
    /// <param name="Edge">Weight per length of kerb and railing on each side [N/m]; null where none is given.</param>
    /// <param name="Source">Where they are from.</param>
    public sealed record FloorWeights(double Components, double WearingSurface, double? Edge, string Source) : Stamp;

    /// <summary>How many stringers there are is not given, and their own weight on floorbeams is that of as many as fit.</summary>
    /// <param name="Part">Name of the stringers.</param>
    public sealed record StringersNotCounted(string Part) : Stamp;

    /// <summary>How trussed floorbeams are taken, and what is not counted of them.</summary>
    /// <param name="Parts">Their names.</param>
    public sealed record TrussedFloorbeams(string Parts) : Stamp;

    /// <summary>Deck, stringers and connections are rated with an emergency vehicle alone, though the roadway has room for another beside it.</summary>
    public sealed record EmergencyAloneOnParts() : Stamp;

    /// <summary>Posts and floorbeams alone hold the top joints of a pony truss sideways, and are not rated for it.</summary>
    public sealed record PonyFramesNotRated() : Stamp;

    /// <summary>Rust pushes parts of a member apart, and no number follows from it.</summary>
    /// <param name="Member">Its name.</param>
    /// <param name="Truss">Name of the truss; null where it is on all of them.</param>
    /// <param name="Place">Where; empty where that is not said.</param>
    public sealed record PackRust(string Member, string? Truss, string Place) : Stamp;

    /// <summary>Slack pieces of a member are counted as carrying nothing.</summary>
    /// <param name="Member">Its name.</param>
    /// <param name="Truss">Name of the truss; null where it is on all of them.</param>
    /// <param name="Count">How many.</param>
    public sealed record SlackPieces(string Member, string? Truss, int Count) : Stamp;

    /// <summary>A capacity that counts rests on a clause in doubt, and nobody has looked it up.</summary>
    /// <param name="Clause">The clause.</param>
    public sealed record StrengthToConfirm(Clause Clause) : Stamp;

    /// <summary>A capacity that counts rests on a clause in doubt, and the user says that it has been looked up.</summary>
    /// <param name="Clause">The clause.</param>
    public sealed record StrengthConfirmedByUser(Clause Clause) : Stamp;

    /// <summary>Impact is left out for a class of vehicles.</summary>
    /// <param name="Class">The class.</param>
    public sealed record NoImpact(VehicleClass Class) : Stamp;
}
