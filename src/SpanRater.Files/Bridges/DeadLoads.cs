namespace SpanRater.Files;

/// <summary>The dead load of a folder: members' weights and dead.csv taken off, and what loads.csv does to that.</summary>
/// <param name="Account">Where it is from.</param>
/// <param name="Cases">Every load case of the folder, on the left truss.</param>
/// <param name="RightCases">The same on the right truss, where they differ.</param>
internal sealed record DeadLoads(DeadLoadAccount Account, IReadOnlyList<LoadCase> Cases, IReadOnlyList<LoadCase>? RightCases)
{
    private static readonly string[] DeadCases = [Bridge.ComponentsCase, Bridge.WearingSurfaceCase];

    /// <summary>The dead load, and with it all cases.</summary>
    public static DeadLoads Of(Truss truss, BridgeToml said, MembersTable members, SectionsTable? sections, MaterialsToml? materials, DeadTable? table, LoadsTable? loads, FindingList findings)
    {
        var weights = new MemberWeighing(members, sections, materials, said.Dead, findings);
        List<DeadItem> items = [.. weights.Items(table is not null), .. table?.Items ?? []];
        TakeOff? takeOff = items.Count > 0 && !findings.HasErrors ? TakeOff.Of(truss, said.Deck, items) : null;
        IReadOnlyList<LoadCase> cases = loads?.Cases ?? [], given = [.. cases.Where(c => DeadCases.Contains(c.Name))];
        foreach (LoadCase both in given)
        {
            DeadItem? item = items.Find(i => (i.Case == DeadCase.Components ? Bridge.ComponentsCase : Bridge.WearingSurfaceCase) == both.Name);
            if (item is not null && !said.Dead.HasLoads)
            {
                Place where = item.Weight is DeadWeight.Members ? weights.FirstPlace : table!.PlaceOf(item);
                findings.Error(said.Dead.Where, $"{where} and {loads!.PlaceOf(both.Name)} both give dead load of case {both.Name}: write loads = \"add\" under [dead] where loads.csv adds to the take-off, or loads = \"replace\" where it stands in its place.");
            }
        }

        (DeadLoadAccount account, IReadOnlyList<LoadCase> left, IReadOnlyList<LoadCase>? right) = DeadLoadAccount.Make(takeOff, given, said.Dead.LoadsInstead ?? false);
        foreach (LoadCase upward in left.Concat(right ?? []).Where(c => takeOff is not null && c.TotalUp > 0))
        {
            findings.Error(new Place(BridgeFolder.DeadFile), $"the dead load of case {upward.Name} lifts a truss as a whole: check the column centre, and truss_spacing in bridge.toml.");
        }

        LoadCase[] others = [.. cases.Where(c => !DeadCases.Contains(c.Name))];
        return new DeadLoads(account, [.. left, .. others], right is null ? null : [.. right, .. others]);
    }
}
