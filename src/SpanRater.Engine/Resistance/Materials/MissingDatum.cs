namespace SpanRater;

/// <summary>What a strength cannot be found without. None of it is ever assumed in silence.</summary>
public abstract record MissingDatum
{
    private MissingDatum()
    {
    }

    /// <summary>No yield is given, and none was asked for by year.</summary>
    /// <param name="Kind">Kind of the material.</param>
    /// <param name="Built">Year of building, or null.</param>
    /// <param name="Offered">The row that the user may accept; null where there is none.</param>
    public sealed record Yield(MaterialKind Kind, int? Built, PublishedStrength? Offered) : MissingDatum;

    /// <summary>No tensile strength is given, and there is a net section to check.</summary>
    /// <param name="Material">Name of the material.</param>
    public sealed record Ultimate(string Material) : MissingDatum;

    /// <summary>No modulus is given for a material other than steel.</summary>
    /// <param name="Material">Name of the material.</param>
    public sealed record Modulus(string Material) : MissingDatum;

    /// <summary>The method has no rule for timber.</summary>
    /// <param name="Method">Name of the method.</param>
    public sealed record TimberRule(string Method) : MissingDatum;

    /// <summary>The frames of a pony truss are too stiff for Engesser's formula, and the table of the guide is not in the program.</summary>
    /// <param name="EffectiveLengthFactor">K that Engesser's formula would give, below 1.3 [-].</param>
    public sealed record PonyTable(double EffectiveLengthFactor) : MissingDatum;

    /// <summary>The member has no material.</summary>
    public sealed record NoMaterial() : MissingDatum;

    /// <summary>The part has no section.</summary>
    public sealed record NoSection() : MissingDatum;

    /// <summary>The rod of a trussed floorbeam, or its material, is not given.</summary>
    /// <param name="Section">True where its section is missing, false where its material is.</param>
    public sealed record RodOfBeam(bool Section) : MissingDatum;

    /// <summary>Posts and depth of a trussed floorbeam are not given.</summary>
    /// <param name="Columns">The columns that are blank.</param>
    public sealed record TrussedShape(string Columns) : MissingDatum;

    /// <summary>A material of a trussed floorbeam has no modulus, and what beam and rod share goes by it.</summary>
    /// <param name="Material">Name of the material.</param>
    public sealed record ModulusOfTrussed(string Material) : MissingDatum;

    /// <summary>A trussed floorbeam is of several parts, and as a column it has no rule.</summary>
    /// <param name="Section">Name of the section.</param>
    public sealed record TrussedOfParts(string Section) : MissingDatum;

    /// <summary>A trussed floorbeam hogs over its posts, and its section has no rule where its lower flange is not held all along.</summary>
    /// <param name="Section">Name of the section.</param>
    public sealed record HeldBelow(string Section) : MissingDatum;

    /// <summary>Posts of a trussed floorbeam, their seats and the ends of its rod have no rule.</summary>
    public sealed record PostsOfBeam() : MissingDatum;

    /// <summary>What holds a trussed floorbeam sideways is not given.</summary>
    public sealed record TrussedHeld() : MissingDatum;

    /// <summary>What the deck weighs is not known.</summary>
    /// <param name="Components">True where the weight of the deck itself is missing.</param>
    /// <param name="WearingSurface">True where that of the wearing surface is missing.</param>
    public sealed record DeckWeight(bool Components, bool WearingSurface) : MissingDatum;

    /// <summary>The kind of deck is not given, and with it what one stringer takes.</summary>
    public sealed record DeckType() : MissingDatum;

    /// <summary>Where wheels stand across the deck cannot be found.</summary>
    /// <param name="Why">Why.</param>
    public sealed record PlaceAcross(ShareOutcome Why) : MissingDatum;

    /// <summary>The program has no rule for this kind of deck.</summary>
    public sealed record DeckRule() : MissingDatum;

    /// <summary>What carries the deck, and with it its span, is not given.</summary>
    public sealed record DeckSpan() : MissingDatum;

    /// <summary>The program has no rule for tracks on planks.</summary>
    public sealed record TracksOnDeck() : MissingDatum;

    /// <summary>The method has no rule for metal beams.</summary>
    /// <param name="Method">Name of the method.</param>
    public sealed record BeamRule(string Method) : MissingDatum;

    /// <summary>How far apart the compression flange of a beam is held is not given.</summary>
    public sealed record FlangeHeld() : MissingDatum;

