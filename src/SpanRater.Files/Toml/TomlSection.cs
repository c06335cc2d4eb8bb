using System.Globalization;
using Tomlyn.Syntax;

namespace SpanRater.Files;

/// <summary>One table of a TOML file. A key that nobody asked for is a finding once the table has been read.</summary>
internal sealed class TomlSection(string file, string name, Place where, FindingList findings)
{
    private readonly Dictionary<string, (Place Key, Place Value, ValueSyntax Syntax)> entries = new(StringComparer.Ordinal);
    private readonly List<string> asked = [];

    public string Name => name;

    public Place Where => where;

    public void Add(SyntaxList<KeyValueSyntax> items)
    {
        foreach (KeyValueSyntax item in items)
        {
            string key = item.Key!.ToString().Trim();
            Place keyPlace = TomlFile.PlaceOf(file, item.Key.Span);
            if (entries.TryGetValue(key, out (Place Key, Place Value, ValueSyntax Syntax) first))
            {
                findings.Error(keyPlace, $"key \"{key}\" is there twice, first on line {first.Key.Line}: keep one.");
                continue;
            }

            Place valuePlace = TomlFile.PlaceOf(file, item.Value!.Span);
            if (ControlIn(item.Value) is { } control)
            {
                findings.Error(valuePlace, $"{key} holds a control character ({control}), which is no text: delete it.");
            }

            entries.Add(key, (keyPlace, valuePlace, item.Value));
        }
    }

