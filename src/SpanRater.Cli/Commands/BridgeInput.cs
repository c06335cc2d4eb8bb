using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>Reads what a command line names, or ends the command with every fault found.</summary>
internal static class BridgeInput
{
    /// <summary>The bridge. Warnings go to the error writer unless the command prints them itself.</summary>
    public static BridgeReading Read(string folder, IReadOnlyList<string> catalogues, TextWriter? warnings)
    {
        BridgeReading reading = BridgeFolder.Read(folder, catalogues);
        if (reading.Bridge is null)
        {
            throw new RefusedException([.. reading.Findings.All.Select(f => f.ToString())]);
        }

        foreach (Finding finding in reading.Findings.All)
        {
            warnings?.WriteLine(finding.ToString());
        }

        return reading;
    }

    /// <summary>The catalogue alone. Warnings go to the error writer.</summary>
    public static Catalogue ReadCatalogue(IReadOnlyList<string> paths, TextWriter warnings)
    {
        var findings = new FindingList();
        Catalogue catalogue = Catalogue.Read(paths, [], findings);
        if (findings.HasErrors)
        {
            throw new RefusedException([.. findings.All.Select(f => f.ToString())]);
        }

        foreach (Finding finding in findings.All)
        {
            warnings.WriteLine(finding.ToString());
        }

        return catalogue;
    }

    /// <summary>What a name on the command line means.</summary>
    public static LiveLoad Find(Catalogue catalogue, string name, string option)
    {
        if (catalogue.Find(name) is { } load)
        {
            return load;
        }

        // As tables name a vehicle with what stands in the next lane.
        int beside = name.IndexOf(" beside ", StringComparison.Ordinal);
        throw new RefusedException(beside > 0 && catalogue.Find(name[..beside]) is { } first
            ? $"{option} \"{name}\": write {option} \"{first.Name}\": what stands beside it is added by itself."
            : $"{option} \"{name}\": no catalogue has that vehicle.{NearestName.Question(name, catalogue.Names)} List them with: spanrater vehicles");
    }

    /// <summary>Position of the member that is to be explained; null where none is. It is told alone.</summary>
    public static int? FindExplained(Truss truss, string? explained, string? member) => explained switch
    {
        null => null,
        _ when member is not null => throw new RefusedException("--explain and --member each name a member: say one of them. --explain tells all that --member does."),
        _ => FindMember(truss, explained, "--explain"),
    };

    /// <summary>Position of a member named on the command line.</summary>
    public static int FindMember(Truss truss, string name, string option = "--member") =>
        truss.FindMember(name)
        ?? throw new RefusedException($"{option} \"{name}\": members.csv has no such member.{NearestName.Question(FromEnds(truss, name) ?? name, truss.Members.Select(m => m.Name))}");

    /// <summary>Names of the parts of the floor and of the connections.</summary>
    public static IReadOnlyList<string> PartNames(Bridge bridge) => [.. bridge.Floor?.Parts.Select(p => p.Name) ?? [], .. bridge.Connections.Select(c => c.Name)];

    /// <summary>Name of a part given on the command line, which the bridge has.</summary>
    public static string FindPart(Bridge bridge, string name)
    {
        if (PartNames(bridge) is not { Count: > 0 } names)
        {
            throw new RefusedException($"--part \"{name}\": the bridge gives no part; its floor stands in {BridgeFolder.FloorFile}, its connections in {BridgeFolder.ConnectionsFile}.");
        }

        // "floorbeams at L1", as a table names the part and where it is.
        string typed = name.Trim();
        int place = typed.LastIndexOf(" at ", StringComparison.OrdinalIgnoreCase);
        string? Named(string text) => names.FirstOrDefault(n => n.Equals(text, StringComparison.OrdinalIgnoreCase));
        if (Named(typed) is { } part)
        {
            return part;
        }

        if (place > 0 && Named(typed[..place].TrimEnd()) is { } standing && bridge.Truss.FindJoint(typed[(place + 4)..].Trim()) is not null)
        {
            return standing;
        }

        // A number or joint that is wrong has no nearest name: pin L9 is not meant to be pin L1.
        throw new RefusedException(bridge.Truss.FindMember(typed) is not null
            ? $"--part \"{name}\": that is a truss member: write --member {typed}."
            : $"--part \"{name}\": the bridge has no such part.{Likely(typed, names)} Its parts are: {string.Join(", ", names)}.");
    }

    /// <summary>Position of a truss member; a part of that name is refused with the mend.</summary>
    public static int FindMemberNotPart(Bridge bridge, string name, string mend) =>
        bridge.Truss.FindMember(name) is null && PartNames(bridge).Contains(name)
            ? throw new RefusedException($"\"{name}\" is no truss member, but a part: {mend}.")
            : FindMember(bridge.Truss, name);

    // By what was typed of the name, blanks aside; a number that is wrong has no nearest name.
    private static string Likely(string typed, IReadOnlyList<string> names)
    {
        static string Run(string text) => text.Replace(" ", "", StringComparison.Ordinal);
        string[] near = [.. names.Where(n => Run(typed).Length > 2 && Run(n).Contains(Run(typed), StringComparison.OrdinalIgnoreCase))];
        return near.Length == 0 ? "" : $" Did you mean {string.Join(" or ", near.Select(n => $"\"{n}\""))}?";
    }

    // U2L2 for L2U2, or ends run together where the member has a name of another kind.
    private static string? FromEnds(Truss truss, string typed) =>
        truss.Members.FirstOrDefault(m => ((string[])[m.From + m.To, m.To + m.From]).Contains(typed, StringComparer.OrdinalIgnoreCase))?.Name;

    /// <summary>The load case of that name.</summary>
    public static LoadCase FindCase(Bridge bridge, string name)
    {
        if (bridge.FindCase(name) is { } loads)
        {
            return loads;
        }

        string[] cases = [.. bridge.Cases.Select(c => c.Name)];
        string known = cases.Length == 0 ? "it has none" : $"its cases are: {string.Join(", ", cases)}";
        throw new RefusedException($"--case \"{name}\": the bridge has no such case; {known}.{NearestName.Question(name, cases)}");
    }

    /// <summary>Name of a joint given on the command line, which the truss has.</summary>
    public static string FindJoint(Truss truss, string name, string option) =>
        truss.FindJoint(name) is not null
            ? name
            : throw new RefusedException($"{option} \"{name}\": joints.csv has no such joint.{NearestName.Question(name, truss.Joints.Select(j => j.Name))}");
}
