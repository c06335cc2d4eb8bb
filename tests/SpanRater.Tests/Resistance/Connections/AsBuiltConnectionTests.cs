namespace SpanRater.Tests.Resistance.Connections;

/// <summary>A connection as built: the size that wear and rust took from is back, all else stays.</summary>
public sealed class AsBuiltConnectionTests
{
    private static readonly MeasuredSize Worn = new(0.05, 0.04, "calliper");

    public static TheoryData<Connection, double> Connections => new()
    {
        { new PinConnection("pin", 0, 1, 0.04, []), 0.05 },
        { new HeadConnection("heads", 0, 1, 2, 0.008), 0.010 },
        { new PinPlateConnection("plates", 0, 1, 2, 0.08, 0.06), 0.10 },
        { new FastenerConnection("rivets", 0, PartKind.Rivets, 1, 2, FastenerGrade.RivetBefore1936, 8, 0.02, 1, 0.04), 0.05 },
        { new GussetConnection("gusset", 0, 1, 2, 2, 0.04, 2, 4, 0.1, 0.08, 0.04, 0.02, null), 0.05 },
        { new GussetShear("plane", 0, 1, [2, 3], 2, 0.04, 0.5, 0.1), 0.05 },
    };

    [Theory]
    [MemberData(nameof(Connections))]
    public void AsBuilt_GivesTheSizeBack(Connection connection, double expected)
    {
        Connection whole = (connection with { Size = Worn }).AsBuilt;

        Assert.Equal(expected, SizeOf(whole), 1e-12);
        Assert.False(whole.Size!.IsLess);
        Assert.Same(connection, connection.AsBuilt);
    }

    private static double SizeOf(Connection connection) => connection switch
    {
        PinConnection pin => pin.Diameter,
        HeadConnection heads => heads.NetArea,
        PinPlateConnection plates => plates.Thickness,
        FastenerConnection fasteners => fasteners.Thickness,
        GussetConnection gusset => gusset.Thickness,
        GussetShear plane => plane.Thickness,
        _ => throw new ArgumentOutOfRangeException(nameof(connection)),
    };
}
