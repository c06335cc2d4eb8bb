using System.Reflection;
using SpanRater.Files;

namespace SpanRater.Tests.CommandLine;

/// <summary>materials.toml: what is read, what is refused, and what is missing without being refused.</summary>
public sealed class MaterialsFileTests : IDisposable
{
    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch;

    private const string Whole = """
        [[material]]
        name = "chord steel"
        kind = "steel"
        strength = "by year"

        [[material]]
        name = "tested"
        kind = "wrought iron"
        yield = "33 ksi"
        ultimate = "48 ksi"
        coupons = 3
        source = "two coupons of a counter, one of a chord"
        modulus = "27000 ksi"

        [[material]]
        name = "chord timber"
        kind = "timber"
        species = "Douglas Fir-Larch"
        class = "beams and stringers"
        grade = "No.1"
        service = "wet"
        duration = "two months"

        """;

    private readonly BridgeOnDisk bridge = new BridgeOnDisk().Write("materials.toml", Whole);

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Read_EveryKind_IsThere()
    {
        BridgeReading reading = BridgeFolder.Read(bridge.Folder, []);
        Assert.Empty(reading.Findings.All);
        MaterialsToml materials = reading.Materials!;
        Assert.Equal(["chord steel", "tested", "chord timber"], materials.Materials.Select(m => m.Name));

        MetalMaterial chord = Assert.IsType<MetalMaterial>(materials.Find("Chord steel"));
        Assert.Equal((30.0, 60.0), (Math.Round(chord.Strength!.Yield / Ksi, 9), Math.Round(chord.Strength.Ultimate!.Value / Ksi, 9)));
        Assert.Equal(new StrengthOrigin.ByYear(1908, PublishedStrength.Find(MaterialKind.Steel, 1908)!), chord.Strength.Origin);
        Assert.Equal((PublishedStrength.Modulus, (MissingDatum?)null), (chord.Modulus, chord.MissingUltimate));

        MetalMaterial tested = Assert.IsType<MetalMaterial>(materials.Find("tested"));
        Assert.Equal(new StrengthOrigin.Tested(3, "two coupons of a counter, one of a chord"), tested.Strength!.Origin);
        Assert.Equal(27_000, tested.Modulus!.Value / Ksi, 1e-6);

        TimberMaterial timber = Assert.IsType<TimberMaterial>(materials.Find("chord timber"));
        Assert.Equal(TimberDesignValues.Find("Douglas Fir-Larch", TimberSizeClass.BeamsAndStringers, "No.1"), timber.Values);
        Assert.Equal(new TimberUse(true, LoadDuration.TwoMonths), timber.Use);
        Assert.Equal(16, materials.PlaceOf("chord timber").Line);
    }

    [Fact]
    public void Read_NoFile_IsNone()
    {
        File.Delete(bridge.PathOf("materials.toml"));
        Assert.Null(BridgeFolder.Read(bridge.Folder, []).Materials);
    }

    [Fact]
    public void Read_TimberOfOnesOwnValues_IsTakenAsItStands()
    {
        bridge.Replace("materials.toml", "species = \"Douglas Fir-Larch\"\nclass = \"beams and stringers\"\ngrade = \"No.1\"", "class = \"posts and timbers\"\nbending = \"1000 psi\"\ntension = \"600 psi\"\nshear = \"120 psi\"\ncompression_across = \"300 psi\"\ncompression = \"800 psi\"\nmodulus = \"1200000 psi\"\nleast_modulus = \"440000 psi\"\nsource = \"graded on site\"");
        TimberMaterial timber = Assert.IsType<TimberMaterial>(BridgeFolder.Read(bridge.Folder, []).Materials!.Find("chord timber"));
        Assert.Equal(new StrengthOrigin.Given("graded on site"), timber.Origin);
        Assert.Equal((800.0, TimberSizeClass.PostsAndTimbers), (Math.Round(timber.Values.Compression / Ksi * 1000, 6), timber.Values.SizeClass));
    }

