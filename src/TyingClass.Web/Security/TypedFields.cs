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

/// <summary>A form that was turned away, to be put back where it was typed: the page there carries nothing out, as its token is another one.</summary>
public sealed record PutBack(string Address, ImmutableArray<KeyValuePair<string, string>> Fields);

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

    // The ticks beside a box of words.
    private const string Phrases = "-phrase";

    private static readonly object Key = new(), WholeKey = new();

    /// <summary>Keeps for the page about the problem what a request brings that is turned away: that page gets nothing of the form itself.</summary>
    /// <returns>False when nothing was typed, the request brings no form, or another site made this browser send it.</returns>
    public static async Task<bool> KeepAsync(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        ImmutableArray<TypedField> typed = await OfAsync(context.Request);
        context.Items[Key] = typed;
        if (typed.IsEmpty) return false;
        HttpRequest request = context.Request;
        context.Items[WholeKey] = new PutBack(
            request.PathBase + request.Path + request.QueryString,
            [.. request.Form.Where(f => !f.Key.StartsWith('_') && f.Key != "do" && !IsSecret(f.Key))
                .SelectMany(f => f.Value, (f, value) => KeyValuePair.Create(f.Key, value ?? ""))]);
        return true;
    }

    /// <summary>Empty when nothing was.</summary>
    public static ImmutableArray<TypedField> Kept(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Items[Key] is ImmutableArray<TypedField> kept ? kept : [];
    }

    /// <summary>All of the form but passphrases and codes; null when nothing was typed.</summary>
    public static PutBack? Whole(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Items[WholeKey] as PutBack;
    }

    private static async Task<ImmutableArray<TypedField>> OfAsync(HttpRequest request)
    {
        if (!HttpMethods.IsPost(request.Method) || !request.HasFormContentType || !CameFromHere(request)) return [];
        try
        {
            IFormCollection form = await request.ReadFormAsync(request.HttpContext.RequestAborted);
            (string Name, string Text)[] all =
                [.. form.Where(f => IsTyped(f.Key)).SelectMany(f => f.Value, (f, v) => (f.Key, (v ?? "").ReplaceLineEndings("\n")))];
            ILookup<string, int> boxes = all.Select((f, i) => (Label: Label(f.Name), i)).ToLookup(f => f.Label, f => f.i);
            return [.. all.Select((f, i) => new TypedField(Numbered(Label(f.Name), boxes, i), f.Text, IsProse(f.Name)))
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
        && !OwnFields.Contains(name) && !IsSecret(name);

    private static bool IsSecret(string name) => Secrets.Any(s => name.Contains(s, StringComparison.OrdinalIgnoreCase));

    private static bool IsProse(string name) => Prose.ContainsKey(FirstWord(name)) && !name.EndsWith(Phrases, StringComparison.Ordinal);

    // A box of several on a page carries the id of what it is about: that says nothing to whoever typed into it.
    private static string Label(string name) => name.EndsWith(Phrases, StringComparison.Ordinal) ? "Phrase ticked"
        : Prose.GetValueOrDefault(FirstWord(name))
        ?? Grammar.Capital(string.Join(' ', name.Split('-', '_').Where(w => w.Length > 0 && !(w.Length > 15 && w.Any(char.IsDigit)))));

    // Several boxes of one kind stand on a page in an order, and are told by it.
    private static string Numbered(string label, ILookup<string, int> boxes, int at) =>
        boxes[label].Count() is > 1 and var count ? $"{label}, box {boxes[label].TakeWhile(i => i < at).Count() + 1} of {count}" : label;

    // What a form says of itself: which question, which review.
    private static bool IsId(string text) => text.Length >= 12 && text.All(char.IsAsciiHexDigit);

    private static string FirstWord(string name) => name.Split('-', '_')[0];

    // Browsers name the site a form stands on with every post.
    private static bool CameFromHere(HttpRequest request) =>
        request.Headers.Origin is not [{ Length: > 0 } origin] || origin == $"{request.Scheme}://{request.Host}";
}
