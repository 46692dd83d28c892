using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Telling;

namespace TyingClass.Web.Security;

/// <param name="Label">The field's name as words: "Demonstrations", "New name".</param>
/// <param name="IsProse">Asks for sentences, however few words were typed so far.</param>
public sealed record TypedField(string Label, string Text, bool IsProse = false)
{
    /// <summary>Worth a field of its own to copy from, not a line in a list.</summary>
    public bool IsLong => IsProse || Text.Contains('\n', StringComparison.Ordinal) || Text.Count(char.IsWhiteSpace) > 2;

    /// <summary>Up to a limit: a whole file pasted by mistake does not fill the screen.</summary>
    public int Rows => Math.Clamp(Text.Split('\n').Sum(line => 1 + (line.Length / 80)), 2, 16);
}

/// <summary>What somebody typed into a form that is not carried out, to be handed back on a page that has no such form.</summary>
public static class TypedFields
{
    // Buttons, and what a form keeps for itself.
    private static readonly string[] OwnFields = ["do", "handler", "id", "step", "ticket", "next", "show", "shown", "move", "with-code", "form-id"];

    // What opens an account stays off every page it was not typed on.
    private static readonly string[] Secrets = ["pass", "current", "chosen", "code"];

    // By the first word of a field's name: what its page calls it.
    private static readonly FrozenDictionary<string, string> Prose = new Dictionary<string, string>
    {
        ["reason"] = "Your words",
        ["words"] = "Your words",
        ["text"] = "Text",
        ["comment"] = "Comment",
        ["mine"] = "Your version of the recipe",
        ["fix"] = "Comment, corrected",
        ["despite"] = "Why it should stand in the book all the same",
        ["note"] = "Note",
        ["question"] = "Question",
        ["answer"] = "Answer",
        ["plan"] = "Plan",
        ["demonstrations"] = "Demonstrations",
        ["phrases"] = "Phrases",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly object Key = new();

    /// <summary>Keeps for the page about the problem what a request brings that is turned away: that page gets nothing of the form itself.</summary>
    /// <returns>False when nothing was typed, the request brings no form, or another site made this browser send it.</returns>
    public static async Task<bool> KeepAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        ImmutableArray<TypedField> typed = await OfAsync(context.Request);
        context.Items[Key] = typed;
        return !typed.IsEmpty;
    }

    /// <summary>Empty when nothing was.</summary>
    public static ImmutableArray<TypedField> Kept(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Items[Key] is ImmutableArray<TypedField> kept ? kept : [];
    }

    private static async Task<ImmutableArray<TypedField>> OfAsync(HttpRequest request)
    {
        if (!HttpMethods.IsPost(request.Method) || !request.HasFormContentType || !CameFromHere(request)) return [];
        try
        {
            IFormCollection form = await request.ReadFormAsync(request.HttpContext.RequestAborted);
            return [.. form.Where(f => IsTyped(f.Key))
                .SelectMany(f => f.Value.Select(v =>
                    new TypedField(Label(f.Key), (v ?? "").ReplaceLineEndings("\n"), Prose.ContainsKey(FirstWord(f.Key)))))
                .Where(f => f.Text.Any(char.IsLetterOrDigit) && f.Text is not ("true" or "false") && !IsId(f.Text))];
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            // Too large, torn or broken off: there is nothing that could be handed back.
            return [];
        }
    }

    private static bool IsTyped(string name) =>
        !name.StartsWith('_') && !name.StartsWith("version", StringComparison.Ordinal) && !name.StartsWith("expected", StringComparison.Ordinal)
        && !OwnFields.Contains(name)
        && !Secrets.Any(s => name.Contains(s, StringComparison.OrdinalIgnoreCase));

    // A box of several on a page carries the id of what it is about: that says nothing to whoever typed into it.
    private static string Label(string name) => Prose.GetValueOrDefault(FirstWord(name)) ?? Grammar.Capital(
        string.Join(' ', name.Split('-', '_').Where(w => w.Length > 0 && !(w.Length > 15 && w.Any(char.IsDigit)))));

    // What a form says of itself: which question, which review.
    private static bool IsId(string text) => text.Length >= 12 && text.All(char.IsAsciiHexDigit);

    private static string FirstWord(string name) => name.Split('-', '_')[0];

    // Browsers name the site a form stands on with every post.
    private static bool CameFromHere(HttpRequest request) =>
        request.Headers.Origin is not [{ Length: > 0 } origin] || origin == $"{request.Scheme}://{request.Host}";
}
