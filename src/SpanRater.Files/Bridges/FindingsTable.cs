namespace SpanRater.Files;

/// <summary>findings.csv: what an inspector saw on the members, one observation a row.</summary>
internal sealed class FindingsTable
{
    /// <summary>What a row says that holds for both trusses.</summary>
    public const string BothTrusses = "both";

    internal static readonly TableColumn[] Columns =
    [
        new("member", Required: true),
        new("truss"),
        new("place"),
        new("part"),
        new("piece", Quantity.Number),
        new("what", Required: true),
        new("dimension"),
        new("remaining", Quantity.Length, Units: "in or mm"),
        new("face"),
        new("hole", Quantity.Length, Units: "in or mm"),
        new("count", Quantity.Number),
        new("decay", Quantity.Length, Units: "in or mm"),
        new("bow", Quantity.Length, Units: "in or mm"),
        new("direction"),
        new("doubt", Quantity.Length, Units: "in or mm"),
        new("by"),
        new("how"),
        new("photo"),
        new("date"),
    ];

    private readonly List<(TableRow Row, string Member, int[] Trusses, Observation Seen)> rows = [];
    private readonly Dictionary<(string Member, int Truss), FoundSection> found = [];
    private readonly IReadOnlyList<string> floorNames;

    private FindingsTable(IReadOnlyList<string> floor)
    {
        floorNames = floor;
    }

    /// <summary>Every observation: on what, on which trusses (0 for the left or only one, 1 for the right one), and whether that is a part of the floor.</summary>
    public IReadOnlyList<(string Member, IReadOnlyList<int> Trusses, bool IsOnFloor, Observation Seen)> Rows =>
        [.. rows.Select(r => (r.Member, (IReadOnlyList<int>)r.Trusses, floorNames.Contains(r.Member), r.Seen))];

    /// <summary>The members that something was seen on, in the order first named.</summary>
    public IEnumerable<string> Members => rows.Select(r => r.Member).Distinct();

    /// <summary>The section of a member of one truss as found; null where nothing was seen on it, or it has no section.</summary>
    /// <param name="member">Its name.</param>
    /// <param name="truss">0 for the left or only truss, 1 for the right one.</param>
    public FoundSection? Find(string member, int truss) => found.GetValueOrDefault((member, truss));

    /// <summary>Where something was first seen on a member.</summary>
    public Place PlaceOf(string member) => rows.First(r => r.Member == member).Row.Where;

    /// <summary>The observations; null where the table cannot be used.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name in findings.</param>
    /// <param name="members">Names of the members; null where they could not be read.</param>
    /// <param name="floor">Names of the parts of the floor.</param>
    /// <param name="deck">The deck; null where it could not be read.</param>
    /// <param name="built">The year the bridge was built; null where it is not said.</param>
    /// <param name="sectionOf">The section of a member as built; null where it has none.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static FindingsTable? Read(
        string text, string file, IReadOnlyList<string>? members, IReadOnlyList<string> floor, Deck? deck, int? built, Func<string, MemberSection?> sectionOf, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var seen = new FindingsTable(floor);
        foreach (TableRow row in table.Rows)
        {
            string? member = MemberOf(row, members, floor, findings);
            int[]? trusses = member is not null && floor.Contains(member) ? AcrossTrusses(row, findings) : TrussesOf(row, deck, findings);
            Observation? observation = FindingCells.ObservationOf(row, built, findings);
            if (member is not null && trusses is not null && observation is not null)
            {
                seen.rows.Add((row, member, trusses, observation));
            }
        }

        if (table.Rows.Count == 0)
        {
            findings.Warning(new Place(file), "holds no finding: write a row for each, or remove the file.");
        }

        seen.PutOnSections(sectionOf, findings);
        return table.HasBrokenRows ? null : seen;
    }

    private static string? MemberOf(TableRow row, IReadOnlyList<string>? members, IReadOnlyList<string> floor, FindingList findings)
    {
        if (row.Required("member") is not { } name)
        {
            return null;
        }

        if (members?.Contains(name) != false || floor.Contains(name))
        {
            return name;
        }

        findings.Error(row["member"].Where, $"finding on member \"{name}\", which members.csv does not have{(floor.Count > 0 ? $", nor {BridgeFolder.FloorFile}" : "")}.{NearestName.Question(name, [.. members, .. floor])}");
        return null;
    }

    // The floor belongs to no truss.
    private static int[]? AcrossTrusses(TableRow row, FindingList findings)
    {
        TableCell cell = row["truss"];
        if (cell.IsBlank || cell.Text == BothTrusses)
        {
            return [0, 1];
        }

        findings.Error(cell.Where, $"truss \"{cell.Text}\": a part of the floor belongs to no truss: clear the cell, and say under place where on the deck it is.");
        return null;
    }

    // What was seen on one truss is never taken over to the other one unasked.
    private static int[]? TrussesOf(TableRow row, Deck? deck, FindingList findings)
    {
        TableCell cell = row["truss"];
        if (deck is null)
        {
            return [0, 1];
        }

        if (deck.Trusses != 2)
        {
            if (!cell.IsBlank)
            {
                findings.Error(cell.Where, $"truss \"{cell.Text}\": the bridge has {deck.Trusses} truss: clear the cell.");
                return null;
            }

            return [0];
        }

        string choice = $"{deck.TrussNames[0]}, {deck.TrussNames[1]}, or {BothTrusses} where it was seen on both";
        if (cell.IsBlank)
        {
            findings.Error(cell.Where, $"on which truss? Write {choice}: what was seen on one is not taken over to the other.");
            return null;
        }

        if (cell.Text == BothTrusses)
        {
            return [0, 1];
        }

        int index = deck.TrussNames.ToList().IndexOf(cell.Text);
        if (index < 0)
        {
            findings.Error(cell.Where, $"truss \"{cell.Text}\" is not known.{NearestName.Question(cell.Text, [.. deck.TrussNames, BothTrusses])} Write {choice}.");
            return null;
        }

        return [index];
    }

    private void PutOnSections(Func<string, MemberSection?> sectionOf, FindingList findings)
    {
        var said = new HashSet<(Place, string)>();
        foreach (string member in Members)
        {
            if (sectionOf(member) is not { } section)
            {
                foreach ((TableRow row, _, _, _) in rows.Where(r => r.Member == member && r.Seen.NeedsSection()))
                {
                    findings.Error(row["member"].Where, $"{(floorNames.Contains(member) ? "part" : "member")} \"{member}\" has no section that this could be taken off: name its section in {(floorNames.Contains(member) ? BridgeFolder.FloorFile : BridgeFolder.MembersFile)}, and write its parts in sections.csv.");
                }

                continue;
            }

            foreach (int truss in (int[])[0, 1])
            {
                var here = rows.Where(r => r.Member == member && r.Trusses.Contains(truss)).ToList();
                if (here.Count == 0)
                {
                    continue;
                }

                FoundSectionCheck check = FoundSection.Create(section, [.. here.Select(r => r.Seen)]);
                foreach (ObservationFault fault in check.Faults)
                {
                    TableRow row = here[fault.Index].Row;
                    TableRow? first = fault is ObservationFault.ToldTwice twice ? here[twice.First].Row : null;
                    (Place where, string what) = ObservationFaultWording.Of(fault, here[fault.Index].Seen, row, first, section);

                    // A row for both trusses has its faults once.
                    if (said.Add((where, what)))
                    {
                        findings.Error(where, what);
                    }
                }

                if (check.Section is { } sound)
                {
                    found.Add((member, truss), sound);
                }
            }
        }
    }
}
