using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

public enum EditorMode
{
    /// <summary>A recipe field by field.</summary>
    Form,

    /// <summary>A recipe as text.</summary>
    Text,

    /// <summary>Anything else: a choice, a number, an order, prose.</summary>
    Plain,
}

/// <summary>What stands in an answer form, right or wrong.</summary>
/// <param name="Text">The whole answer as the grader reads it.</param>
/// <param name="Draft">In form mode: the same, by field.</param>
public sealed record Typed(EditorMode Mode, string Text, RecipeDraft? Draft)
{
    public static Typed Plain(string text) => new(EditorMode.Plain, text, null);

    public static Typed AsText(string text) => new(EditorMode.Text, text, null);

    public static Typed AsForm(RecipeDraft draft) => new(EditorMode.Form, draft.ToText(), draft);

    /// <summary>As a form where the text can be shown as one without losing anything, else as text.</summary>
    public static Typed FormIfPossible(string text) => Split(text) is { } draft ? new Typed(EditorMode.Form, text, draft) : AsText(text);

    /// <summary>The text by field; null when its layout is broken or a field could not be shown, so that nothing is dropped on the way.</summary>
    public static RecipeDraft? Split(string text) =>
        RecipeDraft.Parse(text) is { Success: true, Value: { } draft } && RecipeDraft.FromFields(draft.Values).Equals(draft) ? draft : null;
}