    /// <summary>A beam whose flange is held at points, of a section that the rules for sideways buckling do not fit.</summary>
    /// <param name="Section">Name of the section.</param>
    public sealed record LateralRule(string Section) : MissingDatum;

    /// <summary>A beam of a section without an upright web.</summary>
    /// <param name="Section">Name of the section.</param>
    public sealed record NoWeb(string Section) : MissingDatum;

    /// <summary>Beams of the floor weigh on the part, and their weight is not known.</summary>
    /// <param name="Kind">Their kind: stringers on floorbeams and hangers, floorbeams on hangers.</param>
    /// <param name="Part">The part whose section or material is missing; null where none is given and none is said not to be there.</param>
    public sealed record BeamWeight(PartKind Kind, string? Part) : MissingDatum;

    /// <summary>The program has no rule for the bearing of a metal beam.</summary>
    public sealed record MetalBearing() : MissingDatum;

    /// <summary>The length of a bearing is not given.</summary>
    public sealed record BearingLength() : MissingDatum;

    /// <summary>A timber beam more slender than its rule holds for.</summary>
    /// <param name="Slenderness">RB [-].</param>
    public sealed record TooSlenderBeam(double Slenderness) : MissingDatum;

    /// <summary>The method has no rule for a connection of this kind.</summary>
    /// <param name="Method">Name of the method.</param>
    public sealed record ConnectionRule(string Method) : MissingDatum;

    /// <summary>The forces in members at a connection depend on which rods act.</summary>
    /// <param name="Members">Names of the members.</param>
    public sealed record RodsDecide(string Members) : MissingDatum;

    /// <summary>What is packed on a pin does not balance.</summary>
    public sealed record PackingOutOfBalance() : MissingDatum;

    /// <summary>The middle length of a gusset plate in compression is not given.</summary>
    public sealed record MiddleLength() : MissingDatum;

    /// <summary>The holes of parts are not given, so that the net section is not known.</summary>
    /// <param name="Section">Name of the section.</param>
    /// <param name="Parts">Names of the parts.</param>
    public sealed record Holes(string Section, string Parts) : MissingDatum;

    /// <summary>How much of the net section works is not given.</summary>
    public sealed record ShearLag() : MissingDatum;

    /// <summary>How the ends are fastened is not given, and with it the effective length.</summary>
    public sealed record Ends() : MissingDatum;

    /// <summary>Where parts lie in the section is not given, and with it its radii of gyration.</summary>
    /// <param name="Section">Name of the section.</param>
    /// <param name="Parts">Names of the parts.</param>
    public sealed record Positions(string Section, string Parts) : MissingDatum;

    /// <summary>How the parts of a section are held together along the member is not given.</summary>
    /// <param name="Section">Name of the section.</param>
    public sealed record PartsHeld(string Section) : MissingDatum;

    /// <summary>Nothing says that joints are held out of the plane of the truss, and the unbraced length there is not given.</summary>
    /// <param name="Joints">Names of the joints.</param>
    public sealed record HeldSideways(string Joints) : MissingDatum;

    /// <summary>The member is cracked: no number follows from a crack.</summary>
    /// <param name="Place">Where.</param>
    public sealed record Cracked(string Place) : MissingDatum;

    /// <summary>The section is nothing that a rule for timber fits: not one solid rectangle.</summary>
    /// <param name="Section">Name of the section.</param>
    public sealed record SolidTimber(string Section) : MissingDatum;

    /// <summary>A timber section of metal, or a metal section of timber.</summary>
    /// <param name="Material">Name of the material.</param>
    /// <param name="Section">Name of the section.</param>
    public sealed record MaterialOfSection(string Material, string Section) : MissingDatum;

    /// <summary>A single angle whose legs are too unlike for the rule.</summary>
    public sealed record LegsTooUnlike() : MissingDatum;

    /// <summary>A bent timber deeper than twice its width, which may buckle sideways: the program has no rule for it.</summary>
    /// <param name="Section">Name of the section.</param>
    public sealed record DeepTimber(string Section) : MissingDatum;

    /// <summary>A timber more slender than its rule holds for.</summary>
    /// <param name="Slenderness">le/d [-].</param>
    public sealed record TooSlenderTimber(double Slenderness) : MissingDatum;

    /// <summary>The method makes no strengths of its own: capacities are given.</summary>
    /// <param name="Method">Name of the method.</param>
    public sealed record StrengthRules(string Method) : MissingDatum;
}
