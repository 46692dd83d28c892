using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Web.Editing;
using TyingClass.Web.Identity;
using TyingClass.Web.Pictures;

namespace TyingClass.Web.Patterns;

/// <summary>Takes patterns in, for their owner only.</summary>
public sealed class PatternDesk(PatternStore store, Visitor visitor, FlyPictures pictures)
{
    public const string NewAddress = "/patterns/new";

    public static string AddressOf(string patternId) => $"/patterns/{patternId}";

    /// <summary>This visitor's own pattern, not in the trash; null for any other.</summary>
    public Pattern? Own(string patternId) =>
        visitor.Person is { } person && store.Find(patternId) is { TrashedAt: null } found && found.OwnerId == person.Id ? found : null;

    public PatternEditor Blank(string? recipeText) => Lay(new PatternEditor
    {
        Address = NewAddress,
        Typed = string.IsNullOrWhiteSpace(recipeText) ? StartText.Blank : Typed.FormIfPossible(recipeText.Replace("\r\n", "\n", StringComparison.Ordinal)),
    });

    /// <param name="fromRevision">Whose text to begin with; the latest when there is no such.</param>
    public PatternEditor Open(Pattern pattern, int? fromRevision)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        PatternRevision from = (fromRevision is { } number ? store.Revision(pattern.Id, number) : null) ?? store.Revision(pattern.Id, pattern.Revision)!;
        return Lay(new PatternEditor
        {
            Address = AddressOf(pattern.Id),
            Typed = Typed.FormIfPossible(from.RecipeText),
            Expected = pattern.Revision,
            Note = from.Number == pattern.Revision ? "" : $"Back to revision {from.Number}.",
            Notice = from.Number == pattern.Revision ? null
                : $"The editor holds revision {from.Number}. Nothing is changed until you save it: then it becomes revision {pattern.Revision + 1}.",
        });
    }

    /// <summary>Saves, or does what another button asks of the form.</summary>
    /// <param name="pattern">Null for a new one.</param>
    /// <param name="expected">The revision the form was opened with.</param>
    public PatternResult Take(Pattern? pattern, AnswerPost post, int expected, string note)
    {
        ArgumentNullException.ThrowIfNull(post);
        PatternEditor editor = new()
        {
            Address = pattern is null ? NewAddress : AddressOf(pattern.Id),
            Typed = post.Typed,
            Expected = pattern is null ? 0 : expected,
            Note = note
        };
        if (AnswerLimit.Check(post.Typed.Text) is { } tooLong)
            return new PatternResult(null, Lay(editor with { Problems = [tooLong] }), StatusCodes.Status413PayloadTooLarge);
        if (post.Action != "save") return new PatternResult(null, Edit(editor, post));
        if (RecipeParser.Parse(post.Typed.Text) is not { Success: true, Value: { } recipe })
            return new PatternResult(null, Lay(editor with { Problems = RecipeEdits.ProblemsOf(post.Typed.Text) }), StatusCodes.Status422UnprocessableEntity);
        try
        {
            return Save(pattern, editor, recipe.Name);
        }
        catch (StorageException)
        {
            return new PatternResult(
                null, Lay(
                    editor with
                    {
                        Notice =
                        "This could not be saved: the server could not write to its disk. Nothing you typed is lost: it stands below. Tell the instructor, "
                        + "then save it again."
                    }), StatusCodes.Status503ServiceUnavailable);
        }
    }

    /// <summary>The form with what was typed, nothing done.</summary>
    public PatternEditor ShowAgain(string address, int expected, AnswerPost post, string note, string notice) =>
        Lay(new PatternEditor { Address = address, Typed = post?.Typed ?? StartText.Blank, Expected = expected, Note = note, Notice = notice });

    private PatternResult Save(Pattern? pattern, PatternEditor editor, string name)
    {
        string ownerId = visitor.Person!.Id;
        if (pattern is null) return new PatternResult(store.Create(ownerId, name, editor.Typed.Text, editor.Note), null);
        EditOutcome<Pattern>? outcome = store.Save(pattern.Id, ownerId, editor.Expected, name, editor.Typed.Text, editor.Note);
        if (outcome is null) return new PatternResult(null, null, StatusCodes.Status404NotFound);
        if (outcome.Saved) return new PatternResult(outcome.Current, null);
        int now = outcome.Current.Revision;
        PatternEditor told = editor with
        {
            Expected = now,
            Meanwhile = store.Revision(pattern.Id, now),
            Notice =
                $"Revision {now} was saved from another window or device while you were working on revision {editor.Expected}. Nothing was overwritten and "
                + $"nothing you typed is lost: yours stands in the editor, the other one beside it. Save again to make yours revision {now + 1}.",
        };
        return new PatternResult(null, Lay(told), StatusCodes.Status409Conflict);
    }

    private PatternEditor Edit(PatternEditor editor, AnswerPost post)
    {
        (Typed typed, string? notice) = RecipeEdits.Apply(post);
        // An unfinished recipe is no error until it is saved, except to someone who asks to see it drawn or turned into a form.
        ImmutableArray<AnswerProblem> problems = post.Action == "draw" || notice is not null ? RecipeEdits.ProblemsOf(typed.Text) : [];
        return Lay(editor with { Typed = typed, Notice = notice, Problems = problems });
    }

    private PatternEditor Lay(PatternEditor editor) => editor with
    {
        Form = editor.Typed.Draft is { } draft ? new RecipeFormBuilder(draft, editor.Problems, new Bench.FreeRules()).Build() : null,
        Picture = pictures.Draw(editor.Typed.Text),
    };
}
