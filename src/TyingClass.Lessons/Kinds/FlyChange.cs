using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds;

/// <summary>What is done to the fly of a question: other water, another knot, another retrieve, another part.</summary>
/// <param name="ChangedRecipeText">The fly after it.</param>
/// <param name="Changes">As the author writes it, to be done to another fly as well; a value of null takes the field away.</param>
public sealed record FlyChange(string ChangedRecipeText, ImmutableArray<(string Path, string? Value)> Changes)
{
    /// <summary>A change this many times what is noticed is clear, and this little of it is none. Estimates.</summary>
    internal const double Clear = 2, None = 0.4;

    /// <summary>So many times what is noticed, a change is plain to whoever is asked without a sum. Estimate.</summary>
    internal const double Plain = 5;

    /// <summary>The same done to another fly, with some of its values drawn anew.</summary>
    internal FlyChange On(RecipeDraft fly, IReadOnlyDictionary<string, string> drawn)
    {
        ImmutableArray<(string Path, string? Value)> changes = [.. Changes.Select(c => (c.Path, drawn.GetValueOrDefault(c.Path) ?? c.Value))];
        return new FlyChange(changes.Aggregate(fly, (draft, c) => draft.With(c.Path, c.Value)).ToText(), changes);
    }

    /// <summary>"Now the knot changes, from “loop” to “cinched”."</summary>
    internal string Said(string recipeText) => ChangeWords.Now(
        ChangeList.Between(GivenFly.Of(recipeText), GivenFly.Of(ChangedRecipeText)).Select(c => (c.Said, c.Before, c.After)));
}
