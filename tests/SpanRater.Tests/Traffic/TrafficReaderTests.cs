using System.Globalization;
using System.Text;
using CsvHelper;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Traffic;

/// <summary>The reader of traffic records: what it rejects and says, and what it reads, held against a plain twin.</summary>
public sealed class TrafficReaderTests : IDisposable
{
    private const string Header = "time,loads [kip],spacings [ft],lane\n";
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Theory]
    [InlineData("2026-05-04T10:00:00,10 20,12,1,9", "trucks.csv:2:32: the row has more cells than the header, which has 4: separate the numbers of a list by spaces. A decimal comma? Write a point, or separate the columns with semicolons.")]
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
    [InlineData("2026-05-04T10:00:00,14 4,10 16 16,1", "trucks.csv:2:26: 2 axles and 3 spacings: write 1, the distance of each axle from the one ahead. Are the headings of loads and spacings exchanged?")]
    [InlineData("2026-05-04T10:00:00,\"10,5 16,2\",14,1", "trucks.csv:2:21: axle 1 is \"10,5\", which is not a number: write numbers separated by spaces. A decimal comma? Write a point, or separate the columns with semicolons.")]
    [InlineData("2026-05-04T10:00:00,10,12,1", "trucks.csv:2:24: 1 axle and 1 spacing: write 0, the distance of each axle from the one ahead.")]
    [InlineData("2026-05-04T10:00:00,10 1001,12,1", "trucks.csv:2:21: axle 2 weighs 1,001 kip (4,452.67 kN), and no axle weighs more than 1,000 kip (4,448.222 kN): check it and its unit.")]
    [InlineData("2026-05-04T10:00:00,900 900 900 900 900,12 4 4 4,1", "trucks.csv:2:21: the truck weighs 4,500 kip (20,016.997 kN) in all, and nothing on a road weighs more than 4,000 kip (17,792.886 kN): check the loads and their unit.")]
    [InlineData("2026-05-04T10:00:00,10 20,12,\"1\" 2", "trucks.csv:2:1: the quotes in this line do not pair: quote whole cells, and double the quotes within them.")]
    [InlineData("2026-05-04T10:00:00,.2 .3,12,1", "trucks.csv:2:21: the truck weighs 0.5 kip (2.224 kN) in all, less than 1 kip (4.448 kN): check the loads and their unit.")]
    [InlineData("2026-05-04T10:00:00,10 20,1.4,1", "trucks.csv:2:27: spacing 1 is 1.4 ft (0.427 m), and axles of one vehicle stand from 1.5 to 300 ft (0.457 to 91.44 m) apart: check it and its unit.")]
    [InlineData("2026-05-04T10:00:00,10 20 10,12 301,1", "trucks.csv:2:30: spacing 2 is 301 ft (91.745 m), and axles of one vehicle stand from 1.5 to 300 ft (0.457 to 91.44 m) apart: check it and its unit.")]
    public void Row_ThatCannotBeCounted_IsRejectedWithItsPlaceAndTheMend(string row, string says)
    {
        TrafficReading reading = Counted(Header + row + "\n2026-05-04T11:00:00,10 20,12,1\n");
        Assert.Equal((1, 1), (reading.Tally.Trucks, reading.Rejected.Count));
        RowRemark reason = Assert.Single(reading.Rejected.Remarks);
        Assert.Equal(says, Assert.Single(reading.Rejected.First(reason)).Where + ": " + Assert.Single(reading.Rejected.First(reason)).What);
    }

    // Beyond what is likely, within what can be: a rare heavy transport must not be missing from the largest effects.
    [Theory]
    [InlineData("10 61,12", RowRemark.HeavyAxle, "trucks.csv:2:21: axle 2 weighs 61 kip (271.342 kN), and hardly any weighs more than 60 kip (266.893 kN); the truck weighs 71 kip (315.824 kN) in all. It is counted: check it and its unit, and take the row out if it is wrong.")]
    [InlineData("80 1000 90,12 101", RowRemark.HeavyAxle, "trucks.csv:2:21: axle 2 weighs 1,000 kip (4,448.222 kN), and hardly any weighs more than 60 kip (266.893 kN); the truck weighs 1,170 kip (5,204.419 kN) in all. It is counted: check it and its unit, and take the row out if it is wrong.")]
    [InlineData("10 20 10,12 101", RowRemark.LongSpacing, "trucks.csv:2:30: spacing 2 is 101 ft (30.785 m), and hardly any is more than 100 ft (30.48 m): are these two vehicles? It is counted: check it and its unit, and take the row out if it is wrong.")]
    public void Row_OfAnUnlikelyTruck_IsCountedAndTold(string truck, RowRemark remark, string says)
    {
        TrafficReading reading = Counted($"{Header}2026-05-04T10:00:00,{truck},1\n2026-05-04T11:00:00,10 20,12,1\n");
        Assert.Equal((2, 0, 1), (reading.Tally.Trucks, reading.Rejected.Count, reading.Unlikely.Count));
        Finding told = Assert.Single(reading.Unlikely.First(remark));
        Assert.Equal(says, $"{told.Where}: {told.What}");
        Assert.Equal((2, true), (reading.Tally.MostRecord(0)!.Line, reading.Tally.MostRecord(0)!.IsUnlikely));
        Assert.True(reading.Tally.IsUnlikelyOn(reading.Tally.Days.Single(), 0));
    }

    // A heavier likely truck later on the same day takes the mark off that day, in whatever block it stands.
    [Theory]
    [InlineData(64)]
    [InlineData(4096)]
    public void Day_WhoseLargestALikelyTruckBrought_IsNotMarked(int blockSize)
    {
        TrafficReading reading = Counted(Header + "2026-05-04T10:00:00,1 61,12,1\n2026-05-04T11:00:00,60 60,4,1\n2026-05-05T10:00:00,1 61,12,1\n", blockSize: blockSize);
        Assert.Equal([false, true], reading.Tally.Days.Select(d => reading.Tally.IsUnlikelyOn(d, 0)));
        Assert.False(reading.Tally.MostRecord(0)!.IsUnlikely);
    }

    [Fact]
    public void Row_OfSixtyOneAxles_IsRejected()
    {
        TrafficReading reading = Counted($"{Header}2026-05-04T10:00:00,{string.Join(' ', Enumerable.Repeat(5, 61))},{string.Join(' ', Enumerable.Repeat(5, 60))},1\n");
        Assert.Equal("more than 60 numbers: is this one truck?", Assert.Single(reading.Rejected.First(RowRemark.TooManyAxles)).What);
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
        Assert.Equal(400, reading.Rejected.Of(RowRemark.Number));
        Assert.Equal([2, 3, 4, 5, 6], reading.Rejected.First(RowRemark.Number).Select(f => f.Where.Line!.Value));
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
    [InlineData("2026-05-04T10:00:00,10 16,14,1\n", "trucks.csv:1:1: is a record, and above it is no header: write a line such as time,loads [kip],spacings [ft] above it, with the units in which the station wrote.")]
    [InlineData("time,axle1,axle2,gap12\n", "trucks.csv:1:1: the axles seem to have a column each: write all axle loads of a truck into one cell, separated by spaces, and its spacings into another.")]
    [InlineData("time,loads [kip],speed [mph],spacings [ft] ,loads [kN]\n", "trucks.csv:1:45: column \"loads\" is there twice: keep one.")]
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
    public void Column_OfNoMeaningHere_IsKeptWithItsUnit()
    {
        TrafficReading reading = Counted("time, speed [mph],loads [kip],wheel path  [in],spacings [ft]\n2026-05-04T10:00:00,55,10 20,3,12\n");
        Assert.Equal(["speed [mph]", "wheel path  [in]"], reading.Further);
        Assert.Equal(["55", "3"], reading.Tally.MostRecord(0)!.Further);
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

    // The plain twin: cells split by the separator, and the class library's parsers of text. Bit for bit.
    [Fact]
    public void Rows_OfARecord_AreThoseOfThePlainReader()
    {
        string record = RecordedTrucks.Record(7, days: 5, aDay: 60);
        string[] lines = record.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var reader = new TrafficRowReader(TrafficHeader.Read(Encoding.UTF8.GetBytes(lines[0]), 1, "trucks.csv", new FindingList())!);
        using CsvReader rows = CsvReader.Create(Encoding.UTF8.GetBytes(record), reader.Options);
        Assert.True(reader.Next(rows));
        int row = 1;
        for (; reader.Next(rows); row++)
        {
            Assert.Equal(RowRemark.None, reader.Read(rows));
            string[] cells = lines[row].Split(',');
            double[] Numbers(int cell, string unit) => [.. cells[cell].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture) * Unit.Find(unit)!.Size)];
            Assert.Equal(Numbers(1, "kip"), reader.Loads.ToArray());
            Assert.Equal(Numbers(2, "ft"), reader.Gaps.ToArray());
            DateTime time = DateTime.Parse(cells[0], CultureInfo.InvariantCulture);
            Assert.Equal((DateOnly.FromDateTime(time).DayNumber, time.Ticks), (reader.Day, reader.Ticks));
        }

        Assert.Equal(lines.Length, row);
    }

    [Theory]
    [InlineData("17.35", ',', 17.35)]
    [InlineData("17.", ',', 17)]
    [InlineData("+1.735e1", ',', 17.35)]
    [InlineData("17,35", ';', 17.35)]
    [InlineData("17.35", ';', 17.35)]
    [InlineData("17,350000000000000000000000000000000000000000000000000000000000000000000000", ';', 17.35)]
    public void Number_AsATableTakesIt_IsRead(string text, char separator, double kips) =>
        Assert.Equal(kips * Unit.Find("kip")!.Size, OneAxle(text, separator).Tally.Weights.Heaviest);

    [Theory]
    [InlineData(".", ',')]
    [InlineData("1.2.3", ',')]
    [InlineData("12a", ',')]
    [InlineData("0x1F", ',')]
    [InlineData("NaN", ',')]
    [InlineData("Infinity", ',')]
    [InlineData("1e999", ',')]
    [InlineData("1,234,567", ';')]
    [InlineData("1.234,5", ';')]
    public void Number_ThatIsNone_IsRejected(string text, char separator) => Assert.Equal([RowRemark.Number], OneAxle(text, separator).Rejected.Remarks);

    // Rows are told by the lines of an editor, however these end.
    [Theory]
    [InlineData("\n", 64)]
    [InlineData("\r\n", 64)]
    [InlineData("\r", 4096)]
    public void Lines_HoweverTheyEnd_AreCounted(string lineBreak, int blockSize)
    {
        string[] lines = ["# a record", "", Header.TrimEnd(), "2026-05-04T10:00:00,10 20,12,1", "", "  # noted", "2026-05-04T10:00:01,61 20,12,2", ",,,", "rubbish", "2026-05-04T09:00:00,10 20,12,1", ""];
        TrafficReading reading = Counted(string.Join(lineBreak, lines), blockSize: blockSize);
        Assert.Equal((3, 9, 7, 10L), (reading.Tally.Trucks, Assert.Single(reading.Rejected.First(RowRemark.Time)).Where.Line, Assert.Single(reading.Unlikely.First(RowRemark.HeavyAxle)).Where.Line, reading.FirstOutOfOrder!.Value));
        Assert.Equal((7, "2"), (reading.Tally.MostRecord(0)!.Line, reading.Tally.MostRecord(0)!.Further[0]));
    }

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

    private TrafficReading OneAxle(string load, char separator) => Counted($"time{separator}loads [kip]{separator}spacings [ft]\n2026-05-04T10:00:00{separator}{load}{separator}\n");

    private TrafficReading Counted(string record, int workers = 1, int blockSize = 1 << 16) => RecordedTrucks.Counted(RecordedTrucks.Plan(bridge.Folder), record, workers, blockSize);
}
