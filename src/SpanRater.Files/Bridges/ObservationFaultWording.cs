using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what is wrong with a row of findings.csv, where, and the mend.</summary>
internal static class ObservationFaultWording
{
    public static (Place Where, string What) Of(ObservationFault fault, Observation seen, TableRow row, TableRow? first, MemberSection section)
    {
        SectionPart? part = section.FindPart(seen.Part) ?? (section.Parts.Count == 1 ? section.Parts[0] : null);
        string name = part?.Name ?? seen.Part, parts = string.Join(", ", section.Parts.Select(p => p.Name));
        string dimension = row["dimension"].Text.ToLowerInvariant();
        return fault switch
        {
            ObservationFault.UnknownPart { Part.Length: 0 } =>
                (row["what"].Where, $"of which part? Section \"{section.Name}\" has {parts}."),
            ObservationFault.UnknownPart unknown =>
                (row["part"].Where, $"section \"{section.Name}\" has no part \"{unknown.Part}\".{NearestName.Question(unknown.Part, section.Parts.Select(p => p.Name))} Its parts are {parts}."),
            ObservationFault.UnknownPiece unknown =>
                (row["piece"].Where, $"part \"{name}\" has {(unknown.Count == 1 ? "one piece" : Count(unknown.Count) + " pieces")}, counted from 1 from left to right and bottom to top: piece {row["piece"].Text} is none of them."),
            ObservationFault.NoSuchDimension none when none.Kind.CanBeLost.Count == 0 || (seen is Observation.Hole && none.Kind.Walls.Count == 0) =>
                (row["what"].Where, $"part \"{name}\" is {SectionWords.WithArticle(none.Kind)}: no hole is taken through it. Enter what remains of {SectionWords.Of(none.Kind.Needed)}."),
            ObservationFault.NoSuchDimension none =>
                (row["dimension"].Where, $"part \"{name}\" is {SectionWords.WithArticle(none.Kind)}, of which {(seen is Observation.Hole ? $"a hole may go through {SectionWords.Of(none.Kind.Walls)}" : $"{SectionWords.Of(none.Kind.CanBeLost)} may be less")}: {dimension} is not one of them, or was not given in sections.csv."),
            ObservationFault.WallNotSaid none =>
                (row[dimension.Length == 0 ? "what" : "dimension"].Where, $"part \"{name}\" is {SectionWords.WithArticle(none.Kind)}: write under dimension which wall has the hole: {SectionWords.Of(none.Kind.Walls)}."),
            ObservationFault.MoreThanBuilt more =>
                (row["remaining"].Where, $"part \"{name}\": {SectionWords.Length(((Observation.Remaining)seen).Value)} remaining of {dimension} {SectionWords.Length(more.Original)}. Rust scale measured? Clean and measure again, or correct the original size in {BridgeFolder.SectionsFile}."),
            ObservationFault.NothingRemains { WithDoubt: true } =>
                (row["doubt"].Where, $"part \"{name}\": the doubt {row["doubt"].Text} is as large as what remains: measure again, or enter the part as gone."),
            ObservationFault.NothingRemains =>
                (row[seen is Observation.Decay ? "decay" : "remaining"].Where, $"part \"{name}\": nothing is left of it. Enter the part as gone (what = gone), so that the way of the force is looked at again."),
            ObservationFault.NoSuchFace =>
                (row["face"].Where, $"part \"{name}\": {(seen is Observation.Decay ? "it" : $"its {dimension}")} has no {row["face"].Text} face as it lies in the section: write one of the two faces that {(seen is Observation.Decay ? "look that way" : "the dimension is between")}, or leave face blank where all sides lost alike."),
            ObservationFault.ToldTwice =>
                (row["what"].Where, $"part \"{name}\" at {(seen.Place.Length == 0 ? "the whole member" : $"\"{seen.Place}\"")}: line {Count(first!.Where.Line!.Value)} has said this already: keep one row, or write the piece or another place."),
            ObservationFault.HoleTooLarge large =>
                (row["hole"].Where, $"part \"{name}\": {(seen is Observation.Hole { Count: > 1 } several ? $"{Count(several.Count)} holes of {row["hole"].Text} take" : $"a hole of {row["hole"].Text} takes")} all of the wall, {SectionWords.Length(large.Length)}. Check the number and the unit in the heading, or enter the part as gone (what = gone)."),
            ObservationFault.NotTimber not =>
                (row["what"].Where, $"part \"{name}\" is {SectionWords.WithArticle(not.Kind)}, and only timber decays: enter what remains of a dimension."),
            ObservationFault.TooManySlack slack =>
                (row["what"].Where, $"part \"{name}\" has {(slack.Count == 1 ? "one piece" : Count(slack.Count) + " pieces")}, and not all of them can be slack: check count; a member that carries nothing is taken out of members.csv."),
            _ =>
                (row["what"].Where, $"nothing of section \"{section.Name}\" is left{(seen.Place.Length == 0 ? "" : $" at \"{seen.Place}\"")}: a member that is parted carries nothing. Take it out of members.csv and see whether the truss stands; close the bridge until it is known."),
        };
    }

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);
}
