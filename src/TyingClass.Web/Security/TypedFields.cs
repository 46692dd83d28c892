using System.Collections.Immutable;
using TyingClass.Telling;

namespace TyingClass.Web.Security;

/// <param name="Label">The field's name as words: "Demonstrations", "New name".</param>
public sealed record TypedField(string Label, string Text)
{
    /// <summary>Worth a field of its own to copy from, not a line in a list.</summary>
    public bool IsLong => Text.Contains('\n', StringComparison.Ordinal) || Text.Length > 60;

    /// <summary>Up to a limit: a whole file pasted by mistake does not fill the screen.</summary>
    public int Rows => Math.Clamp(Text.Split('\n').Sum(line => 1 + (line.Length / 80)), 2, 16);
}

/// <summary>What somebody typed into a form that is not carried out, to be handed back on a page that has no such form.</summary>
public static class TypedFields
{
    // Buttons, and what a form keeps for itself.
    private static readonly string[] OwnFields = ["do", "handler", "id", "step", "question", "ticket", "next", "show", "shown", "move", "with-code"];

    // What opens an account stays off every page it was not typed on.
    private static readonly string[] Secrets = ["pass", "current", "chosen", "code"];

    /// <summary>As <see cref="Of"/>, before anyone has read the form.</summary>
    public static async Task<ImmutableArray<TypedField>> OfAsync(HttpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        try
        {
            if (HttpMethods.IsPost(request.Method) && request.HasFormContentType) await request.ReadFormAsync(request.HttpContext.RequestAborted);
        }
        catch (Exception e) when (IsUnreadable(e))
        {
            return [];
        }

        return Of(request);
    }

    /// <summary>Empty for a request that brings no form, and for one that another site made this browser send.</summary>
    public static ImmutableArray<TypedField> Of(HttpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (!HttpMethods.IsPost(request.Method) || !request.HasFormContentType || !CameFromHere(request)) return [];
        try
        {
            return [.. request.Form.Where(f => IsTyped(f.Key))
                .SelectMany(f => f.Value.Select(v => new TypedField(Label(f.Key), (v ?? "").ReplaceLineEndings("\n"))))
                .Where(f => f.Text.Any(char.IsLetterOrDigit) && f.Text is not ("true" or "false"))];
        }
        catch (Exception e) when (IsUnreadable(e))
        {
            return [];
        }
    }

    // Too large or broken off: there is nothing that could be handed back.
    private static bool IsUnreadable(Exception e) => e is InvalidDataException or IOException or BadHttpRequestException;

    private static bool IsTyped(string name) =>
        !name.StartsWith('_') && !name.StartsWith("version", StringComparison.Ordinal) && !OwnFields.Contains(name)
        && !Secrets.Any(s => name.Contains(s, StringComparison.OrdinalIgnoreCase));

    private static string Label(string name) => Grammar.Capital(name.Replace('-', ' ').Replace('_', ' '));

    // Browsers name the site a form stands on with every post.
    private static bool CameFromHere(HttpRequest request) =>
        request.Headers.Origin is not [{ Length: > 0 } origin] || origin == $"{request.Scheme}://{request.Host}";
}
