namespace SpanRater.Tests.CommandLine;

/// <summary>The small king post with a floor whose floorbeam, a timber of 10 x 12 in, has two round rods of 1 1/4 in over one post 18 in below its axis.</summary>
internal static class TrussedKingPost
{
    public const string Trussed = "floorbeam,floorbeam,trussed,sill,wood,,,L1,2,6,,rods,iron,1,18,,";

    public const string Floor = "part,kind,type,section,material,spacing [ft],count,at,unbraced [ft],bearing [in],continuous,rod,rod material,posts,drop [in],post spacing [ft],unbraced below [ft]\n"
        + "planks,deck,plank,plank,wood,,,,,,,,,,,,\n"
        + "stringers,stringer,,stringer,iron,2,7,,0,,,,,,,,\n"
        + Trussed + "\n"
        + "hangers,hanger,,hanger,iron,,1,L1,,,,,,,,,\n";

    public static BridgeOnDisk Make()
    {
        BridgeOnDisk bridge = FlooredKingPost.Make();
        return bridge.Write("sections.csv", """
            section,part,shape,count,width [in],depth [in],web [in],flange [in],diameter [in],holes
            plank,plank,timber,1,10,3,,,,0
            stringer,beam,wide-flange,1,5,12,0.35,0.544,,0
            floorbeam,beam,wide-flange,1,6,18,0.46,0.691,,0
            sill,beam,timber,1,10,12,,,,0
            rods,bars,round bar,2,,,,,1.25,0
            hanger,legs,square bar,2,1,,,,,

            """).Write("floor.csv", Floor);
    }
}
