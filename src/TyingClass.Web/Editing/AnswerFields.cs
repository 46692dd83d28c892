using TyingClass.Lessons.Exercises;

namespace TyingClass.Web.Editing;

/// <summary>Names the fields of an answer that is no recipe, so that whatever is wrong with it leads to its field.</summary>
public static class AnswerFields
{
    /// <param name="path">What a grader calls the field: "reason", "place 2"; null for the answer as a whole.</param>
    public static string IdOf(Exercise exercise, string? path = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        string whole = $"answer-{exercise.Id}";
        return path is null ? whole : $"{whole}-{string.Concat(path.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'))}";
    }

    /// <summary>Of one of several choices for a field: the first is where the field is found.</summary>
    /// <param name="index">From 0.</param>
    public static string ChoiceId(Exercise exercise, string? path, int index) =>
        index == 0 ? IdOf(exercise, path) : FormattableString.Invariant($"{IdOf(exercise, path)}-choice-{index + 1}");
}
