using System.Globalization;
using System.Security.Cryptography;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Tests.CommandLine;

/// <summary><c>exercise</c> and <c>exercise check</c>.</summary>
public sealed class ExerciseCommandTests : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("span-exercise-").FullName;

    private string Folder => Path.Combine(place, "ex");

    private string Answers => Path.Combine(Folder, "answers.csv");

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public void Exercise_Pratt_WritesSheetFigureKeyAndABridgeThatRuns()
    {
        Run run = Make("--form", "pratt", "--seed", "7", "--level", "medium", "--units", "si");
        Assert.Contains($"spanrater exercise check {Answers}\n", run.Output, StringComparison.Ordinal);
        Assert.Equal(
            ["answers.csv", "bridge/bridge.toml", "bridge/joints.csv", "bridge/loads.csv", "bridge/members.csv", "figure.png", "key.csv", "key.md", "questions.md"],
            Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(Folder, f).Replace('\\', '/')).Order(StringComparer.Ordinal));
        string sheet = File.ReadAllText(Path.Combine(Folder, "questions.md"));
        Assert.StartsWith("# Exercise 7: a Pratt truss, medium\n", sheet, StringComparison.Ordinal);
        Assert.Contains("](<figure.png>)", sheet, StringComparison.Ordinal);
        Assert.Contains("\n| 1 | upward reaction at L0 | kN |\n", sheet, StringComparison.Ordinal);
        Assert.Contains("Loads: ", sheet, StringComparison.Ordinal);

        // No answer stands on the sheet or in the blank form.
        string[] key = File.ReadAllLines(Path.Combine(Folder, "key.csv"));
        Assert.All(key.Skip(1).Select(l => l.Split(',')).Where(c => c[6].Length == 0 && c[3].Contains('.', StringComparison.Ordinal)), c => Assert.DoesNotContain(c[3], sheet, StringComparison.Ordinal));
        Assert.All(File.ReadLines(Answers).Skip(2), l => Assert.Equal("", l.Split(',')[2]));

        string bridge = Path.Combine(Folder, "bridge");
        Run forces = Run.Of("forces", bridge, "--case", "exercise", "--format", "csv");
        Assert.Equal((0, ""), (forces.Status, forces.Error));
        Assert.Equal((0, ""), (Run.Of("check", bridge).Status, Run.Of("check", bridge).Error));
    }

    [Theory]
    [InlineData("double-intersection", true)]
    [InlineData("baltimore", false)]
    public void Exercise_MembersThatCross_AreSaidToPass(string form, bool pass)
    {
        Make("--form", form, "--seed", "3", "--level", "medium");
        Assert.Equal(pass, File.ReadAllText(Path.Combine(Folder, "questions.md")).Contains("Where members cross without a joint they pass each other.", StringComparison.Ordinal));
    }

    [Fact]
    public void Exercise_Hard_BringsItsTrainAndThePeaksThatRollGives()
    {
        Make("--form", "warren", "--seed", "5", "--level", "hard", "--units", "si");
        string[] peak = File.ReadAllLines(Path.Combine(Folder, "key.csv")).Select(l => l.Split(',')).First(c => c[2] == "largest tension");
        string member = peak[1].Split(' ')[3];
        using var json = System.Text.Json.JsonDocument.Parse(Run.Of("roll", Path.Combine(Folder, "bridge"), "--vehicle", "Exercise train", "--format", "json").Output);
        double rolled = json.RootElement.GetProperty("peaks").EnumerateArray().Single(p => p.GetProperty("member").GetString() == member).GetProperty("tension").GetProperty("force").GetDouble();
        Assert.Equal(rolled, double.Parse(peak[3], CultureInfo.InvariantCulture), 1e-9);
    }

    [Fact]
    public void Exercise_SameSeed_SameBytes()
    {
        foreach (string level in (string[])["easy", "medium", "hard"])
        {
            string one = Path.Combine(place, "one-" + level), two = Path.Combine(place, "two-" + level);
            Assert.Equal(0, Run.Of("exercise", "--form", "parker", "--seed", "3", "--level", level, "--out", one).Status);
            Assert.Equal(0, Run.Of("exercise", "--form", "parker", "--seed", "3", "--level", level, "--out", two).Status);
            Assert.Equal(Hash(one), Hash(two));
        }
    }

    // The very numbers: a change of them is told in docs/changes.md, since sheets in use would no longer fit their seed.
    [Fact]
    public void Exercise_KingPostSeedOne_AsksForTheseVeryNumbers()
    {
        Make("--form", "king-post", "--seed", "1");
        string[] key = File.ReadAllLines(Path.Combine(Folder, "key.csv"));
        Assert.Equal(GoldenKey, key.Where(l => l.Split(',')[6].Length == 0));
    }

    [Fact]
    public void Exercise_FolderThatHoldsSomething_IsLeftAlone()
    {
        Make("--form", "howe", "--seed", "2");
        string before = Hash(Folder);
        Run again = Run.Of("exercise", "--form", "howe", "--seed", "3", "--out", Folder);
        Assert.Equal((1, $"{Folder}: holds files already, and nothing is ever overwritten: name a folder that is not there yet, or an empty one.\n"), (again.Status, again.Error));
        Assert.Equal(before, Hash(Folder));
    }

    [Theory]
    [InlineData("--seed is missing: give a whole number, such as --seed 7; the same number gives the same exercise.", "--form", "pratt")]
    [InlineData("--seed \"x\": write a whole number from 0 to 2147483647.", "--form", "pratt", "--seed", "x")]
    [InlineData("--seed \"-3\": write a whole number from 0 to 2147483647.", "--form", "pratt", "--seed", "-3")]
    [InlineData("spanrater: Argument 'difficult' not recognized. Must be one of: 'easy' 'medium' 'hard'.", "--form", "pratt", "--seed", "1", "--level", "difficult")]
    public void Exercise_BadOption_IsTold(string expected, params string[] options)
    {
        Run run = Run.Of(["exercise", .. options, "--out", Folder]);
        Assert.Equal(1, run.Status);
        Assert.Contains(expected, run.Error.Split('\n'));
        Assert.False(Directory.Exists(Folder));
    }

    [Fact]
    public void Exercise_UnknownForm_IsSuggested() =>
        Assert.StartsWith("--form \"howie\": there is no such form. Did you mean \"howe\"?", Run.Of("exercise", "--form", "howie", "--seed", "1", "--out", Folder).Error, StringComparison.Ordinal);

    [Fact]
    public void Check_RightAnswersOfEveryExercise_AreAllRight() => Assert.All(ExerciseMakerTests.All(seeds: 2), exercise =>
    {
        (DisplayUnits units, string folder) = Write(exercise);
        string[] rows = [.. exercise.Items.Select((item, i) => Row(i, item.Question, Math.Abs(Shown(item.Key, item.Question, units)), units, SenseOf(item)))];
        Run run = Check(folder, rows);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{rows.Length} of {rows.Length} right, 0 wrong, 0 not answered."), run.Output, StringComparison.Ordinal);
    });

    // Every mistake of the exercises, put into answers.csv by its number: it is recognised among those that fit.
    [Fact]
    public void Check_EveryInjectedMistake_IsRecognised()
    {
        int injected = 0;
        foreach (Exercise exercise in ExerciseMakerTests.All(seeds: 2))
        {
            (DisplayUnits units, string folder) = Write(exercise);
            for (int k = 0; k < exercise.Items.Max(i => i.Mistakes.Count); k++)
            {
                (ExerciseItem Item, int Index)[] here = [.. exercise.Items.Select((item, i) => (item, i)).Where(p => p.item.Mistakes.Count > k)];
                File.WriteAllText(Path.Combine(folder, "answers.csv"), "question,answer,unit\n" + string.Concat(here.Select(p => Row(p.Index, p.Item.Question, Shown(p.Item.Mistakes[k].Value, p.Item.Question, units), units, null) + "\n")));
                var findings = new FindingList();
                MarkedExercise marked = MarkedExercise.Read(Path.Combine(folder, "answers.csv"), Path.Combine(folder, "key.csv"), findings)!;
                Assert.Empty(findings.All);
                foreach ((ExerciseItem item, int index) in here)
                {
                    // A size under "largest compression" is understood as compression where no sense is written: there is no mistake to find.
                    if (item.Question is not { Quantity: AskedQuantity.Peak, Sense: Sense.Compression } || item.Mistakes[k].Value <= 0)
                    {
                        AssertRecognised(exercise, item, item.Mistakes[k], marked.Answers[index].Mark!);
                        injected++;
                    }
                }
            }
        }

        Assert.InRange(injected, 800, int.MaxValue);
    }

    // The same for all two hundred and ten, without files.
    [Fact]
    public void Marking_EveryInjectedMistakeOfAllExercises_IsRecognised() => Assert.All(ExerciseMakerTests.All(), exercise =>
    {
        foreach (ExerciseItem item in exercise.Items)
        {
            Assert.All(item.Mistakes, m => AssertRecognised(exercise, item, m, Marking.Of(m.Value, 0, item.Key, item.Question.Quantity != AskedQuantity.Ordinate, item.Mistakes)));
        }
    });

    private static void AssertRecognised(Exercise exercise, ExerciseItem item, MistakenValue mistake, AnswerMark mark) => Assert.True(
        !mark.IsRight && mark.Fits.Any(f => f.Mistakes.Any(m => m.Mistake == mistake.Mistake && m.Where == mistake.Where)),
        $"{exercise.Kind.Name} {exercise.Level} {exercise.Seed} {item.Question} {mistake}");

    [Fact]
    public void Check_WrongAnswers_SayWhatTheyLookLikeAndWhichLineToCompare()
    {
        WriteHand();
        Run run = Check(Folder, "1,18000,lb,", "2,18,kip,", "3,33.75,kip,compression", "4,-19.2,kip,");
        Assert.Equal((0, ""), (run.Status, run.Error));
        string[] lines = run.Output.Split('\n');
        Assert.Contains("1 of 5 right, 3 wrong, 1 not answered.", lines);
        Assert.Matches(@"^2 +upward reaction at L8 +18 kip +wrong +the reaction of the other support +key\.md, line K1$", lines.Single(l => l.StartsWith("2 ", StringComparison.Ordinal)));
        Assert.Matches(@"^3 .* wrong +tension taken for compression, or compression for tension +key\.md, line K2$", lines.Single(l => l.StartsWith("3 ", StringComparison.Ordinal)));
        Assert.Matches(@"^4 .* wrong +sine and cosine exchanged at every joint; or sine and cosine exchanged at joint U1 +key\.md, line K4$", lines.Single(l => l.StartsWith("4 ", StringComparison.Ordinal)));
        Assert.Matches(@"^5 .* not answered$", lines.Single(l => l.StartsWith("5 ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Check_SenseLeftBlank_SaysThatTheNumberCountsAsTension()
    {
        WriteHand();
        Assert.Contains("(the sense is blank, so the number counts as tension)", Check(Folder, "4,67.5,kip,").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5,1,kip/kip,")]
    [InlineData("5,1,none,")]
    [InlineData("1,18,KIP,")]
    public void Check_UnitsAsLearnersWriteThem_AreUnderstood(string row)
    {
        WriteHand();
        Run run = Check(Folder, row);
        Assert.Equal((0, ""), (run.Status, run.Error));
    }

    [Fact]
    public void Check_OffByOnePerCent_AsksWhetherItWasRounded()
    {
        WriteHand();
        string[] lines = Check(Folder, "1,18.2,kip,", "4,-68.3,kip,").Output.Split('\n');
        Assert.All((string[])["1 ", "4 "], n => Assert.Contains("wrong", lines.Single(l => l.StartsWith(n, StringComparison.Ordinal)), StringComparison.Ordinal));
        Assert.Contains("near the key: numbers rounded on the way?", lines.Single(l => l.StartsWith("1 ", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Check_WithoutAKeyBeside_SaysHowToNameOne()
    {
        WriteHand();
        File.Move(Path.Combine(Folder, "key.csv"), Path.Combine(place, "elsewhere.csv"));
        File.WriteAllText(Answers, "question,answer,unit\n1,18,kip\n");
        Run run = Run.Of("exercise", "check", Answers);
        Assert.Equal((1, "", $"{Answers}: no key.csv lies beside it: name the key with --key FILE.\n"), (run.Status, run.Output, run.Error));
        Assert.Equal(0, Run.Of("exercise", "check", Answers, "--key", Path.Combine(place, "elsewhere.csv")).Status);
        Assert.Equal($"{Folder}: is a folder: name the file of answers in it, such as {Answers}.\n", Run.Of("exercise", "check", Folder).Error);
    }

    [Fact]
    public void Check_MixedUnits_AreRecognised()
    {
        WriteHand();
        Run run = Check(Folder, "1,18,kN,", "3,33750,kip,", "4,300.3,kip,c");
        string[] lines = run.Output.Split('\n');
        Assert.Contains("kip and kN mixed", lines.Single(l => l.StartsWith("1 ", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("a factor of a thousand: N for kN, or lb for kip", lines.Single(l => l.StartsWith("3 ", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("kip and kN mixed", lines.Single(l => l.StartsWith("4 ", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("answers.csv:2:1: there is no question 9: the key has 1, 2, 3, 4, 5.", "9,1,kip,")]
    [InlineData("answers.csv:2:3: \"abc\" is not a number.", "1,abc,kip,")]
    [InlineData("answers.csv:2:3: \"18 kip\" has its unit behind it: write the number alone here, and kip under unit.", "1,18 kip,kip,")]
    [InlineData("answers.csv:2:6: the answer has no unit: write kip, or the unit you worked in.", "1,18,,")]
    [InlineData("answers.csv:2:6: unit \"ton\": a bare ton may be 2,000 lb or 1,000 kg: write \"US ton\" (2,000 lbf) or \"tonne\" (1,000 kg).", "1,18, ton,")]
    [InlineData("answers.csv:2:6: unit \"ft\": \"ft\" is a unit of a length; for a force, write kip or kN.", "1,18, ft,")]
    [InlineData("answers.csv:2:10: sense \"left\": write tension or compression, or leave it blank.", "3,33,kip, left")]
    [InlineData("answers.csv:2:10: sense \"tension\": write up or down, or leave it blank.", "1,18,kip,tension")]
    [InlineData("answers.csv:2:3: \"-33\" is below zero and its sense is tension: write the size alone, or leave the sense blank.", "3,-33,kip,tension")]
    [InlineData("answers.csv:2:5: unit \"kip\": an influence ordinate is a force per force and has no unit: clear it.", "5,1,kip,")]
    [InlineData("answers.csv:3:1: question 1 is answered twice: keep one row.", "1,18,kip,", "1,18,kip,")]
    public void Check_BadAnswers_AreToldWithPlaceAndMend(string expected, params string[] rows)
    {
        WriteHand();
        Run run = Check(Folder, rows);
        Assert.Equal((1, ""), (run.Status, run.Output));
        Assert.Equal(Path.Combine(Folder, expected) + "\n", run.Error);
    }

    [Theory]
    [InlineData("1,a,force,18,kip,1,,", "1,a,,3,kip,,sign turned,", ":3:13: unknown mistake \"sign turned\".")]
    [InlineData("1,a,weight,18,kip,1,,", null, ":2:5: kind \"weight\": write reaction, force, ordinate, largest tension or largest compression.")]
    [InlineData("1,a,force,18,kip,1,,", "1,a,force,18,kip,1,,", ":3:1: question 1 is there twice: each has one row without a mistake.")]
    [InlineData("1,a,,18,kip,1,other reaction,", null, ":2:1: question 1 has a mistake before its right value: put the row without a mistake first.")]
    public void Check_BadKey_IsTold(string row, string? second, string expected)
    {
        WriteHand();
        string key = Path.Combine(place, "mine.csv");
        File.WriteAllText(key, $"question,quantity,kind,value,unit,line,mistake,at\n{row}\n{second}\n");
        File.WriteAllText(Answers, "question,answer,unit\n1,18,kip\n");
        Run run = Run.Of("exercise", "check", Answers, "--key", key);
        Assert.Equal(1, run.Status);
        Assert.StartsWith(key + expected, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_Json_HasMarksAndMistakes()
    {
        WriteHand();
        Check(Folder, "1,18,kip,", "3,33.75,kip,c");
        using var json = System.Text.Json.JsonDocument.Parse(Run.Of("exercise", "check", Answers, "--format", "json").Output);
        Assert.Equal((1, 1, 3), (json.RootElement.GetProperty("right").GetInt32(), json.RootElement.GetProperty("wrong").GetInt32(), json.RootElement.GetProperty("notAnswered").GetInt32()));
        System.Text.Json.JsonElement third = json.RootElement.GetProperty("answers")[2];
        Assert.Equal(("wrong", 2), (third.GetProperty("mark").GetString(), third.GetProperty("keyLine").GetInt32()));
        Assert.Equal("tension for compression", third.GetProperty("looksLike")[0][0].GetProperty("mistake").GetString());
    }

    [Fact]
    public void EveryMistake_HasANameAndALook() => Assert.All(Enum.GetValues<Mistake>(), mistake =>
    {
        Assert.Equal(mistake, ExerciseWords.FindMistake(ExerciseWords.NameOf(mistake)));
        Assert.NotEmpty(ExerciseWords.Looks(new MistakenValue(mistake, "L0", 1)));
    });

    private static readonly string[] GoldenKey =
    [
        "1,upward reaction at L0,reaction,9,kip,1,,",
        "2,upward reaction at L2,reaction,9,kip,1,,",
        "3,force in L0L1,force,21.6,kip,2,,",
        "4,force in U1L1,force,18,kip,3,,",
    ];

    private Run Make(params string[] options)
    {
        Run run = Run.Of(["exercise", .. options, "--out", Folder]);
        Assert.Equal((0, ""), (run.Status, run.Error));
        return run;
    }

    private (DisplayUnits Units, string Folder) Write(Exercise exercise)
    {
        DisplayUnits units = int.IsEvenInteger(exercise.Seed) ? DisplayUnits.Si : DisplayUnits.Us;
        string folder = Path.Combine(place, FormattableString.Invariant($"{exercise.Kind.Key}-{exercise.Level}-{exercise.Seed}"));
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, "key.csv"), ExerciseTables.Key(exercise, units));
        Assert.Equal(
            exercise.Items.Select((_, i) => $"K{ExerciseWords.KeyLineOf(exercise, exercise.Items[i])} ").Distinct().Count(),
            ExerciseKeySheet.Of(exercise, units).Blocks.OfType<ResultBlock.Heading>().Count(h => exercise.Items.Any(i => h.Text.StartsWith($"K{ExerciseWords.KeyLineOf(exercise, i)} ", StringComparison.Ordinal))));
        return (units, folder);
    }

    // An exercise of the tests' own hand: 24 kip at 30 ft of 120 ft, a Pratt truss with panels of 15 ft, 8 ft high.
    private void WriteHand()
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(
            Path.Combine(Folder, "key.csv"),
            """
            question,quantity,kind,value,unit,line,mistake,at
            1,upward reaction at L0,reaction,18,kip,1,,
            2,upward reaction at L8,reaction,6,kip,1,,
            2,,,18,kip,,other reaction,
            3,force in L0L1,force,33.75,kip,2,,
            3,,,-33.75,kip,,tension for compression,
            4,force in U1U2,force,-67.5,kip,4,,
            4,,,67.5,kip,,tension for compression,
            4,,,-19.2,kip,,sine for cosine everywhere,
            4,,,-19.2,kip,,sine for cosine at the joint,U1
            5,influence ordinate of U1L2 at L2,ordinate,1.59,,3,,

            """);
    }

    private static Run Check(string folder, params string[] rows)
    {
        File.WriteAllText(Path.Combine(folder, "answers.csv"), "question,answer,unit,sense\n" + string.Join('\n', rows) + "\n");
        return Run.Of("exercise", "check", Path.Combine(folder, "answers.csv"));
    }

    private static double Shown(double si, ExerciseQuestion question, DisplayUnits units) => question.Quantity == AskedQuantity.Ordinate ? si : units.From(Quantity.Force, si);

    private static string Row(int index, ExerciseQuestion question, double value, DisplayUnits units, string? sense) =>
        string.Create(CultureInfo.InvariantCulture, $"{index + 1},{value:0.000000},{ExerciseTables.UnitOf(question, units)}{(sense is null ? "" : "," + sense)}");

    private static string SenseOf(ExerciseItem item) => item.Question.Quantity == AskedQuantity.Reaction ? "up" : item.Key > 0 ? "tension" : "compression";

    private static string Hash(string folder) => string.Join(
        '\n',
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(f => Path.GetRelativePath(folder, f) + Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))));
}
