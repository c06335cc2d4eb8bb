namespace SpanRater.Files;

/// <summary>What became of a bridge since an earlier survey.</summary>
public enum SurveyChangeKind
{
    /// <summary>It was not there.</summary>
    New,

    /// <summary>It is not there any more.</summary>
    Gone,

    /// <summary>Something of it differs.</summary>
    Changed,
}

/// <summary>A factor that differs.</summary>
/// <param name="Vehicle">The vehicle; null for what governs the bridge.</param>
/// <param name="VehicleBefore">Of what governs: the vehicle then.</param>
/// <param name="VehicleAfter">Of what governs: the vehicle now.</param>
/// <param name="Before">What decided then; null where there was no factor.</param>
/// <param name="After">What decides now; null where there is none.</param>
public sealed record SurveyFactorChange(string? Vehicle, string? VehicleBefore, string? VehicleAfter, SurveyedRow? Before, SurveyedRow? After);

/// <summary>What differs of a bridge, and why.</summary>
/// <param name="Kind">What became of it.</param>
/// <param name="Before">The bridge then; null where it is new.</param>
/// <param name="After">The bridge now; null where it is gone.</param>
/// <param name="Files">What changed of its input, a few words a file.</param>
/// <param name="Factors">Factors that differ: what governs first, then vehicles.</param>
public sealed record SurveyChange(SurveyChangeKind Kind, SurveyedBridge? Before, SurveyedBridge? After, IReadOnlyList<string> Files, IReadOnlyList<SurveyFactorChange> Factors)
{
    /// <summary>Whether the posting differs: the limit, the type that sets it, the emergency vehicles, or whether it is under 3 US tons.</summary>
    public bool PostingDiffers => Before is not null && After is not null && Said(Before.Posting) != Said(After.Posting);

    /// <summary>Whether a sign that stands there would have to be replaced: another limit, in tons or none.</summary>
    public bool SignDiffers => PostingDiffers && (Before!.Posting?.Verdict, Before.Posting?.Tons) != (After!.Posting?.Verdict, After.Posting?.Tons);

    private static (PostingVerdict?, int?, bool?, string?, bool?, string) Said(SurveyedPosting? posting) =>
        (posting?.Verdict, posting?.Tons, posting?.IsAtMost, posting?.SetBy, posting?.Closure, string.Join(", ", posting?.Emergency ?? []));
}

/// <summary>What differs between a survey and an earlier one.</summary>
/// <param name="VersionBefore">Version of the program then.</param>
/// <param name="VersionAfter">Version of the program now.</param>
/// <param name="AskedDiffers">Whether other vehicles were asked for.</param>
/// <param name="Bridges">The bridges that differ, by folder.</param>
/// <param name="Same">How many bridges do not.</param>
public sealed record SurveyChanges(string VersionBefore, string VersionAfter, bool AskedDiffers, IReadOnlyList<SurveyChange> Bridges, int Same)
{
    /// <summary>Compares a survey with an earlier one. A bridge is known again by its folder, else by its input.</summary>
    /// <param name="before">The earlier survey.</param>
    /// <param name="after">The survey.</param>
    public static SurveyChanges Of(EarlierSurvey before, Survey after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        Dictionary<string, SurveyedBridge> then = before.Bridges.ToDictionary(b => b.Folder, StringComparer.Ordinal);
        var there = after.All.Select(a => a.Folder).ToHashSet(StringComparer.Ordinal);
        var gone = before.Bridges.Where(b => !there.Contains(b.Folder)).OrderBy(b => b.Folder, StringComparer.Ordinal).ToList();
        var changes = new List<SurveyChange>();
        int same = 0;
        foreach (SurveyedBridge now in after.All)
        {
            SurveyedBridge? old = then.GetValueOrDefault(now.Folder);
            if (old is null && gone.Find(g => g.Hash is not null && g.Hash == now.Hash) is { } moved)
            {
                old = moved;
                gone.Remove(moved);
            }

            if (old is null)
            {
                changes.Add(new SurveyChange(SurveyChangeKind.New, null, now, [], []));
            }
            else if (Compare(old, now) is { } change)
            {
                changes.Add(change);
            }
            else
            {
                same++;
            }
        }

        changes.AddRange(gone.Select(g => new SurveyChange(SurveyChangeKind.Gone, g, null, [], [])));
        bool asksOthers = before.Asked.Crosses != after.Asked.Crosses || !(before.Asked.Vehicles ?? []).SequenceEqual(after.Asked.Vehicles ?? []) || (before.Asked.Vehicles is null) != (after.Asked.Vehicles is null);
        return new SurveyChanges(before.Version, after.Version, asksOthers, [.. changes.OrderBy(c => (c.After ?? c.Before!).Folder, StringComparer.Ordinal)], same);
    }

    private static SurveyChange? Compare(SurveyedBridge before, SurveyedBridge after)
    {
        string[] files = [.. FilesOf(before, after)];
        SurveyFactorChange[] factors =
        [
            .. Differ(before.Governing, after.Governing) || before.GoverningVehicle != after.GoverningVehicle
                ? [new SurveyFactorChange(null, before.GoverningVehicle, after.GoverningVehicle, before.Governing, after.Governing)] : Array.Empty<SurveyFactorChange>(),
            .. before.Vehicles.Select(v => v.Name).Union(after.Vehicles.Select(v => v.Name)).Select(n => new SurveyFactorChange(n, n, n, before.Of(n)?.Lowest, after.Of(n)?.Lowest)).Where(c => Differ(c.Before, c.After)),
        ];
        var change = new SurveyChange(SurveyChangeKind.Changed, before, after, files, factors);
        bool differs = change.PostingDiffers || files.Length > 0 || factors.Length > 0 || before.Folder != after.Folder || before.Standing != after.Standing || before.Name != after.Name || !before.Errors.SequenceEqual(after.Errors) || !before.NotRated.SequenceEqual(after.NotRated);
        return differs ? change : null;
    }

    // The last bits of a factor differ from machine to machine.
    private static bool Differ(SurveyedRow? before, SurveyedRow? after) =>
        (before is null) != (after is null) || before is not null && (Math.Round(before.Factor ?? -1, 9) != Math.Round(after!.Factor ?? -1, 9) || before.Where != after.Where || before.In != after.In);

    private static IEnumerable<string> FilesOf(SurveyedBridge before, SurveyedBridge after)
    {
        foreach (string name in before.Inputs.Select(i => i.Name).Union(after.Inputs.Select(i => i.Name)).Order(StringComparer.Ordinal))
        {
            string? then = before.Inputs.FirstOrDefault(i => i.Name == name)?.Hash, now = after.Inputs.FirstOrDefault(i => i.Name == name)?.Hash;
            if (then != now)
            {
                yield return $"{name} {(then is null ? "is new" : now is null ? "is gone" : "changed")}";
            }
        }
    }
}
