using System.Globalization;
using SpanRater.Tests.CommandLine;
using SpanRater.Tests.Learning;

namespace SpanRater.Tests.Reports;

/// <summary>The Fink truss of 12 m as a bridge folder, with a case "roof": 1 kN on every purlin joint, 8 kN on the ridge.</summary>
internal static class FinkOnDisk
{
    public static BridgeOnDisk Make() => Make(CompoundTrusses.Fink(), "case,joint,up [kN]\n" + string.Concat("P1 P2 P3 R1 R2 R3".Split(' ').Select(j => $"roof,{j},-1\n")) + "roof,C,-8\n");

    public static BridgeOnDisk Make(Truss truss, string loads)
    {
        var disk = new BridgeOnDisk();
        disk.Write("bridge.toml", "name = \"Compound roof\"\n");
        disk.Write("joints.csv", "joint,x [m],y [m],support\n" + string.Concat(truss.Joints.Select(j => string.Create(
            CultureInfo.InvariantCulture,
            $"{j.Name},{j.X:R},{j.Y:R},{j.Support?.Kind.ToString().ToLowerInvariant()}\n"))));
        disk.Write("members.csv", "member,from,to\n" + string.Concat(truss.Members.Select(m => $"{m.Name},{m.From},{m.To}\n")));
        return disk.Write("loads.csv", loads);
    }
}
