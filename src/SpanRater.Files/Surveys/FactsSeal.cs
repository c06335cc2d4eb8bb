using System.Security.Cryptography;
using System.Text;

namespace SpanRater.Files;

/// <summary>
/// The checksum that stands in a file of facts: SHA-256 of the file's bytes with zeros in the place of the checksum, so that what was spoiled or edited by hand is
/// not taken for what the program found. It holds off mistakes, not whoever makes a checksum of his own.
/// </summary>
internal static class FactsSeal
{
    /// <summary>Name of the field, the second of the file.</summary>
    public const string Field = "checksum";

    /// <summary>What stands in the place of a checksum that is not made yet: as long as one.</summary>
    public static readonly string Open = new('0', 2 * SHA256.HashSizeInBytes);

    /// <summary>Puts the checksum in its place.</summary>
    /// <param name="file">The bytes of the file, with <see cref="Open"/> in the field.</param>
    public static void Close(Span<byte> file)
    {
        int at = PlaceOf(Open, file);
        Encoding.ASCII.GetBytes(Convert.ToHexStringLower(SHA256.HashData(file)), file[at..]);
    }

    /// <summary>Whether a file is as it was closed.</summary>
    /// <param name="file">The bytes of the file.</param>
    /// <param name="checksum">What stands in the field; null for nothing.</param>
    public static bool Holds(ReadOnlySpan<byte> file, string? checksum)
    {
        if (checksum?.Length != Open.Length || PlaceOf(checksum, file) is not (>= 0 and int at))
        {
            return false;
        }

        byte[] open = file.ToArray();
        Encoding.ASCII.GetBytes(Open, open.AsSpan(at));
        return Convert.ToHexStringLower(SHA256.HashData(open)) == checksum;
    }

    // Nothing as long stands before the field.
    private static int PlaceOf(string checksum, ReadOnlySpan<byte> file) => file.IndexOf(Encoding.ASCII.GetBytes(checksum));
}
