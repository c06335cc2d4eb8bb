namespace SpanRater.Tests.CommandLine;

/// <summary>
/// The small king post with a floor: planks of 3 x 10 in on stringers of 12 in I-beams 2 ft apart, a floorbeam of an 18 in I-beam hung from L1 by two square bars.
/// Metal of 30 and 60 ksi, timber of given values.
/// </summary>
internal static class FlooredKingPost
{
    public const string Floor = """
        part,kind,type,section,material,spacing [ft],count,at,x [ft],unbraced [ft],bearing [in],end,end depth [in],continuous
        planks,deck,plank,plank,wood,,,,,,,,,
        stringers,stringer,,stringer,iron,2,7,,,0,,,,
        floorbeam,floorbeam,,floorbeam,iron,,,L1,,2,,,,
        hangers,hanger,,hanger,iron,,1,L1,,,,,,

        """;

    public static BridgeOnDisk Make() => new BridgeOnDisk()
        .Write("sections.csv", """
            section,part,shape,count,width [in],depth [in],web [in],flange [in],holes
            plank,plank,timber,1,10,3,,,0
            stringer,beam,wide-flange,1,5,12,0.35,0.544,0
            floorbeam,beam,wide-flange,1,6,18,0.46,0.691,0
            hanger,legs,square bar,2,1,,,,

            """)
        .Write("materials.toml", """
            [[material]]
            name = "iron"
            kind = "steel"
            yield = "30 ksi"
            ultimate = "60 ksi"
            source = "made up for the test"

            [[material]]
            name = "wood"
            kind = "timber"
            class = "2-4 in thick"
            bending = "1200 psi"
            tension = "700 psi"
            shear = "170 psi"
            compression_across = "600 psi"
            compression = "1300 psi"
            modulus = "1600 ksi"
            least_modulus = "580 ksi"
            source = "made up for the test"
            service = "dry"
            duration = "two months"

            """)
        .Write("bridge.toml", BridgeOnDisk.Toml.Replace("adtt = 80", "adtt = 80\ncondition = \"good\"", StringComparison.Ordinal) + "\n[floor]\ndeck_dc = \"15 psf\"\ndeck_dw = \"10 psf\"\nedge_dc = \"20 plf\"\n")
        .Write("floor.csv", Floor);
}
