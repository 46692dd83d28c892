using System.Globalization;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>An answer form as posted: what was typed and which button was pressed.</summary>
/// <param name="Action">"submit", "draw", "as text", "as form", "add", "remove", "up" or "down".</param>
/// <param name="Index">The part meant by remove, up and down; -1 for none.</param>
/// <param name="AddKind">The kind of part to add.</param>
/// <param name="FromLesson">True when the form stood in its lesson, to which the answer returns.</param>
public sealed record AnswerPost(Typed Typed, string Action, int Index, string AddKind, bool FromLesson)
{
    /// <summary>Names the form it came in; null for one from before forms had names.</summary>
    public string? Form { get; init; }

    public const string FieldPrefix = "r:";
    public const string NotePrefix = "n:";
    public const string FormField = "form-id";

    public static AnswerPost Read(IFormCollection form)
    {
        ArgumentNullException.ThrowIfNull(form);
        string[] action = form["do"].ToString().Split(':', 2);
        int index = action.Length == 2 && int.TryParse(action[1], NumberStyles.None, CultureInfo.InvariantCulture, out int typed) ? typed : -1;
        return new AnswerPost(ReadTyped(form), action[0], index, form["add-kind"].ToString(), form["from"] == "lesson")
        {
            Form = form[FormField] is [{ Length: > 0 and <= 64 } own] ? own : null,
        };
    }

    /// <summary>For a form that is about to be shown.</summary>
    public static string NewFormNumber() => Guid.NewGuid().ToString("N");

    public bool IsSubmit => Action is "submit" or "";

    private static Typed ReadTyped(IFormCollection form) => form["mode"].ToString() switch
    {
        "form" => Typed.AsForm(RecipeDraft.FromFields(form
            .Where(f => f.Key.StartsWith(FieldPrefix, StringComparison.Ordinal))
            .Select(f => KeyValuePair.Create(f.Key[FieldPrefix.Length..], f.Value.ToString())))),
        "text" => Typed.AsText(RecipePaste.Read(form["text"])),
        "record" => Typed.Plain(NamedLines.Join(form
            .Where(f => f.Key.StartsWith(NotePrefix, StringComparison.Ordinal))
            .Select(f => (f.Key[NotePrefix.Length..], f.Value.ToString())))),
        // An order of flies comes as several values: one to a line, an empty line for a place left empty, so that the others keep theirs.
        _ => Typed.Plain(string.Join('\n', form["answer"].Select(v => Lines(v ?? "")))),
    };

    // Browsers send CR LF for the one line end that was typed.
    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal);
}
