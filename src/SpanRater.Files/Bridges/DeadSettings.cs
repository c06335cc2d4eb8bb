namespace SpanRater.Files;

/// <summary>Table [dead] of bridge.toml: how the dead load comes together. Nothing in it has a default.</summary>
/// <param name="Where">Where the table stands, or the file where there is none.</param>
/// <param name="Allowance">Part added to the weights of members for rivets, lacing and gussets; null where it is not given.</param>
/// <param name="LoadsInstead">True where a dead case of loads.csv replaces the take-off's, false where it adds to it; null where that is not said.</param>
/// <param name="HasAllowance">Whether the key is there, be its value good or not.</param>
/// <param name="HasLoads">The same of loads.</param>
/// <param name="Weights">Where members without a weight of their own are weighed; null where that is not said.</param>
/// <param name="WeightsWhere">Where that stands.</param>
internal sealed record DeadSettings(Place Where, double? Allowance = null, bool? LoadsInstead = null, bool HasAllowance = false, bool HasLoads = false, MemberWeights? Weights = null, Place? WeightsWhere = null)
{
    /// <summary>What the table says.</summary>
    public static DeadSettings Read(TomlSection section, FindingList findings)
    {
        double? allowance = section.Number("allowance", 0, 1, "write the part added for rivets, lacing and gussets as a fraction, such as 0.10 for 10%.");
        string? loads = section.Text("loads");
        if (loads is not (null or "add" or "replace"))
        {
            findings.Error(section.PlaceOf("loads"), $"loads = \"{loads}\": write \"add\", where loads.csv adds to the take-off, or \"replace\", where it stands in its place.{NearestName.Question(loads, ["add", "replace"])}");
        }

        string? weights = section.Text("member_weights");
        MemberWeights? from = weights switch { "from sections" => MemberWeights.FromSections, "in dead.csv" => MemberWeights.InDeadTable, _ => null };
        if (weights is not null && from is null)
        {
            findings.Error(section.PlaceOf("member_weights"), $"member_weights = \"{weights}\": write \"from sections\", where members without a weight weigh their section as built, or \"in dead.csv\", where an item of {BridgeFolder.DeadFile} holds them.{NearestName.Question(weights, ["from sections", "in dead.csv"])}");
        }

        section.SayWhatIsUnknown();
        return new DeadSettings(section.Where, allowance, loads switch { "add" => false, "replace" => true, _ => null }, section.Has("allowance"), section.Has("loads"), from, section.Has("member_weights") ? section.PlaceOf("member_weights") : null);
    }
}

/// <summary>Where members are weighed that have no weight in members.csv.</summary>
internal enum MemberWeights
{
    /// <summary>By their section as built and the weight of their material.</summary>
    FromSections,

    /// <summary>By an item of dead.csv, so that they do not count beside it.</summary>
    InDeadTable,
}
