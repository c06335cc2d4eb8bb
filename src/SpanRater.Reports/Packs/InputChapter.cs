using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The input as it was understood: the check, then joints, members and vehicles as they were read.</summary>
internal static class InputChapter
{
    /// <summary>The truss.</summary>
    public static IEnumerable<ResultBlock> Truss(ReviewedBridge reviewed)
    {
        Truss truss = reviewed.Rating.Bridge.Truss;
        return
        [
            .. FieldReport.Body(CheckPage.Of(reviewed.Rating.Bridge, reviewed.Reading.Findings, reviewed.Units)),
            new ResultBlock.Heading("Joints as read"),
            new ResultBlock.Grid(new ResultTable(
                [new("joint"), new("x", Quantity.Length, 3), new("y", Quantity.Length, 3), new("support"), new("panel point")],
                [.. truss.Joints.Select(j => (IReadOnlyList<object?>)[j.Name, j.X, j.Y, SupportOf(j.Support), j.IsPanelPoint ? "yes" : ""])])),
            new ResultBlock.Heading("Members as read"),
            new ResultBlock.Grid(new ResultTable(
                [new("member"), new("from"), new("to"), new("role"), new("only pulls")],
                [.. truss.Members.Select(m => (IReadOnlyList<object?>)[m.Name, m.From, m.To, m.Role, m.TensionOnly ? "yes" : ""])])),
        ];
    }

    /// <summary>The vehicles, and what one truss carries of them.</summary>
    public static IEnumerable<ResultBlock> Vehicles(ReviewedBridge reviewed)
    {
        Bridge bridge = reviewed.Rating.Bridge;
        IReadOnlyList<LiveLoad> asked = reviewed.Reading.VehiclesAsked;
        RatingMethod method = reviewed.Rating.Method;
        return
        [
            new ResultBlock.Grid(new ResultTable(
                [new("vehicle"), new("class"), new("weight", Quantity.Force), new("what it is"), new("source")],
                [.. asked.Select(v => (IReadOnlyList<object?>)[v.Name, VehicleClassNames.Name(v.Class), SafeLoad.WeightOf(v), LiveLoadWording.Describe(v, reviewed.Units), v.Source])])),
            new ResultBlock.Heading("Share of one truss"),
            .. FieldReport.Body(SharePage.Of(bridge, method, VehicleShares.Of(bridge.Deck, asked, method), StripShares.Of(bridge.Deck, asked, method), reviewed.Units))
                .Select(b => b is ResultBlock.Heading { Level: 2 } h ? h with { Level = 3 } : b),
        ];
    }

    private static string SupportOf(Support? support) => support switch
    {
        null => "",
        { Kind: SupportKind.Pin } => "pin",
        _ => string.Create(CultureInfo.InvariantCulture, $"roller, normal at {support.NormalDegrees:0.##} deg"),
    };
}
