namespace SpanRater.Files;

/// <summary>What <c>dead</c> says: the take-off of the dead load, item by item, and what reaches each joint.</summary>
public static class DeadLoadPage
{
    private const string NotCounted = "not counted";

    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(units);
        DeadLoadAccount account = bridge.DeadAccount ?? new DeadLoadAccount(null, DeadOrigin.None, DeadOrigin.None, []);
        var title = new ResultBlock.Heading($"{bridge.Name}: dead load take-off");
        bool isThere = DeadLoadWording.CasesOf(bridge).Any();
        string[] notes = [$"{DeadLoadWording.Of(bridge, units)}.", .. isThere ? Remarks(bridge, account) : []];
        IReadOnlyList<object?>[] items = [.. Items(bridge, account, units)], joints = isThere ? [.. JointLoads(bridge)] : [];
        return new ResultPage(
            [
                title,
                .. notes.Take(1).Select(n => new ResultBlock.Paragraph(n, Strong: true)),
                .. notes.Skip(1).Select(n => new ResultBlock.Paragraph(n)),
                .. items.Length == 0 ? (ResultBlock[])[] : [new ResultBlock.Heading("Items"), new ResultBlock.Grid(ShownItems(bridge, items))],
                .. MemberBlocks(bridge, account, units),
                .. isThere ? (ResultBlock[])[new ResultBlock.Heading("Loads at the joints, downward"), new ResultBlock.Grid(ShownJoints(bridge, joints)), new ResultBlock.Paragraph(Words.Caution, Strong: true)] : [],
            ],
            new ResultTable(
                [
                    new("row"), new("name"), new("case"), new("how"), new("per length", Quantity.LineLoad, 3), new("whole bridge", Quantity.Force),
                    new("left truss", Quantity.Force), new("right truss", Quantity.Force), new("counted"), new("source"),
                ],
                [
                    .. items.Select(i => (IReadOnlyList<object?>)["item", .. i]),
                    .. joints.SelectMany(j => DeadLoadWording.CasesOf(bridge).Select(c => (IReadOnlyList<object?>)["joint", j[0], DeadLoadWording.NameOf(c), j[1], null, null, j[2 + (int)c], j[4 + (int)c], "yes", ""])),
                ]),
            [.. notes, Words.Caution],
            json => DeadLoadJson.Write(json, bridge, account),
            IsAnswer: isThere);
    }

    /// <summary>What stands out about where the dead load is from.</summary>
    private static IEnumerable<string> Remarks(Bridge bridge, DeadLoadAccount account)
    {
        if (account.TakeOff is not { } takeOff)
        {
            yield return $"All dead load is from {BridgeFolder.LoadsFile}: {BridgeFolder.MembersFile} gives no weights, and there is no {BridgeFolder.DeadFile}.";
            yield break;
        }

        yield return string.Join(" ", Enum.GetValues<DeadCase>().Select(kind => $"Case {DeadLoadWording.NameOf(kind)}: {MadeOf(account.Of(kind))}."));
        yield return takeOff.Items.Any(i => i.Item.Weight is DeadWeight.Members)
            ? "Members weigh what they weighed as built: steel lost to rust is no relief."
            : $"{BridgeFolder.MembersFile} gives no weights: the trusses themselves count only as far as an item or {BridgeFolder.LoadsFile} holds them.";
        yield return bridge.Deck.Trusses == 2
            ? "Items are shared to the two trusses by the lever rule, from the distance of their centre; members are of each truss."
            : $"Items are shared equally to {bridge.Deck.Trusses} truss{(bridge.Deck.Trusses == 1 ? "" : "es")}; members are of each truss.";
    }

    private static string MadeOf(DeadOrigin origin) => origin switch
    {
        DeadOrigin.None => "none, neither in the take-off nor in loads.csv",
        DeadOrigin.TakeOff => "all of the take-off",
        DeadOrigin.Both => $"{BridgeFolder.LoadsFile} adds to the take-off",
        DeadOrigin.GivenInstead => $"{BridgeFolder.LoadsFile} replaces the take-off, whose items of it are shown and not counted",
        _ => $"all from {BridgeFolder.LoadsFile}",
    };

    // name, case, how, per length, whole bridge, left, right, counted, source
    private static IEnumerable<IReadOnlyList<object?>> Items(Bridge bridge, DeadLoadAccount account, DisplayUnits units)
    {
        foreach (DeadCase kind in Enum.GetValues<DeadCase>())
        {
            foreach (TakeOffItem item in account.TakeOff?.Items.Where(i => i.Item.Case == kind) ?? [])
            {
                yield return
                [
                    item.Item.Name, DeadLoadWording.NameOf(kind), DeadWeightWording.Of(item.Item, bridge.Truss, units), item.PerLength, item.Total, item.OnTruss(0), item.OnTruss(1),
                    account.Of(kind) == DeadOrigin.GivenInstead ? "no" : "yes", DeadWeightWording.Source(item.Item),
                ];
            }

            if (account.Given.FirstOrDefault(c => c.Name == DeadLoadWording.NameOf(kind)) is { } given)
            {
                double down = 0.0 - given.TotalUp;
                yield return [$"{BridgeFolder.LoadsFile}", given.Name, "joint loads on one truss, as given", null, bridge.Deck.Trusses * down, down, down, "yes", ""];
            }
        }
    }

    // One column where the trusses are alike, else one each under its name; a source column only where there is a source.
    private static ResultTable ShownItems(Bridge bridge, IReadOnlyList<object?>[] items)
    {
        bool alike = bridge.TrussesAlike, anyIdle = items.Any(i => i[7] is "no");
        var columns = new List<ResultColumn> { new("item"), new("case"), new("how"), new("per length", Quantity.LineLoad, 3), new("whole bridge", Quantity.Force) };
        columns.AddRange(alike ? [new ResultColumn("one truss", Quantity.Force)] : bridge.Deck.TrussNames.Select(n => new ResultColumn($"{n} truss", Quantity.Force)));
        columns.AddRange(anyIdle ? [new ResultColumn("counts")] : []);
        columns.Add(new ResultColumn("source"));
        return new ResultTable(
            columns,
            [
                .. items.Select(i => (IReadOnlyList<object?>)[i[0], i[1], i[2], i[3], i[4], i[5], .. alike ? (object?[])[] : [i[6]], .. anyIdle ? (object?[])[i[7] is "no" ? NotCounted : ""] : [], i[8]]),
                .. DeadLoadWording.CasesOf(bridge).Select(c => (IReadOnlyList<object?>)
                    ["all", DeadLoadWording.NameOf(c), "", null, Sum(items, c, 4), Sum(items, c, 5), .. alike ? (object?[])[] : [Sum(items, c, 6)], .. anyIdle ? (object?[])[""] : [], ""]),
            ]);
    }

    private static double Sum(IEnumerable<IReadOnlyList<object?>> items, DeadCase kind, int column) =>
        items.Where(i => i[1] is string name && name == DeadLoadWording.NameOf(kind) && i[7] is "yes").Sum(i => (double)i[column]!);

    private static IEnumerable<ResultBlock> MemberBlocks(Bridge bridge, DeadLoadAccount account, DisplayUnits units)
    {
        if (account.TakeOff?.Items.Select(i => i.Item.Weight).OfType<DeadWeight.Members>().FirstOrDefault() is not { } members)
        {
            yield break;
        }

        Truss truss = bridge.Truss;
        yield return new ResultBlock.Heading("Bare members of one truss");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("role"), new("number", Quantity.Number, 0), new($"weight [{(units == DisplayUnits.Us ? "plf" : "kN/m")}]", Quantity.Number, units == DisplayUnits.Us ? 1 : 3), new("length together", Quantity.Length), new("weight", Quantity.Force), new("members")],
            [
                .. Enumerable.Range(0, truss.Members.Count).GroupBy(m => (truss.Members[m].Role, members.PerMember[m])).Select(g => (IReadOnlyList<object?>)
                [
                    g.Key.Role, (double)g.Count(), g.Key.Item2 / Unit.Find(units == DisplayUnits.Us ? "plf" : "kN/m")!.Size, g.Sum(truss.Length),
                    g.Sum(m => truss.Length(m) * members.PerMember[m]), string.Join(" ", g.Select(m => truss.Members[m].Name)),
                ]),
            ]));
    }

    // joint, chord, DC and DW of the left truss, DC and DW of the right one
    private static IEnumerable<IReadOnlyList<object?>> JointLoads(Bridge bridge)
    {
        Bridge left = bridge.OfTruss(0), right = bridge.OfTruss(1);
        foreach ((int joint, ChordPlace chord) in DeadLoadJson.LoadedJoints(bridge))
        {
            string name = bridge.Truss.Joints[joint].Name;
            yield return [name, DeadLoadJson.Word(chord), Down(left, DeadCase.Components, name), Down(left, DeadCase.WearingSurface, name), Down(right, DeadCase.Components, name), Down(right, DeadCase.WearingSurface, name)];
        }
    }

    private static double Down(Bridge truss, DeadCase kind, string joint) => DeadLoadJson.Down(truss, kind, joint);

    private static ResultTable ShownJoints(Bridge bridge, IReadOnlyList<object?>[] joints)
    {
        DeadCase[] cases = [.. DeadLoadWording.CasesOf(bridge)];
        int[] columns = [.. (bridge.TrussesAlike ? [2] : (int[])[2, 4]).SelectMany(start => cases.Select(c => start + (int)c))];
        string[] chords = [.. joints.Select(j => (string)j[1]!).Distinct()];
        IReadOnlyList<object?> Sums(string name, IEnumerable<IReadOnlyList<object?>> rows) => [name, "", .. columns.Select(c => (object?)rows.Sum(r => (double)r[c]!))];
        return new ResultTable(
            [new("joint"), new("chord"), .. columns.Select(c => new ResultColumn($"{DeadLoadWording.NameOf((DeadCase)(c % 2))}{(bridge.TrussesAlike ? "" : $" {bridge.Deck.TrussNames[(c / 2) - 1]}")}", Quantity.Force))],
            [
                .. joints.Select(j => (IReadOnlyList<object?>)[j[0], j[1], .. columns.Select(c => j[c])]),
                .. chords.Length < 2 ? [] : chords.Select(chord => Sums($"all {chord}", joints.Where(j => (string)j[1]! == chord))),
                Sums("all", joints),
            ]);
    }
}
