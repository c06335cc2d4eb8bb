namespace SpanRater.Tests.CommandLine;

/// <summary>The small king post with a floor; its hanger L1U1 is the section of the two square bars, 2 in², all else has given capacities.</summary>
internal static class FatigueKingPost
{
    public static BridgeOnDisk Make(string section = "hanger", string material = "iron") => FlooredKingPost.Make().Write("members.csv", $"""
        member,from,to,role,section,material,tension capacity [kip],compression capacity [kip]
        L0L1,L0,L1,bottom chord,,,40,
        L1L2,L1,L2,bottom chord,,,40,
        L0U1,L0,U1,end post,,,,40
        U1L2,U1,L2,end post,,,,40
        L1U1,L1,U1,hanger,{section},{material},,

        """);

    public static Run Fatigue(BridgeOnDisk bridge, string trucksADay, string years, params string[] more) =>
        Run.Of(["fatigue", bridge.Folder, "--member", "L1U1", "--vehicle", "Type 3", "--trucks-a-day", trucksADay, "--years", years, .. more]);
}