    [Theory]
    [InlineData("strength = \"by year\"\n", "", "materials.toml:1:1: warning: material \"chord steel\": No yield for 1908 steel. Write strength = \"by year\" to accept 30 ksi (1905 to 1936), or a tested value, yield = \"…\" with its coupons and source.")]
    [InlineData("\"steel\"\nstrength = \"by year\"", "\"rivet\"", "materials.toml:1:1: warning: material \"chord steel\": No yield for 1908 rivets, and none is published by year. Write yield = \"…\" with its source, and coupons where it was tested.")]
    public void Check_NoStrength_IsWarnedOfAndNothingIsAssumed(string old, string with, string warning)
    {
        bridge.Replace("materials.toml", old, with);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((0, true), (run.Status, (run.Output + run.Error).Contains(warning, StringComparison.Ordinal)));
        MetalMaterial material = Assert.IsType<MetalMaterial>(BridgeFolder.Read(bridge.Folder, []).Materials!.Materials[0]);
        Assert.Null(material.Strength);
        Assert.IsType<MissingDatum.Yield>(material.MissingYield);
    }

    [Theory]
    [InlineData("name = \"chord steel\"\n", "", "1:1: key \"name\" is missing in [[material]]: write name = \"…\", the word that members.csv uses for it.")]
    [InlineData("\"tested\"", "\"Chord steel\"", "7:8: material \"Chord steel\" is there twice, first on line 2: give one another name.")]
    [InlineData("\"tested\"", "\"steel\"", "7:8: a material named \"steel\" is of kind \"steel\": give it another name, or mend its kind.")]
    [InlineData("kind = \"steel\"\n", "", "1:1: key \"kind\" is missing in [[material]]: write what it is, kind = one of \"steel\", \"wrought iron\", \"pin\", \"rivet\", \"timber\".")]
    [InlineData("\"steel\"\n", "\"stell\"\n", "3:8: kind = \"stell\" is not known. Did you mean \"steel\"? Write one of \"steel\", \"wrought iron\", \"pin\", \"rivet\", \"timber\".")]
    [InlineData("\"by year\"", "\"by-year\"", "4:12: strength = \"by-year\": the only word is \"by year\", which accepts the published strength for the year of building. A strength of your own is yield = \"…\" with its source.")]
    [InlineData("\"by year\"", "\"by year\"\nyield = \"33 ksi\"", "5:9: yield does not go with strength = \"by year\": keep the one that holds.")]
    [InlineData("\"steel\"\nstrength", "\"rivet\"\nstrength", "4:12: no strength of rivets is published by year: write yield = \"…\" with its source.")]
    [InlineData("\"33 ksi\"", "\"33 psi\"", "9:9: yield = \"33 psi\" is not believed: write a value from 10 to 120 ksi (70 to 830 MPa), and check its unit.")]
    [InlineData("\"48 ksi\"", "\"30 ksi\"", "10:12: ultimate is below yield: no metal breaks before it yields. Swap the two, or mend one.")]
    [InlineData("yield = \"33 ksi\"\n", "", "9:12: ultimate goes with a yield: write yield = \"…\" with its source.")]
    [InlineData("coupons = 3", "coupons = 0", "11:11: coupons = 0: write the number of pieces that were tested, from 1 on.")]
    [InlineData("source = \"two coupons of a counter, one of a chord\"\n", "", "9:9: yield is given without a source: write source = \"…\", where it is from: the tests, a drawing, a mill sheet. Every result prints it.")]
    [InlineData("modulus = \"27000", "modulis = \"27000", "13:1: unknown key \"modulis\". Did you mean \"modulus\"? The keys in [material] are: name, kind, strength, yield, ultimate, modulus, coupons, source.")]
    [InlineData("\"Douglas Fir-Larch\"", "\"Douglas Fir\"", "18:11: species = \"Douglas Fir\" is not known. Write one of \"Douglas Fir-Larch\", \"Southern Pine\", or values of your own with their source.")]
    [InlineData("\"Douglas Fir-Larch\"", "\"Douglas Fir-Lerch\"", "18:11: species = \"Douglas Fir-Lerch\" is not known. Did you mean \"Douglas Fir-Larch\"? Write one of \"Douglas Fir-Larch\", \"Southern Pine\", or values of your own with their source.")]
    [InlineData("\"Douglas Fir-Larch\"", "\"Southern Pine\"", "19:9: Southern Pine has no published values of that class in the program. Write one of \"5x5 in and larger\", or values of your own with their source.")]
    [InlineData("\"No.1\"", "\"No.3\"", "20:9: grade = \"No.3\" is not known. Did you mean \"No.2\"? Write one of \"Select Structural\", \"No.1\", \"No.2\", or values of your own with their source.")]
    [InlineData("\"beams and stringers\"", "\"beams\"", "19:9: class = \"beams\" is not known. Write one of \"2-4 in thick\", \"beams and stringers\", \"posts and timbers\", \"5x5 in and larger\".")]
    [InlineData("grade = \"No.1\"\n", "", "15:1: key \"grade\" is missing in [[material]]: write the grade, as it was stamped or as someone qualified graded it; none is assumed.")]
    [InlineData("service = \"wet\"\n", "", "15:1: key \"service\" is missing in [[material]]: write whether it is wet in service, service = one of \"wet\", \"dry\".")]
    [InlineData("\"two months\"", "\"two month\"", "22:12: duration = \"two month\" is not known. Did you mean \"two months\"? Write one of \"permanent\", \"ten years\", \"two months\", \"seven days\", \"ten minutes\", \"impact\".")]
    [InlineData("grade = \"No.1\"", "grade = \"No.1\"\nbending = \"1000 psi\"", "21:11: a timber has either species and grade, whose values are published, or values of its own: keep the ones that hold.")]
    [InlineData("service = \"wet\"", "service = \"wet\"\nsource = \"me\"", "22:10: source goes with values of one's own; those of a species and grade are published. Take source away, or give bending, tension, shear, compression_across, compression, modulus, least_modulus.")]
    [InlineData("[[material]]\nname = \"tested\"", "[[matrial]]\nname = \"tested\"", "6:1: unknown table [matrial]. Did you mean \"material\"? Each material is a table [[material]].")]
    public void Check_Faulty_IsRefused(string old, string with, string error)
    {
        bridge.Replace("materials.toml", old, with);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains($"materials.toml:{error}\n", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void Check_ByYearWithoutTheYear_IsRefused()
    {
        bridge.Replace("bridge.toml", "built = 1908\n", "");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Equal("materials.toml:4:12: strength = \"by year\" takes the year the bridge was built, and bridge.toml does not say it: write built = … there, or here yield = \"…\" with its source.\n", run.Error);
    }

    public static TheoryData<MissingDatum, string> Data() => new()
    {
        { new MissingDatum.NoSection(), "No section. Name one of sections.csv under section in floor.csv" },
        { new MissingDatum.DeckWeight(true, true), "What the deck weighs is missing. Write deck_dc and deck_dw under [floor] in bridge.toml, or the layers in dead.csv" },
        { new MissingDatum.DeckWeight(false, true), "What the deck weighs is missing. Write deck_dw under [floor] in bridge.toml, or the layers in dead.csv" },
        { new MissingDatum.BeamWeight(PartKind.Stringer, null), "What stringers weigh is not known, and that comes onto it. Write a row for them in floor.csv with section and material, or without = [\"stringer\"] under [floor] in bridge.toml where there are none" },
        { new MissingDatum.BeamWeight(PartKind.Floorbeam, "cross beams"), "What \"cross beams\" weigh is not known, and that comes onto it. Name their section and material in floor.csv" },
        { new MissingDatum.DeckType(), "What the deck is decides how much of a wheel one stringer takes, and floor.csv has no row of kind deck. Write one with its type" },
        { new MissingDatum.PlaceAcross(new ShareOutcome.NotGiven(true, true)), "Where wheels stand across the deck is not known. Write truss_spacing and roadway under [deck] in bridge.toml" },
        { new MissingDatum.PlaceAcross(new ShareOutcome.NotTwoTrusses(3)), "Where wheels stand on a floorbeam between other than two trusses has no rule in the program" },
        { new MissingDatum.PlaceAcross(new ShareOutcome.TooWide(2.4, 2)), "The vehicle does not stand between the kerbs and between the trusses, and only a given share carries it on the trusses. Check roadway, roadway_offset and truss_spacing" },
        { new MissingDatum.BeamRule("LFR"), "LFR has no rule for beams in the program. Rate it by LRFR, LFR or ASR" },
        { new MissingDatum.FlangeHeld(), "How far apart its compression flange is held is not known. Write unbraced in floor.csv, 0 where the deck or beams hold it all along" },
        { new MissingDatum.LateralRule("box"), "Section \"box\" is not one I-shape, and the program has no rule for its sideways buckling. Write unbraced = 0 where its flange is held all along" },
        { new MissingDatum.NoWeb("bar"), "Section \"bar\" has no upright web, and the program has no rule for its shear" },
        { new MissingDatum.MetalBearing(), "The program has no rule for the bearing of a metal beam" },
        { new MissingDatum.BearingLength(), "The length of its bearing is not known. Write bearing in floor.csv" },
        { new MissingDatum.TooSlenderBeam(52.34), "The timber is too slender: RB is 52.3, and the rule ends at 50. Hold it closer" },
        { new MissingDatum.ConnectionRule("ASR"), "ASR has no rule for such a connection in the program" },
        { new MissingDatum.RodsDecide("L2L3, U2L3"), "The forces in L2L3, U2L3 depend on which rods act, and the program rates only connections whose forces do not" },
        { new MissingDatum.PackingOutOfBalance(), "What is packed on the pin does not balance: its forces leave a remainder, or would turn the pin by more than a tenth of its largest moment. Something is missing in packing.csv, or bars of a member stand on one side alone that are on both" },
        { new MissingDatum.MiddleLength(), "The length over which the gusset buckles is not known. Write middle length in connections.csv" },
        { new MissingDatum.RodOfBeam(true), "The rod of the trussed floorbeam is not given, and what beam and rod share goes by it. Write rod and rod material in floor.csv" },
        { new MissingDatum.RodOfBeam(false), "The material of the rod of the trussed floorbeam is not given, and what beam and rod share goes by it. Write rod material in floor.csv" },
        { new MissingDatum.TrussedShape("posts, drop"), "The trussed floorbeam lacks posts, drop: what beam and rod share goes by where posts stand and how far below the beam's axis the rod is. Write posts, drop in floor.csv" },
        { new MissingDatum.ModulusOfTrussed("old iron"), "No modulus for \"old iron\", and what beam and rod share goes by it. Write modulus = \"…\" in materials.toml" },
        { new MissingDatum.TrussedOfParts("two channels"), "Section \"two channels\" is of several parts, and the program has no rule for such a floorbeam while its rod presses it" },
        { new MissingDatum.HeldBelow("channel"), "Over its posts the trussed floorbeam may bend up, section \"channel\" is not one I-shape, and the program has no rule for its sideways buckling. Write unbraced below = 0 in floor.csv where its lower side is held all along" },
        { new MissingDatum.PostsOfBeam(), "Posts of a trussed floorbeam, their seats under the beam and on the rod, and the ends of its rod have no rule in the program. Have them checked apart" },
        { new MissingDatum.TrussedHeld(), "What holds the trussed floorbeam sideways is not given, and its rod presses it. Write unbraced in floor.csv, 0 where the deck holds it all along" },
        { new MissingDatum.DeckRule(), "The program has no rule for a deck of concrete or steel: it counts for what stringers take, and is not rated itself" },
        { new MissingDatum.DeckSpan(), "What carries the deck is not given, and with it its span. Write a row of kind stringer, or span in the row of the deck" },
        { new MissingDatum.TracksOnDeck(), "The program has no rule for tracks on planks" },
        { new MissingDatum.Yield(MaterialKind.Steel, 1897, PublishedStrength.Find(MaterialKind.Steel, 1897)), "No yield for 1897 steel. Write strength = \"by year\" to accept 26 ksi (before 1905), or a tested value, yield = \"…\" with its coupons and source" },
        { new MissingDatum.Yield(MaterialKind.Pin, 1897, PublishedStrength.Find(MaterialKind.Pin, 1897)), "No yield for 1897 pins. Write strength = \"by year\" to accept 25.5 ksi (before 1905), or a tested value, yield = \"…\" with its coupons and source" },
        { new MissingDatum.Yield(MaterialKind.Steel, null, null), "No yield for steel. Write yield = \"…\" with its source, and coupons where it was tested; or strength = \"by year\", with built = … in bridge.toml" },
        { new MissingDatum.Yield(MaterialKind.Rivet, null, null), "No yield for rivets. Write yield = \"…\" with its source, and coupons where it was tested" },
        { new MissingDatum.Yield(MaterialKind.WroughtIron, null, PublishedStrength.Find(MaterialKind.WroughtIron, null)), "No yield for wrought iron. Write strength = \"by year\" to accept 26 ksi (any year), or a tested value, yield = \"…\" with its coupons and source" },
        { new MissingDatum.Ultimate("pin steel"), "No tensile strength for \"pin steel\", and a net section needs it. Write ultimate = \"…\" in materials.toml" },
        { new MissingDatum.Modulus("iron"), "No modulus for \"iron\", and a column needs it. Write modulus = \"…\" in materials.toml" },
        { TimberMember.NoLoadFactorRule, "LFR has no rule for timber in the program. Rate it by LRFR or by ASR" },
        { new MissingDatum.PonyTable(1.2), "The frames are so stiff (K = 1.20, below 1.3) that the formula for a chord on springs does not hold, and the guide's table of 1/K is not in the program. Read K in AASHTO LRFD Guide Specifications for Pedestrian Bridges (2009), Table 7.1.2-1, and give it" },
        { new MissingDatum.NoMaterial(), "No material. Name one of materials.toml under material in members.csv" },
        { new MissingDatum.Holes("post", "angles"), "Holes of angles in section \"post\" are missing, and with them the net section. Write holes and hole in sections.csv for the worst path, holes = 0 where there are none" },
        { new MissingDatum.ShearLag(), "Shear lag is missing: how much of the net section works. Write shear lag in members.csv, 1 where every part of the section is connected" },
        { new MissingDatum.Ends(), "How its ends are fastened is missing, and with it the effective length. Write ends in members.csv: pinned, riveted, bolted or welded" },
        { new MissingDatum.Positions("post", "angles"), "Positions of angles in section \"post\" are missing, and with them the radii of gyration. Write arrangement and gap, or x and y, in sections.csv" },
        { new MissingDatum.PartsHeld("post"), "How the parts of section \"post\" are held together is missing. Write a row of it in lacing.csv" },
        { new MissingDatum.HeldSideways("U1, U2"), "Nothing says that U1, U2 are held sideways. Write held sideways in joints.csv, out-of-plane length in members.csv, or [pony] in bridge.toml" },
        { new MissingDatum.Cracked("near L2"), "It is cracked (near L2): no number follows from a crack, and an engineer decides" },
        { new MissingDatum.SolidTimber("chord"), "Section \"chord\" is not one solid timber, and the program has no rule for others" },
        { new MissingDatum.DeepTimber("chord"), "Section \"chord\" is deeper than twice its width and bent: it may buckle sideways, and the program has no rule for that" },
        { new MissingDatum.MaterialOfSection("fir", "post"), "Material \"fir\" does not go with the shapes of section \"post\". Mend one of them" },
        { new MissingDatum.LegsTooUnlike(), "One leg of the single angle is 1.7 times the other or more, and the rule for single angles ends there" },
        { new MissingDatum.TooSlenderTimber(61.3), "The timber is too slender: le/d is 61.3, and the rule ends at 50" },
        { new MissingDatum.StrengthRules("partial factors"), "The method partial factors makes no strength from sections in this bridge. Give capacities in members.csv" },
    };

    [Theory]
    [MemberData(nameof(Data))]
    public void Wording_OfWhatIsMissing_SaysHowToGiveIt(MissingDatum missing, string sentence) => Assert.Equal(sentence, MissingDatumWording.Of(missing));

    [Fact]
    public void Wording_EveryKindOfMissingDatum_IsAmongThem() =>
        Assert.Equal(
            typeof(MissingDatum).GetNestedTypes(BindingFlags.Public).Select(t => t.Name).Order(),
            Data().Select(row => row.Data.Item1.GetType().Name).Distinct().Order());

    // Wrought iron publishes no modulus here: a column of it asks for one.
    [Fact]
    public void Modulus_OfWroughtIron_IsNeverAssumed()
    {
        var iron = new MetalMaterial("iron", MaterialKind.WroughtIron, MetalStrength.ByYear(PublishedStrength.Find(MaterialKind.WroughtIron, null)!, null), null, null);
        Assert.Equal(new MissingDatum.Modulus("iron"), iron.MissingModulus);
        Assert.Null((iron with { GivenModulus = 190e9 }).MissingModulus);
    }

    [Fact]
    public void MetalStrength_TensileStrengthBelowYield_IsABugOfTheCaller() =>
        Assert.Equal("ultimate", Assert.Throws<ArgumentOutOfRangeException>(() => new MetalStrength(2, 1, new StrengthOrigin.Given("made up"))).ParamName);
}
