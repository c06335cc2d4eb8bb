namespace SpanRater.Files;

/// <summary>What governs a bridge of a survey, or one of its vehicles, in the words of the tables.</summary>
/// <param name="Truss">Name of the truss; null where both are alike.</param>
/// <param name="Kind">The kind of part: truss member, stringer, pin ….</param>
/// <param name="Part">Name of the member or part, and where it is.</param>
/// <param name="In">tension, compression, bending, shear or bearing.</param>
/// <param name="Beside">What stands in the next lane; null for nothing.</param>
/// <param name="Level">Name of the level.</param>
/// <param name="Factor">Rating factor [-]; null where the rating is withheld.</param>
public sealed record SurveyedRow(string? Truss, string Kind, string Part, string In, string? Beside, string Level, double? Factor)
{
    /// <summary>The row of a rating.</summary>
    /// <param name="row">The row.</param>
    public static SurveyedRow Of(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return new SurveyedRow(row.Truss, PartWords.Of(row.Part), RatingWording.NameAt(row), RatingWording.ActsIn(row), row.Beside?.Vehicle.Name, row.Level.Name, row.Factor);
    }

    /// <summary>The part, with its truss where the trusses are told apart.</summary>
    public string Where => Truss is null ? Part : $"{Part} ({Truss})";
}

/// <summary>What a survey keeps of a vehicle on a bridge.</summary>
/// <param name="Name">The vehicle or loading.</param>
/// <param name="Class">The word for its class.</param>
/// <param name="Verdict">Whether it may cross, as far as the rating tells.</param>
/// <param name="IsWithheld">Whether its ratings are withheld.</param>
/// <param name="IsAtMost">Whether the factor is at most what is given, since something that the vehicle needs is not rated.</param>
/// <param name="Lowest">What decides; null where it has no factor.</param>
/// <param name="Gaps">What of its own rating is missing, in words; what is missing for every vehicle stands with the bridge.</param>
/// <param name="Conditions">What its factor holds under, such as "alone on the bridge"; it has to be enforced.</param>
/// <param name="WhyNot">What its factor alone does not tell of a no: why its ratings are withheld, or what stands beside it; null for nothing.</param>
/// <param name="IsGuest">Whether the bridge was rated for it only to tell whether it may cross: it has no part in what the bridge asks for.</param>
public sealed record SurveyedVehicle(
    string Name, string Class, PassageVerdict Verdict, bool IsWithheld, bool IsAtMost, SurveyedRow? Lowest, IReadOnlyList<string> Gaps, IReadOnlyList<string> Conditions, string? WhyNot, bool IsGuest)
{
    /// <summary>Whether it is itself on the road: loads for design or screening never are.</summary>
    public bool Drives => Class != VehicleClassNames.Name(VehicleClass.Design) && Class != VehicleClassNames.Name(VehicleClass.Screening);
}

/// <summary>The posting that a survey keeps of a bridge: one limit for all legal types.</summary>
/// <param name="Verdict">What it comes to.</param>
/// <param name="Tons">Whole US tons; null where there is no limit.</param>
/// <param name="IsAtMost">Whether the limit is at most what is given.</param>
/// <param name="SetBy">The type that sets it; null for none.</param>
/// <param name="SmallestSafeLoad">Smallest safe load of the legal types before any rounding, as the JSON has it, so that it reads back to the last bit [kN]; null where none has one.</param>
/// <param name="Closure">Whether the bridge is under the line of 3 US tons; null where that is not known.</param>
/// <param name="Emergency">Emergency vehicles that need limits of their own.</param>
public sealed record SurveyedPosting(PostingVerdict Verdict, int? Tons, bool IsAtMost, string? SetBy, double? SmallestSafeLoad, bool? Closure, IReadOnlyList<string> Emergency);

/// <summary>An input file of a surveyed bridge.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Hash">SHA-256 of its bytes, in hexadecimal.</param>
public sealed record SurveyedInput(string Name, string Hash);

/// <summary>What a survey keeps of a bridge. Nothing in it but <see cref="Folder"/> tells where the bridge stands, so that the same input gives the same facts.</summary>
public sealed record SurveyedBridge
{
    /// <summary>Its folder, from the one that was surveyed.</summary>
    public required string Folder { get; init; }

