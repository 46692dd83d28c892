using System.Collections.Immutable;
using TyingClass.Telling;

namespace TyingClass.Web.Security;

/// <param name="Label">The field's name as words: "Demonstrations", "New name".</param>
public sealed record TypedField(string Label, string Text)
{
    /// <summary>Worth a field of its own to copy from, not a line in a list.</summary>
    public bool IsLong => Text.Contains('\n', StringComparison.Ordinal) || Text.Count(char.IsWhiteSpace) > 2;

    /// <summary>Up to a limit: a whole file pasted by mistake does not fill the screen.</summary>
    public int Rows => Math.Clamp(Text.Split('\n').Sum(line => 1 + (line.Length / 80)), 2, 16);
}

/// <summary>What somebody typed into a form that is not carried out, to be handed back on a page that has no such form.</summary>
public static class TypedFields
{
    // Buttons, and what a form keeps for itself.
    private static readonly string[] OwnFields = ["do", "handler", "id", "step", "question", "ticket", "next", "show", "shown", "move", "with-code", "form-id"];

    // What opens an account stays off every page it was not typed on.
    private static readonly string[] Secrets = ["pass", "current", "chosen", "code"];

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
                .SelectMany(f => f.Value.Select(v => new TypedField(Label(f.Key), (v ?? "").ReplaceLineEndings("\n"))))
                .Where(f => f.Text.Any(char.IsLetterOrDigit) && f.Text is not ("true" or "false"))];
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
    private static string Label(string name) =>
        Grammar.Capital(string.Join(' ', name.Split('-', '_').Where(w => w.Length > 0 && !(w.Length > 15 && w.Any(char.IsDigit)))));

    // Browsers name the site a form stands on with every post.
    private static bool CameFromHere(HttpRequest request) =>
        request.Headers.Origin is not [{ Length: > 0 } origin] || origin == $"{request.Scheme}://{request.Host}";
}
