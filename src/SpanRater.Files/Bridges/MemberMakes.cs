using System.Globalization;

namespace SpanRater.Files;

/// <summary>Puts together what members are made of: members.csv, sections.csv, lacing.csv, materials.toml, findings.csv and [pony].</summary>
internal sealed class MemberMakes(MembersTable members, SectionsTable? sections, LacingTable? lacing, MaterialsToml? materials, FindingsTable? seen, BridgeToml said, FindingList findings)
{
    // Told once, though it may have been seen on both trusses.
    private readonly HashSet<string> notLaced = [];

    private readonly PonyFrame? frame = said.Pony?.FrameOf(sections, said.Deck, findings);

    /// <summary>The makes on the left truss, and on the right one where anything was seen on one alone.</summary>
    public (IReadOnlyList<MemberMake?> Left, IReadOnlyList<MemberMake?>? Right) On(Truss truss)
    {
        MemberMake?[] left = [.. truss.Members.Select((_, m) => MakeOf(truss, m, 0))];
        MemberMake?[] right = [.. truss.Members.Select((_, m) => MakeOf(truss, m, 1))];
        bool alike = said.Deck.Trusses != 2 || left.Zip(right).All(p => p.First?.Section == p.Second?.Section || (p.First?.Section.Observations.SequenceEqual(p.Second!.Section.Observations) ?? true));
        foreach (string member in seen?.Members ?? [])
        {
            if (truss.FindMember(member) is { } m && HasGivenCapacity(m))
            {
                findings.Warning(seen!.PlaceOf(member), $"member \"{member}\" has capacities in {BridgeFolder.MembersFile}, which are used as they stand: what was seen on it has no part in them.");
            }
        }

        return (left, alike ? null : right);
    }

    private bool HasGivenCapacity(int member) => Enum.GetValues<GivenCapacity>().Any(c => members.Capacities[member][c] is not null);

    private MemberMake? MakeOf(Truss truss, int m, int side)
    {
        MemberHold hold = members.Holds[m];
        if (hold.Section is null || sections?.Find(hold.Section) is not { } section)
        {
            return null;
        }

        Member member = truss.Members[m];
        (Joint from, Joint to) = (truss.Joints[truss.FindJoint(member.From)!.Value], truss.Joints[truss.FindJoint(member.To)!.Value]);
        double across = to.X - from.X, length = double.Hypot(across, to.Y - from.Y);
        string[] loose = [.. new[] { from, to }.Where(j => !j.IsHeldSideways).Select(j => j.Name)];

        // Of a pony truss the chord is on springs, and its frames hold the joints of all other members.
        bool isPonyChord = frame is not null && loose.Length > 0 && member.IsChord && hold.OutOfPlaneLength is null;
        FoundSection found = seen?.Find(member.Name, side) ?? FoundSection.Sound(section);
        Binding? binding = lacing?.Find(hold.Section);
        if (found.LacingMissing > 0 && binding is not Binding.Laced && notLaced.Add(member.Name))
        {
            findings.Error(seen!.PlaceOf(member.Name), $"lacing is missing on member \"{member.Name}\", and {BridgeFolder.LacingFile} gives its section \"{hold.Section}\" none: write a row of it there.");
        }

        Material? material = members.MaterialNameOf(m) is { } name ? materials?.Find(name) : null;
        return new MemberMake
        {
            Section = found,
            Material = material,
            Ends = hold.Ends,
            InPlaneLength = hold.InPlaneLength ?? length,
            OutOfPlaneLength = hold.OutOfPlaneLength ?? (loose.Length == 0 || (frame is not null && !isPonyChord) ? length : null),
            LooseJoints = loose,
            InPlaneFactor = hold.InPlaneFactor,
            OutOfPlaneFactor = hold.OutOfPlaneFactor,
            ShearLag = hold.ShearLag,
            Binding = binding is Binding.Laced laced ? laced with { MissingInRow = found.LacingMissing } : binding,
            Pony = isPonyChord ? said.Pony!.Hold(frame!, length) : null,
            OwnMoment = OwnMomentOf(m, section, material, Math.Abs(across)),
        };
    }

    // A simple span between the joints, under the weight given or that of sound timber.
    private double OwnMomentOf(int m, MemberSection section, Material? material, double across)
    {
        double weight = material is not TimberMaterial ? 0
            : members.Weights[m] ?? (section.Area * UnitWeightOf(material.Kind));
        return weight * across * across / 8;
    }

    /// <summary>Weight per volume of a kind of material [N/m³].</summary>
    public static double UnitWeightOf(MaterialKind kind) => kind switch
    {
        MaterialKind.Timber => PublishedUnitWeight.Find("timber")!.Weight,
        MaterialKind.WroughtIron => 480 * PublishedUnitWeight.PoundPerCubicFoot,
        _ => PublishedUnitWeight.Find("steel")!.Weight,
    };

    /// <summary>Members whose section names none, and areas that do not go with the section.</summary>
    public static void Check(MembersTable members, SectionsTable? sections, MaterialsToml? materials, FindingList findings)
    {
        for (int m = 0; m < members.Members.Count; m++)
        {
            if (members.MaterialNameOf(m) is { } material && materials?.Has(material) != true && !MembersTable.IsPlainMaterial(material))
            {
                string[] known = [.. materials?.Materials.Select(x => x.Name) ?? [], .. MembersTable.PlainMaterials];
                findings.Error(members.PlaceOf(m, "material"), $"material \"{material}\" is not known.{NearestName.Question(material, known)} Write a name of {BridgeFolder.MaterialsFile}; without a strength steel, wrought iron or timber; or leave it blank.");
            }

            if (members.Holds[m].Section is not { } name)
            {
                continue;
            }

            if (sections?.Names.Contains(name) != true)
            {
                findings.Error(members.PlaceOf(m, "section"), sections is null
                    ? $"section \"{name}\" is named, and there is no {BridgeFolder.SectionsFile}: write its parts there."
                    : $"there is no section \"{name}\" in {BridgeFolder.SectionsFile}.{NearestName.Question(name, sections.Names)}");
                continue;
            }

            if (sections.Find(name) is { } section && members.Members[m].Area is { } area && Math.Abs(area - section.Area) > 0.05 * section.Area)
            {
                findings.Warning(
                    members.PlaceOf(m, "area"),
                    string.Create(CultureInfo.InvariantCulture, $"member \"{members.Members[m].Name}\" has an area of {members.CellText(m, "area")}, and its section \"{name}\" one of {section.Area / (0.0254 * 0.0254):0.###} in2 ({section.Area * 1e4:0.##} cm2): stiffness and deflections go by the first, strength by the second. Leave area blank to take that of the section."));
            }
        }
    }
}
