using System.Text.RegularExpressions;
using TyingClass.Lessons.Exercises;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>
/// What an exercise speaks of, by its title, prompt and hints. Where each of several things would decide a fly if it were left off, the one its author teaches
/// is the one to tell.
/// </summary>
internal sealed partial class AuthorWords(Exercise exercise)
{
    private readonly string _text = Tags().Replace($"{exercise.Title} {exercise.PromptHtml} {string.Join(' ', exercise.Hints)}", " ");

    /// <summary>How often it is spoken of.</summary>
    public int Speaks(Thing thing) => thing.Kind switch
    {
        ThingKind.Eye => Count(@"(eye|ring)"),
        ThingKind.Knot => Count(@"(knot|loop|cinched)"),
        ThingKind.Part when thing.Part == "dumbbell eyes" => Count(@"eyes"),
        ThingKind.Part when thing.Part.StartsWith("wing", StringComparison.Ordinal) => Count(@"(wing|hair|fur|strip)"),
        ThingKind.Part => Count(Regex.Escape(thing.Part)),
        _ => 0,
    };

    private int Count(string word) => Regex.Count(_text, $@"\b{word}\b", RegexOptions.IgnoreCase);

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();
}
