namespace SpanRater.Tests.CommandLine;

/// <summary>The small king post with a floor, and a pin of 2 in at L1: chords outside, the hanger next to them, the floor's hanger in the middle; and rivets and gussets at U1.</summary>
internal static class PinnedKingPost
{
    public const string Packing = """
        pin,bar,thickness [in],gap [in]
        pin,L0L1,1,
        pin,L1L2,1,0
        pin,L1U1,0.5,0.5
        pin,floor,1,0.25
        pin,floor,1,2
        pin,L1U1,0.5,0.25
        pin,L1L2,1,0.5
        pin,L0L1,1,0

        """;

    public const string Connections = """
        connection,kind,joint,member,material,grade,count,diameter [in],thickness [in],remaining [in],width [in],hole [in],planes,lines,per line,gauge [in],pitch [in],edge [in],middle length [in],length [in],holes [in]
        pin,pin,L1,,iron,,,2,,,,,,,,,,,,,
        heads,eyebar head,L1,L1U1,iron,,2,,0.5,,5,2.0625,,,,,,,,,
        rivets,rivets,U1,L0U1,iron,by year,8,0.75,0.25,,,,1,,,,,,,,
        gusset,gusset,U1,L0U1,iron,,2,,0.375,0.25,,0.8125,,2,4,4,3,1.5,6,,
        plane,gusset,L1,,iron,,2,,0.375,,,,,,,,,,,20,4

        """;

    public static BridgeOnDisk Make() => FlooredKingPost.Make().Write("packing.csv", Packing).Write("connections.csv", Connections);
}
