using MathNet.Numerics.Random;

namespace SpanRater.Fuzz;

/// <summary>A starting point of which one to four places are spoiled: always the same for the same seed and number.</summary>
/// <param name="Number">Its number within the run.</param>
/// <param name="Start">What it was made from.</param>
/// <param name="Files">The files that differ from the starting point's, by name.</param>
/// <param name="Chance">What the trial draws from, such as the command that is run.</param>
public sealed record SpoiledInput(long Number, StartingPoint Start, IReadOnlyDictionary<string, byte[]> Files, Random Chance);

/// <summary>Makes the inputs of a run.</summary>
/// <param name="points">What they are made from.</param>
/// <param name="seed">The seed of the run.</param>
public sealed class InputMaker(IReadOnlyList<StartingPoint> points, int seed)
{
    private readonly Spoiling spoiling = new(Vocabulary.Of(points));

    /// <summary>The input of a number.</summary>
    /// <param name="number">Its number.</param>
    public SpoiledInput Make(long number)
    {
        // Generators of MathNet stay the same from version to version, as System.Random need not.
        var chance = new Xoshiro256StarStar(unchecked((int)(((uint)seed * 2654435761u) ^ (uint)(number * 0x9E3779B1L) ^ (uint)(number >> 32))));
        StartingPoint start = Choose(chance);
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        int places = 1 + (chance.Next(3) == 0 ? chance.Next(4) : 0);
        for (int i = 0; i < places; i++)
        {
            (string name, byte[] whole) = start.Files[chance.Next(start.Files.Count)];
            files[name] = spoiling.Once(name, files.GetValueOrDefault(name, whole), chance);
        }

        return new SpoiledInput(number, start, files, chance);
    }

    // The small bridge has every table and is soon rated; the samples are larger; catalogues and exercises are each one kind of file.
    private StartingPoint Choose(Random chance)
    {
        int kind = chance.Next(10);
        StartingPoint[] of = [.. points.Where(p => kind switch
        {
            < 6 => p is { Kind: InputKind.Bridge, IsSmall: true },
            < 8 => p is { Kind: InputKind.Bridge, IsSmall: false },
            8 => p.Kind == InputKind.Catalogue,
            _ => p.Kind == InputKind.Exercise,
        })];
        return of[chance.Next(of.Length)];
    }
}
