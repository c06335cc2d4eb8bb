namespace SpanRater.Tests.CommandLine;

/// <summary>
/// The small king post with rafters of two C8x11.5 and a 12 x 1/4 in plate, laced below, of a metal of 30 and 60 ksi; its other
/// members have given capacities.
/// </summary>
internal static class LacedKingPost
{
    public const string LacingHeader = "section,held by,pitch [in],between [in],width [in],thickness [in],planes\n";

    public static BridgeOnDisk Make() => new BridgeOnDisk()
        .Write("sections.csv", """
            section,part,shape,count,width [in],thickness [in],arrangement,gap [in],y [in],holes,hole [in]
            rafter,channels,C8x11.5,2,,,backs in,6.5,0,0,
            rafter,plate,plate,1,12,0.25,,,4.125,0,

            """)
        .Write("lacing.csv", LacingHeader + "rafter,single lacing,7,9,2,0.25,1\n")
        .Write("materials.toml", "[[material]]\nname = \"iron\"\nkind = \"steel\"\nyield = \"30 ksi\"\nultimate = \"60 ksi\"\nsource = \"made up for the test\"\n")
        .Write("joints.csv", BridgeOnDisk.Joints.Replace("deck", "deck,held sideways", StringComparison.Ordinal).Replace("U1,12,8,,,", "U1,12,8,,,,yes", StringComparison.Ordinal))
        .Write("members.csv", """
            member,from,to,role,section,material,ends,shear lag,out-of-plane k,in-plane length [ft],tension capacity [kip]
            L0L1,L0,L1,bottom chord,,,,,,,40
            L1L2,L1,L2,bottom chord,,,,,,,40
            L0U1,L0,U1,end post,rafter,iron,pinned,1,,,
            U1L2,U1,L2,end post,rafter,iron,pinned,1,,,
            L1U1,L1,U1,hanger,,,,,,,40

            """);
}
