using System.Collections.Immutable;

namespace TyingClass.Recipes.Model;

/// <summary>
/// How measures of a part were said when not as a number with a unit, by key: "at" as "behind the bead", "length" as "1.5 × shank", "size" as
/// "medium". What was left out and follows from the other parts is there too, as no words at all.
/// </summary>
public sealed class Sayings : IEquatable<Sayings>
{
    private readonly ImmutableSortedDictionary<string, string> _words;

    private Sayings(ImmutableSortedDictionary<string, string> words) => _words = words;

    public static Sayings None { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal));

    public bool IsEmpty => _words.IsEmpty;

    /// <summary>Null for what was said as a number or not at all.</summary>
    public string? this[string key] => _words.GetValueOrDefault(key);

    public Sayings With(string key, string words) => new(_words.SetItem(key, words));

    public Sayings Without(string key) => _words.ContainsKey(key) ? new Sayings(_words.Remove(key)) : this;

    public bool Equals(Sayings? other) => other is not null && _words.SequenceEqual(other._words);

    public override bool Equals(object? obj) => Equals(obj as Sayings);

    public override int GetHashCode() => _words.Aggregate(0, (hash, pair) => HashCode.Combine(hash, pair.Key, pair.Value));
}
