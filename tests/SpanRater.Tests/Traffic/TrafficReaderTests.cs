using System.Globalization;
using System.Text;
using CsvHelper;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Traffic;

/// <summary>The reader of traffic records: what it rejects and says, and what it reads, held against the reader of all tables' cells and the parser of the class library.</summary>
public sealed class TrafficReaderTests : IDisposable
{
    private const string Header = "time,loads [kip],spacings [ft],lane\n";
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Theory]
    [InlineData("2026-05-04T10:00:00,10 20,12,1,9", "trucks.csv:2:32: the row has more cells than the header, which has 4: separate the numbers of a list by spaces.")]
    [InlineData("2026-05-04T10:00:00,\"10 20,12,1", "trucks.csv:2:1: the quotes in this line do not pair: quote whole cells, and double the quotes within them.")]
    [InlineData(",10 20,12,1", "trucks.csv:2:1: the time is missing: write date and time, such as 2026-05-01T07:32:10.")]
    [InlineData("4.5.2026 10:00,10 20,12,1", "trucks.csv:2:1: \"4.5.2026 10:00\" is not a date and time from 1950 to 2150: write them as 2026-05-01T07:32:10, with a zone behind or without.")]
    [InlineData("2026-02-29T10:00:00,10 20,12,1", "trucks.csv:2:1: \"2026-02-29T10:00:00\" is not a date and time from 1950 to 2150: write them as 2026-05-01T07:32:10, with a zone behind or without.")]
    [InlineData("2026-05-04T10:00:00,,12,1", "trucks.csv:2:21: the axle loads are missing: write them from the front axle back, separated by spaces.")]
    [InlineData("2026-05-04T10:00:00,10 2O,12,1", "trucks.csv:2:21: axle 2 is \"2O\", which is not a number: write numbers separated by spaces.")]
    [InlineData("2026-05-04T10:00:00,10 20,1.2.3,1", "trucks.csv:2:27: spacing 1 is \"1.2.3\", which is not a number: write numbers separated by spaces.")]
    [InlineData("2026-05-04T10:00:00,10 -20,12,1", "trucks.csv:2:21: axle 2 is -20: it must be above zero.")]
    [InlineData("2026-05-04T10:00:00,10 20,0,1", "trucks.csv:2:27: spacing 1 is 0: it must be above zero.")]
    [InlineData("2026-05-04T10:00:00,10 20 20,,1", "trucks.csv:2:30: 3 axles and no spacings: write 2, the distance of each axle from the one ahead.")]
    [InlineData("2026-05-04T10:00:00,10 20 20,12,1", "trucks.csv:2:30: 3 axles and 1 spacing: write 2, the distance of each axle from the one ahead.")]
    [InlineData("2026-05-04T10:00:00,10,12,1", "trucks.csv:2:24: 1 axle and 1 spacing: write 0, the distance of each axle from the one ahead.")]
    [InlineData("2026-05-04T10:00:00,10 61,12,1", "trucks.csv:2:21: axle 2 weighs 61 kip (271.342 kN), and no axle on a road weighs more than 60 kip (266.893 kN): check it and its unit.")]
    [InlineData("2026-05-04T10:00:00,.2 .3,12,1", "trucks.csv:2:21: the truck weighs 0.5 kip (2.224 kN) in all, less than 1 kip (4.448 kN): check the loads and their unit.")]
    [InlineData("2026-05-04T10:00:00,10 20,1.4,1", "trucks.csv:2:27: spacing 1 is 1.4 ft (0.427 m), and axles of one vehicle stand from 1.5 to 100 ft (0.457 to 30.48 m) apart: check it and its unit.")]
    [InlineData("2026-05-04T10:00:00,10 20 10,12 101,1", "trucks.csv:2:30: spacing 2 is 101 ft (30.785 m), and axles of one vehicle stand from 1.5 to 100 ft (0.457 to 30.48 m) apart: check it and its unit.")]
    public void Row_ThatCannotBeCounted_IsRejectedWithItsPlaceAndTheMend(string row, string says)
    {
        TrafficReading reading = Counted(Header + row + "\n2026-05-04T11:00:00,10 20,12,1\n");
        Assert.Equal((1, 1), (reading.Tally.Trucks, reading.Rejected.Count));
        RejectReason reason = Assert.Single(reading.Rejected.Reasons);
        Assert.Equal(says, Assert.Single(reading.Rejected.First(reason)).Where + ": " + Assert.Single(reading.Rejected.First(reason)).What);
    }

    [Fact]
    public void Row_OfSixtyOneAxles_IsRejected()
    {
        TrafficReading reading = Counted($"{Header}2026-05-04T10:00:00,{string.Join(' ', Enumerable.Repeat(5, 61))},{string.Join(' ', Enumerable.Repeat(5, 60))},1\n");
        Assert.Equal("more than 60 numbers: is this one truck?", Assert.Single(reading.Rejected.First(RejectReason.TooManyAxles)).What);
    }

    [Theory]
    [InlineData("2026-05-04T10:00:00,60 60,1.5 \n")]
    [InlineData("2026-05-04T10:00:00,10 20,100\n")]
    [InlineData("2026-05-04T10:00:00,1,\n")]
    [InlineData("2026-05-04T10:00:00,\"10  20 \", 12 ,a\r\n")]
    [InlineData("2026-05-04 10:00:00.25+02:00,+10 2e1,12,,,\n")]
    [InlineData("2026-05-04T10:00,10 20,12")]
    public void Row_AtALimitOrOddlyWritten_IsCounted(string row)
    {
        TrafficReading reading = Counted(Header + row);
        Assert.Equal((1, 0), (reading.Tally.Trucks, reading.Rejected.Count));
    }

    [Fact]
    public void Rejected_ManyOfAKind_AreCountedAndTheFirstFiveTold()
    {
        TrafficReading reading = Counted(Header + string.Concat(Enumerable.Repeat("2026-05-04T10:00:00,x,12,1\n", 400)) + "2026-05-04T11:00:00,10 20,12,1\n", blockSize: 512, workers: 3);
        Assert.Equal(400, reading.Rejected.Of(RejectReason.Number));
        Assert.Equal([2, 3, 4, 5, 6], reading.Rejected.First(RejectReason.Number).Select(f => f.Where.Line!.Value));
    }

    [Fact]
    public void Times_OutOfOrder_AreCountedAndTold()
    {
        TrafficReading reading = Counted(Header + "2026-05-04T10:00:00,10 20,12,1\n2026-05-04T09:59:59,10 20,12,1\n2026-05-04T10:00:00+02:00,10 20,12,1\n2026-05-04T10:00:00Z,10 20,12,1\n");
        Assert.Equal(4, reading.Tally.Trucks);

        // 10:00 at +02:00 is 08:00 in universal time.
        Assert.Equal((2, 3L), (reading.OutOfOrder, reading.FirstOutOfOrder!.Value));
    }

    [Fact]
    public void Units_OfTheHeading_AreRead()
    {
        TrafficReading us = Counted("time,loads [kip],spacings [ft]\n2026-05-04T10:00:00,10 20,12\n");
        TrafficReading si = Counted("# weighed in motion\n\nTIME ; Loads [kN] ; note ; Spacings [m]\n2026-05-04T10:00:00;44,482216152605 88.96443230521;\"a; \"\"b\"\"\";3,6576\n");
        Assert.Equal(us.Tally.Most(0), si.Tally.Most(0), 1e-6);
        Assert.Equal(["note"], si.Further);
        Assert.Equal(["a; \"b\""], si.Tally.MostRecord(0)!.Further);
        Assert.Equal((4L, "2026-05-04T10:00:00"), (si.Tally.MostRecord(0)!.Line, si.Tally.MostRecord(0)!.Time));
    }

    [Theory]
    [InlineData("time,load [kip],spacings [ft]\n", "trucks.csv:1:6: unknown column \"load\". Did you mean \"loads\"?")]
    [InlineData("time,loads (kip),spacings [ft]\n", "trucks.csv:1:6: column \"loads (kip)\": write loads [kip]: the unit stands in square brackets.")]
    [InlineData("time,loads,spacings [ft]\n", "trucks.csv:1:6: column \"loads\" has no unit: write loads [kip] or loads [kN].")]
    [InlineData("\ntime,loads [ft],spacings [ft]\n", "trucks.csv:2:6: column \"loads\": \"ft\" is a unit of a length; for a force, write kip or kN.")]
    [InlineData("time,loads [ton],spacings [ft]\n", "trucks.csv:1:6: column \"loads\": a bare ton may be 2,000 lb or 1,000 kg: write \"US ton\" (2,000 lbf) or \"tonne\" (1,000 kg).")]
    [InlineData("time,loads [kip]\n", "trucks.csv:1:1: column \"spacings\" is missing: add a column headed spacings [ft].")]
    [InlineData("time,loads [kip],spacings [ft],lane,lane\n", "trucks.csv:1:37: column \"lane\" is there twice: keep one.")]
    [InlineData("time,loads [kip],spacings [ft]\n", "trucks.csv: has a header and no record: write one row a truck.")]
    [InlineData("# nothing\n\n", "trucks.csv: has no header: the first line that is not a comment names the columns.")]
    [InlineData("", "trucks.csv: is empty.")]
    [InlineData(" \r\n", "trucks.csv: is empty.")]
    public void Header_ThatCannotBeUsed_RefusesTheFile(string text, string says)
    {
        var findings = new FindingList();
        Assert.Null(RecordedTrucks.Count(RecordedTrucks.Plan(bridge.Folder), text, findings));
        Assert.Contains(findings.All, f => f.ToString().StartsWith(says, StringComparison.Ordinal));
    }

    [Fact]
    public void File_ThatIsNoText_IsRefusedByName()
    {
        TrafficPlan plan = RecordedTrucks.Plan(bridge.Folder);
        string text = Header + "2026-05-04T10:00:00,10 20,12,1\n";
        (byte[] Bytes, string Says)[] cases =
        [
            ([0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)], "trucks.csv:1:1: is UTF-16 text: save it as UTF-8."),
            ([.. Encoding.UTF8.GetBytes(text), 0, 10], "trucks.csv:3:1: is not text: it holds zero bytes, as pictures, spreadsheets and archives do. Save the table as CSV, UTF-8."),
            ([.. Encoding.UTF8.GetBytes(text), 0xE4, 10], "trucks.csv:3:1: is not UTF-8, rather Windows-1252 or Latin-1: save it as UTF-8."),
            ([.. Encoding.UTF8.GetBytes(text), .. Enumerable.Repeat((byte)'1', 200_000)], "trucks.csv:3:1: the line is longer than 100,000 characters; no record is. Check what the file is."),
        ];
        Assert.All(cases, c =>
        {
            var findings = new FindingList();
            Assert.Null(RecordedTrucks.Count(plan, c.Bytes, findings, workers: 2));
            Assert.Equal(c.Says, Assert.Single(findings.All).ToString());
        });
    }

    // Stopped by the first block that is told: what is left is not read, and nothing is given back.
    [Fact]
    public void File_InterruptedOnTheWay_EndsTheReading()
    {
        TrafficPlan plan = RecordedTrucks.Plan(bridge.Folder);
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(RecordedTrucks.Record(9, days: 20, aDay: 40)));
        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => TrafficFile.Read(stream, "trucks.csv", plan, new FindingList(), workers: 2, blockSize: 1000, progress: _ => stop.Cancel(), stop: stop.Token));
        Assert.True(stream.Position < stream.Length);
    }

    [Fact]
    public void File_WithAByteOrderMarkAndLineEndsOfTwo_IsRead()
    {
        byte[] bytes = [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes((Header + "2026-05-04T10:00:00,10 20,12,1\n").Replace("\n", "\r\n", StringComparison.Ordinal))];
        var findings = new FindingList();
        Assert.Equal(1, RecordedTrucks.Count(RecordedTrucks.Plan(bridge.Folder), bytes, findings)!.Tally.Trucks);
    }

    // The plain twin: the general reader of CSV files, and the class library's parser of numbers and dates. Bit for bit.
    [Fact]
    public void Rows_OfARecord_AreThoseOfThePlainReader()
    {
        string record = RecordedTrucks.Record(7, days: 5, aDay: 60);
        string[] lines = record.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var findings = new FindingList();
        TrafficHeader header = TrafficHeader.Read(Encoding.UTF8.GetBytes(lines[0]), 1, "trucks.csv", findings)!;
        var reader = new TrafficRowReader(header);
        using CsvReader plain = CsvReader.Create(Encoding.UTF8.GetBytes(record), new CsvReaderOptions { Separator = ',', HasHeader = true });
        int row = 1;
        for (; plain.Read(); row++)
        {
            Assert.Equal(RejectReason.None, reader.Read(Encoding.UTF8.GetBytes(lines[row])));
            double[] Numbers(int cell, string unit) => [.. plain.GetString(cell).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture) * Unit.Find(unit)!.Size)];
            Assert.Equal(Numbers(1, "kip"), reader.Loads.ToArray());
            Assert.Equal(Numbers(2, "ft"), reader.Gaps.ToArray());
            DateTime time = DateTime.Parse(plain.GetString(0), CultureInfo.InvariantCulture);
            Assert.Equal((DateOnly.FromDateTime(time).DayNumber, time.Ticks), (reader.Day, reader.Ticks));
        }

        Assert.Equal(lines.Length, row);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("12.")]
    [InlineData(".5")]
    [InlineData("0.1")]
    [InlineData("17.35")]
    [InlineData("123456789012345")]
    [InlineData("1234567890.12345")]
    [InlineData("123456789012345678")]
    [InlineData("0.000000000000001234")]
    [InlineData("+1.5e-3")]
    public void Number_HoweverLong_IsThatOfTheClassLibrary(string text)
    {
        Assert.True(DecimalBytes.TryRead(Encoding.UTF8.GetBytes(text), false, out double value));
        Assert.Equal(BitConverter.DoubleToInt64Bits(double.Parse(text, CultureInfo.InvariantCulture)), BitConverter.DoubleToInt64Bits(value));
    }

    [Theory]
    [InlineData("")]
    [InlineData(".")]
    [InlineData("1,5")]
    [InlineData("1.2.3")]
    [InlineData("12a")]
    [InlineData("NaN")]
    [InlineData("1e999")]
    public void Number_ThatIsNone_IsNotRead(string text) => Assert.False(DecimalBytes.TryRead(Encoding.UTF8.GetBytes(text), false, out _));

    [Theory]
    [InlineData("2026-05-04T10:11:12", "2026-05-04T10:11:12")]
    [InlineData("2026-05-04 10:11", "2026-05-04T10:11:00")]
    [InlineData("2026-05-04T10:11:12.5Z", "2026-05-04T10:11:12.5")]
    [InlineData("2024-02-29T23:59:59,25-0130", "2024-03-01T01:29:59.25")]
    [InlineData("2026-05-04T10:11:12+02", "2026-05-04T08:11:12")]
    public void Time_WithOrWithoutZone_IsRead(string text, string universal)
    {
        Assert.True(TrafficTime.TryRead(Encoding.UTF8.GetBytes(text), out int day, out long ticks));
        Assert.Equal(DateTime.Parse(universal, CultureInfo.InvariantCulture).Ticks, ticks);
        Assert.Equal(DateOnly.ParseExact(text[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture).DayNumber, day);
    }

    [Theory]
    [InlineData("2026-05-04")]
    [InlineData("2026-05-04T24:00:00")]
    [InlineData("2026-05-04T10:60:00")]
    [InlineData("2026-05-04T10:11:60")]
    [InlineData("2026-13-04T10:11:12")]
    [InlineData("2026-05-04T10:11:12.")]
    [InlineData("2026-05-04T10:11:12+2")]
    [InlineData("2026-05-04T10:11:12 PM")]
    [InlineData("0026-05-04T10:11:12")]
    public void Time_ThatIsNone_IsNotRead(string text) => Assert.False(TrafficTime.TryRead(Encoding.UTF8.GetBytes(text), out _, out _));

    private TrafficReading Counted(string record, int workers = 1, int blockSize = 1 << 16) => RecordedTrucks.Counted(RecordedTrucks.Plan(bridge.Folder), record, workers, blockSize);
}
