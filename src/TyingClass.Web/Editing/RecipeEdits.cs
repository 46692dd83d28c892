using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>What the buttons of a recipe editor do to what stands in it; the one that counts is not among them.</summary>
internal static class RecipeEdits
{
    /// <returns>What stands in the editor now, and why it is not what was asked for.</returns>
    public static (Typed Typed, string? Notice) Apply(AnswerPost post) => post switch
    {
        { Action: "as text" } => (Typed.AsText(post.Typed.Text), null),
        { Action: "as form" } => AsForm(post.Typed.Text),
        { Typed.Draft: { } draft } => (Typed.AsForm(PartList.Apply(draft, post)), null),
        _ => (post.Typed, (string?)null),
    };

    public static ImmutableArray<AnswerProblem> ProblemsOf(string text) =>
        [.. RecipeParser.Parse(text).Errors.Select(e => new AnswerProblem(e.Line, e.Column, e.Path, e.Text))];

    private static (Typed, string?) AsForm(string text) => Typed.Split(text) is { } draft
        ? (new Typed(EditorMode.Form, text, draft), null)
        : (Typed.AsText(text), Typed.HasRemarks(text)
            ? "A form has no room for remarks, the lines that begin with #. Your text stands below as you typed it: take them out to see it as a form."
            : "This text cannot be shown as a form until its layout is mended. It stands below as you typed it.");
}
