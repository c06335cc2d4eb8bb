using System.Globalization;

namespace SpanRater.Files;

/// <summary>A line of the face of a posting sign.</summary>
/// <param name="What">Whom it speaks to.</param>
/// <param name="Says">What it says.</param>
public sealed record SignLine(string What, string Says);

/// <summary>
/// What a posting sign would say by the posting review, in words alone: a proposal for the decision of the responsible engineer. It is no standard sign of any country, and
/// its layout belongs to none.
/// </summary>
/// <param name="Headline">The words on top.</param>
/// <param name="Lines">The lines under it; none where the headline says all.</param>
/// <param name="Remarks">What has to be read with it, and stands beside the face.</param>
public sealed record SignFace(string Headline, IReadOnlyList<SignLine> Lines, IReadOnlyList<string> Remarks)
{
    /// <summary>Headline of a bridge that is under the line below which it is to be closed.</summary>
    public const string Closed = "Bridge closed";

    /// <summary>Headline where there is a limit.</summary>
    public const string Limit = "Weight limit";

    /// <summary>Headline where no limit is proposed: for want of a rating, or since none is needed.</summary>
    public const string None = "No limit proposed";

    /// <summary>What stands with every drawing of such a face.</summary>
    public const string Generic = "Generic drawing, not a standard sign: the authority's own sign applies.";

    /// <summary>What a face says of vehicles that have no rating.</summary>
    public const string KeepOff = "keep off";

    /// <summary>The face by a posting review.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="posting">The posting; null where no posting rule belongs to the method.</param>
    public static SignFace Of(BridgeRating rating, Posting? posting)
    {
        ArgumentNullException.ThrowIfNull(rating);
        if (posting is null)
        {
            return new SignFace(None, [], [PostingWording.NoRule(rating.Method)]);
        }

        if (posting.Closure)
        {
            return new SignFace(Closed, [], ["Closed until the responsible engineer has reviewed it: the posting review says why."]);
        }

        SignLine[] lines = [.. Legal(posting), .. posting.Emergency.Where(r => r.Verdict != PostingVerdict.NotNeeded).Select(Emergency)];
        bool hasLimit = posting.Legal.Concat(posting.Emergency).Any(r => r.Verdict is PostingVerdict.Posted or PostingVerdict.Barred);
        return hasLimit ? new SignFace(Limit, lines, [.. RemarksOn(posting)])
            : posting.NotGiven.Any() ? new SignFace(None, lines, [NotGivenRemark])
            : posting.Legal.Count == 0 ? new SignFace(None, [], ["No legal type was asked for, so that a limit for trucks does not follow."])
            : new SignFace(None, [], [PostingWording.Answer(posting)]);
    }

    private const string NotGivenRemark = "Keep off: there is no rating of such vehicles, and they stay off until the responsible engineer has decided.";

    private static IEnumerable<string> RemarksOn(Posting posting)
    {
        yield return "Tons are US tons of 2,000 lb, rounded down.";
        if (posting.Legal.Concat(posting.Emergency).Any(r => r.IsAtMost))
        {
            yield return "At most: not everything that is loaded has a capacity, so that the limit may have to be lower.";
        }

        if (posting.NotGiven.Any())
        {
            yield return NotGivenRemark;
        }
    }

    // A silhouette that nobody asked for must not read as one that is free to cross.
    private static IEnumerable<SignLine> Legal(Posting posting) => posting.Legal.Count == 0 ? [] : posting.Limits
        .Select(l => new SignLine(PostingWording.Of(l.Key), Says(l.Value.Verdict, l.Value.SetBy?.Tons, l.Value.IsAtMost)))
        .Concat(posting.OwnTypes.Select(t => new SignLine(t.Vehicle.Name, Says(t.Verdict, t.Tons, t.IsAtMost))));

    private static SignLine Emergency(PostingRow row) => new(
        $"emergency vehicle {row.Vehicle.Name}",
        row.Verdict != PostingVerdict.Posted ? Says(row.Verdict, null, row.IsAtMost) : string.Join(", ", ((string?[])
        [
            $"gross {Tons(row.Tons!.Value, row.IsAtMost)}",
            row.SingleAxle is { } single ? $"single axle {Tons(SafeLoad.WholeTons(single), row.IsAtMost)}" : null,
            row.Tandem is { } tandem ? $"tandem {Tons(SafeLoad.WholeTons(tandem), row.IsAtMost)}" : null,
        ]).OfType<string>()));

    private static string Says(PostingVerdict verdict, int? tons, bool isAtMost) => verdict switch
    {
        PostingVerdict.Posted => Tons(tons!.Value, isAtMost),
        PostingVerdict.NotNeeded => isAtMost ? "no limit proposed by what is rated" : "no limit proposed",
        PostingVerdict.NotAsked => "not rated",
        _ => KeepOff,
    };

    private static string Tons(int tons, bool isAtMost) => string.Create(CultureInfo.InvariantCulture, $"{(isAtMost ? "at most " : "")}{tons} ton{(tons == 1 ? "" : "s")}");
}
