using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>
/// What an exercise lets a student change in its recipe. The form follows these; the grader is the judge, so a value that strayed
/// (typed as text) is shown for mending, never put back in silence.
/// </summary>
internal abstract class EditRules
{
    public static EditRules Of(Exercise exercise, RecipeDraft draft)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise is { Kind: ExerciseKind.Repair, RecipeText: { } text } && Typed.Given(text) is { } given
            ? new RepairRules(exercise, given)
            : new ComposeRules(exercise, draft);
    }

    /// <summary>Empty when the list of parts is fixed.</summary>
    public abstract ImmutableArray<string> KindsToAdd { get; }

    public abstract bool IsLocked(string path, string value);

    /// <summary>A remark under a field that is not locked.</summary>
    public abstract string? NoteOn(string path, string value);
}

/// <summary>Only what is allowed may change; the note says how far, and what was given.</summary>
internal sealed class RepairRules(Exercise exercise, RecipeDraft given) : EditRules
{
    public override ImmutableArray<string> KindsToAdd => exercise.Allow.Any(a => a.Path == "parts") ? KindsOfPart.Words : [];

    public override bool IsLocked(string path, string value) =>
        path != "recipe" && Allowed(path) is null && (given.Get(path) ?? "") == value;

    public override string? NoteOn(string path, string value)
    {
        if (path == "recipe") return null;
        string was = given.Get(path) ?? "";
        string before = was.Length == 0 ? "was left open" : $"was {was}";
        return Allowed(path) switch
        {
            null => $"{before}; this exercise does not let it change",
            { Said: "anything" } => was == value ? null : before,
            { } rule => $"{rule.Said}; {before}",
        };
    }

    private AllowedChange? Allowed(string path) => exercise.Allow.FirstOrDefault(a =>
        path == a.Path
        || path.StartsWith(a.Path + ".", StringComparison.Ordinal)
        || (a.Path == "parts" && path.StartsWith("parts[", StringComparison.Ordinal)));
}

/// <summary>What is fixed stays; the note says what the parts box holds.</summary>
internal sealed class ComposeRules(Exercise exercise, RecipeDraft draft) : EditRules
{
    public override ImmutableArray<string> KindsToAdd =>
        exercise.PartsBox.IsEmpty ? KindsOfPart.Words : [.. exercise.PartsBox.Select(b => b.Part).Distinct()];

    public override bool IsLocked(string path, string value) => Fixed(path) is { Words: [{ } only] } && only == value;

    public override string? NoteOn(string path, string value) => (Fixed(path) ?? Boxed(path)) is { Said: not "anything" } rule ? rule.Said : null;

    private AllowedChange? Fixed(string path) => exercise.Fixed.FirstOrDefault(f => f.Path == path);

    private AllowedChange? Boxed(string path)
    {
        int dot = path.LastIndexOf('.');
        if (dot < 0 || !path.StartsWith("parts[", StringComparison.Ordinal)) return null;
        string? kind = draft.Get(path[..dot] + ".part");
        return exercise.PartsBox.Where(b => b.Part == kind).SelectMany(b => b.Rules).FirstOrDefault(r => r.Path == path[(dot + 1)..]);
    }
}
