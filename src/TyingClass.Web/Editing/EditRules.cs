using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>
/// What an exercise lets a student change in its recipe. The form follows these; the grader is the judge, so a value that strayed
/// (typed as text) is shown for mending, never put back in silence.
/// </summary>
internal sealed class EditRules
{
    private readonly Exercise exercise;
    private readonly RecipeDraft? given;

    public EditRules(Exercise exercise)
    {
        this.exercise = exercise;
        given = exercise.Kind == ExerciseKind.Repair && exercise.RecipeText is { } text ? Typed.Split(text) : null;
    }

    public ImmutableArray<string> KindsToAdd =>
        given is null ? PartWords.Kinds : exercise.Allow.Any(a => a.Path == "parts") ? PartWords.Kinds : [];

    public bool IsLocked(string path, string value) => given is not null && path != "recipe" && Allowed(path) is null && (given.Get(path) ?? "") == value;

    public string? NoteOn(string path, string value, bool locked)
    {
        if (given is null || locked || path == "recipe") return null;
        string was = given.Get(path) ?? "";
        string before = was.Length == 0 ? "was left open" : $"was {was}";
        return Allowed(path) switch
        {
            { LowText: { } low, HighText: { } high } => $"{low} to {high}; {before}",
            not null => was == value ? null : before,
            null => $"{before}; this exercise does not let it change",
        };
    }

    private AllowedChange? Allowed(string path) => exercise.Allow.FirstOrDefault(a =>
        path == a.Path
        || path.StartsWith(a.Path + ".", StringComparison.Ordinal)
        || (a.Path == "parts" && path.StartsWith("parts[", StringComparison.Ordinal)));
}