    /// <summary>Its name; null where the folder is refused.</summary>
    public string? Name { get; init; }

    /// <summary>Hash of all that was read of it, in hexadecimal; null where a file could not be read.</summary>
    public string? Hash { get; init; }

    /// <summary>The input files.</summary>
    public IReadOnlyList<SurveyedInput> Inputs { get; init; } = [];

    /// <summary>Name of the rating method; null where there is none.</summary>
    public string? Method { get; init; }

    /// <summary>What it asks for.</summary>
    public required SurveyStanding Standing { get; init; }

    /// <summary>Why, in a sentence or more.</summary>
    public required string Why { get; init; }

    /// <summary>The lowest factor at a level that governs; null where nothing governs.</summary>
    public SurveyedRow? Governing { get; init; }

    /// <summary>The vehicle of that factor.</summary>
    public string? GoverningVehicle { get; init; }

    /// <summary>The posting; null where there is none.</summary>
    public SurveyedPosting? Posting { get; init; }

    /// <summary>The vehicles, in the order in which the bridge was rated for them.</summary>
    public IReadOnlyList<SurveyedVehicle> Vehicles { get; init; } = [];

    /// <summary>Those by which it stands where it does: all but the one that was only asked whether it may cross.</summary>
    public IEnumerable<SurveyedVehicle> OwnVehicles => Vehicles.Where(v => !v.IsGuest);

    /// <summary>What is missing for every vehicle, in words.</summary>
    public IReadOnlyList<string> Gaps { get; init; } = [];

    /// <summary>What is rated and what is not, in sentences; empty where nothing is.</summary>
    public string Scope { get; init; } = "";

    /// <summary>What was given and is not rated, a line a reason.</summary>
    public IReadOnlyList<string> NotRated { get; init; } = [];

    /// <summary>Members and parts without a rating in some effect.</summary>
    public int PartsNotRated { get; init; }

    /// <summary>Vehicles that are not rated as a whole, withheld ones among them.</summary>
    public int VehiclesNotRated { get; init; }

    /// <summary>What was assumed, or done in place of what was asked.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>What is wrong with the input, where the folder is refused.</summary>
    public IReadOnlyList<string> Errors { get; init; } = [];

    /// <summary>What the input was warned of.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Whether the program itself failed on it; such a bridge is never taken from an earlier run.</summary>
    public bool IsFault { get; init; }

    /// <summary>Whether it is under the line of 3 US tons, or its dead load alone uses up a capacity.</summary>
    public bool IsUnderLine => Posting is null ? Governing?.Factor == 0 || OwnVehicles.Any(v => v.Lowest?.Factor == 0) : Posting.Closure == true;

    /// <summary>The lowest factor of what drives; null where nothing that drives has one.</summary>
    public double? LowestThatDrives => OwnVehicles.Where(v => v.Drives).Min(v => v.Lowest?.Factor);

    /// <summary>Whether a rating of it is withheld.</summary>
    public bool IsWithheld => OwnVehicles.Any(v => v.IsWithheld);

    /// <summary>Whether something that a vehicle needs is not rated, so that factors are at most what is given.</summary>
    public bool IsInPart => Gaps.Count > 0 || OwnVehicles.Any(v => v.IsAtMost);

    /// <summary>What it was rated for by name; null where it is not.</summary>
    /// <param name="vehicle">The vehicle.</param>
    public SurveyedVehicle? Of(string vehicle) => Vehicles.FirstOrDefault(v => v.Name == vehicle);

    /// <summary>What is not rated, counted: "2 parts, 1 vehicle, no connection given"; never empty, since ends of beams and bearings never are.</summary>
    public string NotRatedInShort
    {
        get
        {
            string[] counts = [.. Count(PartsNotRated, "part"), .. Count(VehiclesNotRated, "vehicle"), .. Gaps];
            return counts.Length == 0 ? "bearings, ends of beams, connections not given" : string.Join(", ", counts);
        }
    }

    private static string[] Count(int number, string what) => number == 0 ? [] : [string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{number} {what}{(number == 1 ? "" : "s")}")];
}
