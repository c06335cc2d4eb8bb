namespace SpanRater.Files;

/// <summary>What members weigh in the take-off: as members.csv gives it, and where [dead] asks for it by their sections as built.</summary>
internal sealed class MemberWeighing(MembersTable members, SectionsTable? sections, MaterialsToml? materials, DeadSettings said, FindingList findings)
{
    private bool FromSections => said.Weights == MemberWeights.FromSections;

    /// <summary>Where the first weight is from.</summary>
    public Place FirstPlace => members.Weights.FindIndex(w => w is not null) is >= 0 and var first ? members.PlaceOf(first, "weight") : said.WeightsWhere ?? said.Where;

    /// <summary>The bare members, and the allowance on them; nothing where no member has a weight.</summary>
    /// <param name="hasTable">Whether there is a dead.csv.</param>
    public IReadOnlyList<DeadItem> Items(bool hasTable)
    {
        bool anyGiven = members.Weights.Exists(w => w is not null);
        if (!anyGiven && !FromSections)
        {
            WarnOfNone(hasTable);
            return [];
        }

        var weights = new double[members.Members.Count];
        for (int m = 0; m < weights.Length; m++)
        {
            weights[m] = members.Weights[m] ?? (FromSections && members.IsBlank(m, "weight") ? OfSection(m) : NotGiven(m));
        }

        if (said.Allowance is not { } allowance)
        {
            if (!said.HasAllowance)
            {
                findings.Error(said.Where, $"{FirstPlace} gives the weight of {(anyGiven ? "a member" : "members")}, and the allowance for rivets, lacing and gussets is missing: write allowance = 0.10, or what it is, under [dead]; 0 where the weights hold them.");
            }

            return [];
        }

        const string BySections = "weights from sections, members as built; steel lost to rust is no relief";
        string source = !FromSections ? $"weights of {BridgeFolder.MembersFile}, members as built" : anyGiven ? $"weights of {BridgeFolder.MembersFile}; else {BySections}" : BySections;
        return
        [
            new DeadItem("members, bare", DeadCase.Components, new DeadWeight.Members(weights, 1)) { Source = source },
            new DeadItem("allowance for rivets, lacing and gussets", DeadCase.Components, new DeadWeight.Members(weights, allowance)) { Source = $"allowance of {BridgeFolder.BridgeFile}" },
        ];
    }

    private void WarnOfNone(bool hasTable)
    {
        if (said.Allowance is not null)
        {
            findings.Warning(said.Where, $"allowance is added to the weights of members, and {BridgeFolder.MembersFile} gives none: it has no effect.");
        }

        if (hasTable && said.Weights is null && members.Holds.Exists(h => h.Section is not null))
        {
            findings.Warning(said.Where, $"no member has a weight, so that the take-off of {BridgeFolder.DeadFile} counts no members: write member_weights = \"from sections\" under [dead], or \"in dead.csv\" where an item there holds them.");
        }
    }

    private double NotGiven(int m)
    {
        if (members.IsBlank(m, "weight"))
        {
            findings.Error(members.PlaceOf(m, "weight"), $"member \"{members.Members[m].Name}\" has no weight, and others have: write its weight per length, 0 where it is counted elsewhere.");
        }

        return 0;
    }

    // Nothing is weighed by a material that is not named.
    private double OfSection(int m)
    {
        MemberSection? section = members.Holds[m].Section is { } name ? sections?.Find(name) : null;
        if (section is not null && UnitWeightOf(m) is { } unitWeight)
        {
            return section.Area * unitWeight;
        }

        // A section that is named and not there, or has faults, is told where it is read.
        if (section is not null || members.Holds[m].Section is null)
        {
            findings.Error(members.PlaceOf(m, "weight"), $"member \"{members.Members[m].Name}\" has no weight, and no {(section is null ? "section" : "material")} to weigh it by: write its weight per length, 0 where it is counted elsewhere, or its {(section is null ? "section and " : "")}material.");
        }

        return 0;
    }

    private double? UnitWeightOf(int m) => members.MaterialNameOf(m) switch
    {
        null => null,
        var name when materials?.Find(name) is { } material => MemberMakes.UnitWeightOf(material.Kind),
        var name when MembersTable.IsPlainMaterial(name) => MemberMakes.UnitWeightOf(MaterialWords.Kinds.First(k => string.Equals(k.Word, name, StringComparison.OrdinalIgnoreCase)).Kind),
        _ => null,
    };
}
