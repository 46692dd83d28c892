using System.Collections.Immutable;

namespace TyingClass.Recipes.Text;

/// <summary>The few words a field may hold, in the order they are listed to a tyer.</summary>
/// <param name="choices">As they are written back.</param>
/// <param name="otherWords">What else the trade calls them.</param>
internal sealed class Choices<T>(ImmutableArray<(string Word, T Value)> choices, params (string Word, T Value)[] otherWords)
    where T : struct
{
    public IEnumerable<string> Words => choices.Select(c => c.Word);

    public string Example => choices[0].Word;

    /// <summary>Case and extra spaces do not matter.</summary>
    public bool TryGet(string typed, out T value)
    {
        string plain = WordList.Plain(typed);
        foreach ((string word, T meant) in choices.Concat(otherWords))
        {
            if (word != plain) continue;
            value = meant;
            return true;
        }

        value = default;
        return false;
    }

    public string For(T value) => choices.First(c => EqualityComparer<T>.Default.Equals(c.Value, value)).Word;
}
