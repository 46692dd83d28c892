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

    /// <summary>
    /// The text by field; null when its layout is broken, a field could not be shown or there are remarks, so that nothing is dropped on the
    /// way. The order of keys carries no meaning and may change.
    /// </summary>
    public static RecipeDraft? Split(string text) => HasRemarks(text) ? null : Fields(text);

    /// <summary>As <see cref="Split"/> for a recipe an author wrote, whose remarks are not the student's to keep.</summary>
    public static RecipeDraft? Given(string text) => Fields(text);

    public static bool HasRemarks(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split('\n').Any(line => line.TrimStart().StartsWith('#'));
    }

    private static RecipeDraft? Fields(string text) =>
        RecipeDraft.Parse(text) is { Success: true, Value: { } draft } && Same(RecipeDraft.FromFields(draft.Values), draft) ? draft : null;

    private static bool Same(RecipeDraft a, RecipeDraft b) =>
        a.Values.OrderBy(v => v.Key, StringComparer.Ordinal).SequenceEqual(b.Values.OrderBy(v => v.Key, StringComparer.Ordinal));
}
