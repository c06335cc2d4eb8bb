using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what a strength cannot be found without, and how to give it.</summary>
public static class MissingDatumWording
{
    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch;

    /// <summary>A sentence or two without a full stop at the end.</summary>
    /// <param name="missing">What is missing.</param>
    public static string Of(MissingDatum missing) => missing switch
    {
        MissingDatum.Yield { Offered: { } row } m =>
            string.Create(CultureInfo.InvariantCulture, $"No yield for {m.Built?.ToString(CultureInfo.InvariantCulture)}{(m.Built is null ? "" : " ")}{MaterialWords.Of(m.Kind)}. Write strength = \"by year\" to accept {row.Yield / Ksi:0.##} ksi ({row.Period}), or a tested value, yield = \"…\" with its coupons and source"),
        MissingDatum.Yield { Built: { } built } m =>
            string.Create(CultureInfo.InvariantCulture, $"No yield for {built} {MaterialWords.Of(m.Kind)}, and none is published by year. Write yield = \"…\" with its source, and coupons where it was tested"),
        MissingDatum.Yield m when PublishedStrength.GoesByYear(m.Kind) =>
            $"No yield for {MaterialWords.Of(m.Kind)}. Write yield = \"…\" with its source, and coupons where it was tested; or strength = \"by year\", with built = … in bridge.toml",
        MissingDatum.Yield m =>
            $"No yield for {MaterialWords.Of(m.Kind)}. Write yield = \"…\" with its source, and coupons where it was tested",
        MissingDatum.Ultimate m => $"No tensile strength for \"{m.Material}\", and a net section needs it. Write ultimate = \"…\" in materials.toml",
        MissingDatum.Modulus m => $"No modulus for \"{m.Material}\", and a column needs it. Write modulus = \"…\" in materials.toml",
        MissingDatum.TimberRule m => $"{m.Method} has no rule for timber in the program. Rate it by LRFR or by ASR",
        MissingDatum.PonyTable m => string.Create(
            CultureInfo.InvariantCulture,
            $"The frames are so stiff (K = {m.EffectiveLengthFactor:0.00}, below {PonyChord.LeastFactor:0.0}) that the formula for a chord on springs does not hold, and the guide's table of 1/K is not in the program. Read K in AASHTO LRFD Guide Specifications for Pedestrian Bridges (2009), Table 7.1.2-1, and give it"),
        MissingDatum.NoMaterial => "No material. Name one of materials.toml under material in members.csv",
        MissingDatum.NoSection => "No section. Name one of sections.csv under section in floor.csv",
        MissingDatum.DeckWeight m => $"What the deck weighs is missing. Write {(m.Components ? "deck_dc" : "")}{(m is { Components: true, WearingSurface: true } ? " and " : "")}{(m.WearingSurface ? "deck_dw" : "")} under [floor] in bridge.toml, or the layers in dead.csv",
        MissingDatum.DeckType => "What the deck is decides how much of a wheel one stringer takes, and floor.csv has no row of kind deck. Write one with its type",
        MissingDatum.PlaceAcross { Why: ShareOutcome.NotGiven n } => $"Where wheels stand across the deck is not known. Write {(n.TrussSpacing ? "truss_spacing" : "")}{(n is { TrussSpacing: true, Roadway: true } ? " and " : "")}{(n.Roadway ? "roadway" : "")} under [deck] in bridge.toml",
        MissingDatum.PlaceAcross { Why: ShareOutcome.TooWide or ShareOutcome.WheelOutside } => "The vehicle does not stand between the kerbs and between the trusses, and only a given share carries it on the trusses. Check roadway, roadway_offset and truss_spacing",
        MissingDatum.PlaceAcross => "Where wheels stand on a floorbeam between other than two trusses has no rule in the program",
        MissingDatum.RodOfBeam m => $"The {(m.Section ? "rod" : "material of the rod")} of the trussed floorbeam is not given, and what beam and rod share goes by it. Write {(m.Section ? "rod and rod material" : "rod material")} in floor.csv",
        MissingDatum.TrussedShape m => $"The trussed floorbeam lacks {m.Columns}: what beam and rod share goes by where posts stand and how far below the beam's axis the rod is. Write {m.Columns} in floor.csv",
        MissingDatum.ModulusOfTrussed m => $"No modulus for \"{m.Material}\", and what beam and rod share goes by it. Write modulus = \"…\" in materials.toml",
        MissingDatum.TrussedOfParts m => $"Section \"{m.Section}\" is of several parts, and the program has no rule for such a floorbeam while its rod presses it",
        MissingDatum.HeldBelow m => $"Over its posts the trussed floorbeam may bend up, section \"{m.Section}\" is not one I-shape, and the program has no rule for its sideways buckling. Write unbraced below = 0 in floor.csv where its lower side is held all along",
        MissingDatum.BeamWeight { Part: { } beams } => $"What \"{beams}\" weigh is not known, and that comes onto it. Name their section and material in floor.csv",
        MissingDatum.BeamWeight m => $"What {PartWords.Of(m.Kind)}s weigh is not known, and that comes onto it. Write a row for them in floor.csv with section and material, or without = [\"{PartWords.Of(m.Kind)}\"] under [floor] in bridge.toml where there are none",
        MissingDatum.PostsOfBeam => "Posts of a trussed floorbeam, their seats under the beam and on the rod, and the ends of its rod have no rule in the program. Have them checked apart",
        MissingDatum.TrussedHeld => "What holds the trussed floorbeam sideways is not given, and its rod presses it. Write unbraced in floor.csv, 0 where the deck holds it all along",
        MissingDatum.DeckRule => "The program has no rule for a deck of concrete or steel: it counts for what stringers take, and is not rated itself",
        MissingDatum.DeckSpan => "What carries the deck is not given, and with it its span. Write a row of kind stringer, or span in the row of the deck",
        MissingDatum.TracksOnDeck => "The program has no rule for tracks on planks",
        MissingDatum.BeamRule m => $"{m.Method} has no rule for beams in the program. Rate it by LRFR, LFR or ASR",
        MissingDatum.FlangeHeld => "How far apart its compression flange is held is not known. Write unbraced in floor.csv, 0 where the deck or beams hold it all along",
        MissingDatum.LateralRule m => $"Section \"{m.Section}\" is not one I-shape, and the program has no rule for its sideways buckling. Write unbraced = 0 where its flange is held all along",
        MissingDatum.NoWeb m => $"Section \"{m.Section}\" has no upright web, and the program has no rule for its shear",
        MissingDatum.MetalBearing => "The program has no rule for the bearing of a metal beam",
        MissingDatum.BearingLength => "The length of its bearing is not known. Write bearing in floor.csv",
        MissingDatum.TooSlenderBeam m => string.Create(CultureInfo.InvariantCulture, $"The timber is too slender: RB is {m.Slenderness:0.#}, and the rule ends at {TimberBeam.MostSlender:0}. Hold it closer"),
        MissingDatum.ConnectionRule m => $"{m.Method} has no rule for such a connection in the program",
        MissingDatum.RodsDecide m => $"The forces in {m.Members} depend on which rods act, and the program rates only connections whose forces do not",
        MissingDatum.PackingOutOfBalance => "What is packed on the pin does not balance: its forces leave a remainder, or would turn the pin by more than a tenth of its largest moment. Something is missing in packing.csv, or bars of a member stand on one side alone that are on both",
        MissingDatum.MiddleLength => "The length over which the gusset buckles is not known. Write middle length in connections.csv",
        MissingDatum.Holes m => $"Holes of {m.Parts} in section \"{m.Section}\" are missing, and with them the net section. Write holes and hole in sections.csv for the worst path, holes = 0 where there are none",
        MissingDatum.ShearLag => "Shear lag is missing: how much of the net section works. Write shear lag in members.csv, 1 where every part of the section is connected",
        MissingDatum.Ends => "How its ends are fastened is missing, and with it the effective length. Write ends in members.csv: pinned, riveted, bolted or welded",
        MissingDatum.Positions m => $"Positions of {m.Parts} in section \"{m.Section}\" are missing, and with them the radii of gyration. Write arrangement and gap, or x and y, in sections.csv",
        MissingDatum.PartsHeld m => $"How the parts of section \"{m.Section}\" are held together is missing. Write a row of it in lacing.csv",
        MissingDatum.HeldSideways m => $"Nothing says that {m.Joints} {(m.Joints.Contains(',', StringComparison.Ordinal) ? "are" : "is")} held sideways. Write held sideways in joints.csv, out-of-plane length in members.csv, or [pony] in bridge.toml",
        MissingDatum.Cracked m => $"It is cracked{(m.Place.Length == 0 ? "" : $" ({m.Place})")}: no number follows from a crack, and an engineer decides",
        MissingDatum.SolidTimber m => $"Section \"{m.Section}\" is not one solid timber, and the program has no rule for others",
        MissingDatum.DeepTimber m => $"Section \"{m.Section}\" is deeper than twice its width and bent: it may buckle sideways, and the program has no rule for that",
        MissingDatum.MaterialOfSection m => $"Material \"{m.Material}\" does not go with the shapes of section \"{m.Section}\". Mend one of them",
        MissingDatum.LegsTooUnlike => string.Create(CultureInfo.InvariantCulture, $"One leg of the single angle is {SingleAngle.LargestLegRatio} times the other or more, and the rule for single angles ends there"),
        MissingDatum.TooSlenderTimber m => string.Create(CultureInfo.InvariantCulture, $"The timber is too slender: le/d is {m.Slenderness:0.#}, and the rule ends at {TimberStrength.MostSlender:0}"),
        MissingDatum.StrengthRules m => $"The method {m.Method} makes no strength from sections in this bridge. Give capacities in members.csv",
        _ => throw new ArgumentException($"Unknown datum {missing}.", nameof(missing)),
    };
}