    // Written as escapes they are not seen in the file.
    private static string? ControlIn(ValueSyntax value) => value switch
    {
        StringValueSyntax { Value: { } text } when PrintableText.ControlIn(text) is int at and >= 0 => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)text[at]:X4}"),
        ArraySyntax array => array.Items.Select(i => ControlIn(i.Value!)).FirstOrDefault(c => c is not null),
        _ => null,
    };

    /// <summary>Where a key's value stands, or the table where the key is not there.</summary>
    public Place PlaceOf(string key) => entries.TryGetValue(key, out (Place Key, Place Value, ValueSyntax Syntax) entry) ? entry.Value : where;

    /// <summary>Whether a key is there.</summary>
    public bool Has(string key) => entries.ContainsKey(key);

    /// <summary>Whether a key is there and is a text that is not blank.</summary>
    public bool HasText(string key) =>
        entries.TryGetValue(key, out (Place Key, Place Value, ValueSyntax Syntax) entry) && entry.Syntax is StringValueSyntax { Value: { } text } && !string.IsNullOrWhiteSpace(text);

    /// <summary>A text that is not blank.</summary>
    public string? Text(string key)
    {
        if (Value(key) is not { } value)
        {
            return null;
        }

        if (value is StringValueSyntax { Value: { } text } && !string.IsNullOrWhiteSpace(text))
        {
            return text.Trim();
        }

        findings.Error(PlaceOf(key), $"{key} is a text in quotes: {key} = \"…\".");
        return null;
    }

    /// <summary>A list of texts.</summary>
    public IReadOnlyList<string>? Texts(string key) => TextsWithPlaces(key)?.Select(t => t.Text).ToList();

    /// <summary>A list of texts, each with its place.</summary>
    public IReadOnlyList<(string Text, Place Where)>? TextsWithPlaces(string key)
    {
        if (Value(key) is not { } value)
        {
            return null;
        }

        if (value is ArraySyntax array && array.Items.All(i => i.Value is StringValueSyntax { Value: not null }))
        {
            return [.. array.Items.Select(i => (((StringValueSyntax)i.Value!).Value!.Trim(), TomlFile.PlaceOf(file, i.Value.Span)))];
        }

        findings.Error(PlaceOf(key), $"{key} is a list of texts: {key} = [\"…\", \"…\"].");
        return null;
    }

    /// <summary>true or false.</summary>
    public bool? YesOrNo(string key)
    {
        if (Value(key) is not { } value)
        {
            return null;
        }

        if (value is BooleanValueSyntax yes)
        {
            return yes.Value;
        }

        findings.Error(PlaceOf(key), $"{key} = {value.ToString().Trim()}: write true or false, without quotes.");
        return null;
    }

    /// <summary>A plain number within limits.</summary>
    public double? Number(string key, double least, double most, string mend)
    {
        double? number = Value(key) switch
        {
            null => null,
            IntegerValueSyntax integer => integer.Value,
            FloatValueSyntax real => real.Value,
            _ => double.NaN,
        };
        if (number is null || (number >= least && number <= most))
        {
            return number;
        }

        findings.Error(PlaceOf(key), $"{key} = {entries[key].Syntax.ToString().Trim()}: {mend}");
        return null;
    }

    /// <summary>A list of plain numbers within limits, at least one.</summary>
    public IReadOnlyList<double>? Numbers(string key, double least, double most, string mend)
    {
        if (Value(key) is not { } value)
        {
            return null;
        }

        double[] numbers = value is ArraySyntax array
            ? [.. array.Items.Select(i => i.Value switch { IntegerValueSyntax whole => whole.Value, FloatValueSyntax real => real.Value, _ => double.NaN })]
            : [];
        if (numbers.Length > 0 && numbers.All(n => n >= least && n <= most))
        {
            return numbers;
        }

        findings.Error(PlaceOf(key), $"{key} = {value.ToString().Trim()}: {mend}");
        return null;
    }

    /// <summary>A whole number within limits.</summary>
    public int? WholeNumber(string key, int least, int most, string mend)
    {
        if (Value(key) is IntegerValueSyntax or null)
        {
            return (int?)Number(key, least, most, mend);
        }

        findings.Error(PlaceOf(key), $"{key} = {entries[key].Syntax.ToString().Trim()}: {mend}");
        return null;
    }

    /// <summary>A quantity, in SI: a text of a number and its unit.</summary>
    public double? Quantity(string key, Quantity quantity)
    {
        switch (Value(key))
        {
            case null:
                return null;
            case StringValueSyntax { Value: { } text }:
                (double? si, string? wrong) = QuantityText.ReadWithUnit(text, quantity);
                if (wrong is not null)
                {
                    findings.Error(PlaceOf(key), $"{key} = {wrong}");
                }

                return si;
            case IntegerValueSyntax or FloatValueSyntax:
                string number = entries[key].Syntax.ToString().Trim();
                string[] units = Unit.Suggestion(quantity).Split(" or ");
                findings.Error(PlaceOf(key), $"{key} = {number} has no unit: write {string.Join(" or ", units.Select(u => string.Create(CultureInfo.InvariantCulture, $"{key} = \"{number} {u}\"")))}.");
                return null;
            default:
                findings.Error(PlaceOf(key), $"{key} is a quantity in quotes: {key} = \"16 {Unit.Suggestion(quantity).Split(' ')[0]}\".");
                return null;
        }
    }

    /// <summary>A quantity above zero, in SI.</summary>
    public double? PositiveQuantity(string key, Quantity quantity)
    {
        double? value = Quantity(key, quantity);
        if (value <= 0)
        {
            findings.Error(PlaceOf(key), $"{key} must be above zero.");
            return null;
        }

        if (value < QuantityText.LeastAboveZero)
        {
            findings.Error(PlaceOf(key), $"{key} = {entries[key].Syntax.ToString().Trim()} is too small to be true: check the number and its unit.");
            return null;
        }

        return value;
    }

    /// <summary>Names the keys that nobody asked for.</summary>
    public void SayWhatIsUnknown()
    {
        foreach ((string key, (Place place, _, _)) in entries.Where(e => !asked.Contains(e.Key)))
        {
            string table = name.Length == 0 ? "here" : $"in [{name}]";
            findings.Error(place, $"unknown key \"{key}\".{NearestName.Question(key, asked)} The keys {table} are: {string.Join(", ", asked)}.");
        }
    }

    private ValueSyntax? Value(string key)
    {
        if (!asked.Contains(key))
        {
            asked.Add(key);
        }

        return entries.TryGetValue(key, out (Place Key, Place Value, ValueSyntax Syntax) entry) ? entry.Syntax : null;
    }
}
