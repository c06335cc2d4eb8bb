using SpanRater.Fuzz;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>Spoiled inputs, a few hundred of the very ones that tests/SpanRater.Fuzz makes by the million: readers give findings or a bridge, commands end as they should.</summary>
public class FuzzTests
{
    [Fact]
    public void EveryReader_SpoiledInput_GivesFindingsOrAnAnswer()
    {
        string exercise = Directory.CreateTempSubdirectory("span-exercise-").FullName;
        string folder = Path.Combine(exercise, "pratt");
        Assert.Equal(0, Run.Of("exercise", "--form", "pratt", "--seed", "3", "--out", folder).Status);
        var maker = new InputMaker(StartingPoint.All(Repository.Root, folder), seed: 20);

        // Of what the long run tries, the quick: the readers on all, the usual commands on the small bridge.
        using var trial = new Trial { OneInOthers = 0, OneInLarge = 1000 };
        var faults = new List<string>();
        int taken = 0, commands = 0;
        for (int number = 0; number < 300; number++)
        {
            TrialOutcome outcome = trial.Of(maker.Make(number), TestContext.Current.CancellationToken);
            taken += outcome.WasAccepted ? 1 : 0;
            commands += outcome.Command is null ? 0 : 1;
            if (outcome.Fault is { } fault)
            {
                faults.Add($"seed 20, input {number}, {string.Join(' ', outcome.Command ?? [])}: {fault}");
            }
        }

        Directory.Delete(exercise, recursive: true);
        Assert.Empty(faults);

        // Not everything may be refused at the door, or nothing behind it would be tried.
        Assert.InRange(taken, 20, 200);
        Assert.InRange(commands, 20, 200);
    }

    [Fact]
    public void Make_SameSeedAndNumber_GivesTheSameBytes()
    {
        string exercise = Path.Combine(Repository.Root, "tests", "SpanRater.Fuzz", "starts", "king-post");
        IReadOnlyList<StartingPoint> points = StartingPoint.All(Repository.Root, exercise);
        SpoiledInput one = new InputMaker(points, seed: 4).Make(11), same = new InputMaker(points, seed: 4).Make(11);
        Assert.Equal(one.Files.Keys, same.Files.Keys);
        Assert.All(one.Files, f => Assert.Equal(f.Value, same.Files[f.Key]));
        Assert.Equal(one.Chance.Next(), same.Chance.Next());
    }
}
