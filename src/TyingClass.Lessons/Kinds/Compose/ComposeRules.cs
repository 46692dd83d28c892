using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.Compose;

/// <summary>What is fixed stays; the note says what the parts box holds.</summary>
internal sealed class ComposeRules(RecipeTask task, RecipeDraft typed) : EditRules
{
    public override ImmutableArray<string> KindsToAdd =>
        task.PartsBox.IsEmpty ? KindsOfPart.Words : [.. task.PartsBox.Select(b => b.Part).Distinct()];

    public override bool IsLocked(string path, string value) => Fixed(path) is { Words: [{ } only] } && only == value;

    public override string? NoteOn(string path, string value) => (Fixed(path) ?? Boxed(path)) is { Said: not "anything" } rule ? rule.Said : null;

    // How a fly is fished is asked about where a goal is of its retrieve.
    public override bool SpeaksOf(string path) => Fixed(path) is not null || Boxed(path) is not null
        || (path.StartsWith("fishing.", StringComparison.Ordinal) && task.Goals.Any(g => AskedPicture.IsOfRetrieve(g.Quantity)));

    /// <summary>A range of the box asks for a value in it; of named words, what is usual may be one.</summary>
    public override bool MustBeStated(string path, string? usual) => (Fixed(path) ?? Boxed(path)) switch
    {
        null => false,
        { LowText: not null } => true,
        { Words: { Length: > 0 } words } => usual is null || !words.Contains(usual),
        _ => false,
    };

    public override ImmutableArray<string> ChoicesFor(string path) => (Fixed(path) ?? Boxed(path))?.Words ?? [];

    private AllowedChange? Fixed(string path) => task.Fixed.FirstOrDefault(f => f.Path == path);

    private AllowedChange? Boxed(string path)
    {
        int dot = path.LastIndexOf('.');
        if (dot < 0 || !path.StartsWith("parts[", StringComparison.Ordinal)) return null;
        string? kind = typed.Get(path[..dot] + ".part");
        return task.PartsBox.Where(b => b.Part == kind).SelectMany(b => b.Rules).FirstOrDefault(r => r.Path == path[(dot + 1)..]);
    }
}
