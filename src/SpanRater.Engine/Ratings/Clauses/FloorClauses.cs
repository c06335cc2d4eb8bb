namespace SpanRater;

/// <summary>Clauses of how wheels come to the parts of a floor.</summary>
public static class FloorClauses
{
    /// <summary>Wheel lines on an interior stringer, S/D in feet, one lane and more: plank; nail laminated 4 in, 6 in; glued laminated 4 in, 6 in on glued stringers, 6 in on steel; concrete on steel, timber, concrete; steel grid below 4 in, above; corrugated steel.</summary>
    public static Clause WheelLines { get; } = new(
        "wheel lines on stringers", Standard.StandardSpecifications, "Table 3.23.1", "wheel lines on an interior stringer, S/D in feet, one lane and more: plank; nail laminated 4 in, 6 in; glued laminated 4 in, 6 in on glued stringers, 6 in on steel; concrete on steel, timber, concrete; steel grid below 4 in, above; corrugated steel",
        "4.0, 3.75; 4.5, 4.0, 5.0, 4.25; 4.5, 4.0, 6.0, 5.0, 5.25, 4.5; 7.0, 5.5, 6.0, 5.0, 6.5, 6.0; 4.5, 4.0, 6.0, 5.0; 5.5, 4.5", ClauseMark.Memory);

    /// <summary>Lanes on an interior stringer, presence in them, S/D in feet, one lane and more: plank; nail laminated; glued laminated.</summary>
    public static Clause InLanes { get; } = new(
        "lanes on stringers", Standard.LoadAndResistanceFactorDesign, "Table 4.6.2.2.2a-1", "lanes on an interior stringer, presence in them, S/D in feet, one lane and more: plank; nail laminated; glued laminated",
        "6.7, 7.5; 8.3, 8.5; 10, 10", ClauseMark.Memory)
    { Doubt = "the divisors of timber decks are not surely remembered" };

    /// <summary>In shear the axle over the support goes to stringers by the deck as simple spans between them, the others as for moment.</summary>
    public static Clause StringerShear { get; } = new(
        "axle over the support", Standard.StandardSpecifications, "3.23.1.2", "in shear the axle over the support goes to stringers by the deck as simple spans between them, the others as for moment",
        "1 − a/S", ClauseMark.Memory);

    /// <summary>Shear of timber stringers at three depths or a quarter of the span from the support: half of 0.60 of one wheel line and of the distributed shear.</summary>
    public static Clause TimberShearPlace { get; } = new(
        "shear of timber stringers", Standard.StandardSpecifications, "13.6.5.2", "shear of timber stringers at three depths or a quarter of the span from the support: half of 0.60 of one wheel line and of the distributed shear",
        "min(3 d, L/4); 0.5 (0.60 VLU + VLD)", ClauseMark.Memory);

    /// <summary>Contact of a wheel of P pounds in square inches, and its width across traffic over its length.</summary>
    public static Clause Contact { get; } = new(
        "contact of a wheel", Standard.StandardSpecifications, "3.30", "contact of a wheel of P pounds in square inches, and its width across traffic over its length",
        "0.01 P; 2.5", ClauseMark.Memory);

    /// <summary>Span of a timber deck: clear distance and half of a stringer's width, at most clear distance and thickness.</summary>
    public static Clause PlankSpan { get; } = new(
        "span of a timber deck", Standard.StandardSpecifications, "3.25.1.2", "span of a timber deck: clear distance and half of a stringer's width, at most clear distance and thickness",
        "s + b/2 ≤ s + t", ClauseMark.Memory);

    /// <summary>Width of a plank deck that carries a wheel: that of one plank.</summary>
    public static Clause PlankSpread { get; } = new(
        "spread on planks", Standard.StandardSpecifications, "3.25.1.1", "width of a plank deck that carries a wheel: that of one plank",
        "b", ClauseMark.Memory);

    /// <summary>Width of a laminated deck that carries a wheel, panels not joined to each other.</summary>
    public static Clause LaminatedSpread { get; } = new(
        "spread on laminated decks", Standard.StandardSpecifications, "3.25.1.1", "width of a laminated deck that carries a wheel, panels not joined to each other",
        "15 in", ClauseMark.Memory)
    { Doubt = "the width differs with how panels are joined" };

    /// <summary>Moment of a deck over more than two spans, of that of a simple one.</summary>
    public static Clause ContinuousDeck { get; } = new(
        "continuous decks", Standard.StandardSpecifications, "3.25.4", "moment of a deck over more than two spans, of that of a simple one",
        "0.80", ClauseMark.Memory);

    /// <summary>In shear a moving load stands a depth from the support.</summary>
    public static Clause PlankShear { get; } = new(
        "shear of planks", Standard.TimberSpecification, "3.4.3.1", "in shear a moving load stands a depth from the support",
        "d", ClauseMark.Memory);

    /// <summary>Floorbeams and stringers span simply, and what stands between floorbeams goes to them by distance.</summary>
    public static Clause SimpleFloor { get; } = new(
        "simple floor spans", Standard.Practice, "", "floorbeams and stringers span simply, and what stands between floorbeams goes to them by distance",
        "1 − a/p", ClauseMark.Practice);

    /// <summary>Bending and compression of a trussed beam together, on the safe side of an amplified moment.</summary>
    public static Clause TrussedBeams { get; } = new(
        "trussed beams", Standard.Practice, "", "bending and compression of a trussed beam together, on the safe side of an amplified moment",
        "M/Mc + 2 N/Nc ≤ 1", ClauseMark.Practice);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Clause> All { get; } = [WheelLines, InLanes, StringerShear, TimberShearPlace, Contact, PlankSpan, PlankSpread, LaminatedSpread, ContinuousDeck, PlankShear, SimpleFloor, TrussedBeams];
}
