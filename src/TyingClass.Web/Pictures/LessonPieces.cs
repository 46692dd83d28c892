using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Courses;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Pictures;

/// <summary>
/// Blocks of lessons as readers get them who have not worked on them: made once for each version of the course, kind of reader and unit system, and kept a
/// minute. What belongs to one answer alone, the form's token and its number, is left open in what is kept and filled in each time.
/// </summary>
public sealed class LessonPieces(IAntiforgery antiforgery, TimeProvider time)
{
    private static readonly TimeSpan Kept = TimeSpan.FromMinutes(1);

    private const string TokenField = "__RequestVerificationToken";

    // Goes with its version of the course.
    private readonly ConditionalWeakTable<Course, ConcurrentDictionary<string, Piece>> _pieces = [];

    /// <summary>The piece, made where none is kept.</summary>
    /// <param name="key">The block, the unit system and the kind of reader: whoever has the same gets the same words.</param>
    /// <param name="make">Lays it out for this request, with this request's token.</param>
    public async ValueTask<IHtmlContent> Of(Course course, string key, HttpContext http, Func<Task<IHtmlContent>> make)
    {
        ArgumentNullException.ThrowIfNull(make);
        ConcurrentDictionary<string, Piece> pieces = _pieces.GetOrCreateValue(course);
        if (!pieces.TryGetValue(key, out Piece? piece) || time.GetUtcNow() - piece.MadeAt > Kept)
        {
            using StringWriter text = new();
            (await make()).WriteTo(text, HtmlEncoder.Default);
            string html = text.ToString();
            piece = Piece.Cut(html, html.Contains(TokenField, StringComparison.Ordinal) ? Token(http) : "", time.GetUtcNow());
            pieces[key] = piece;
        }

        return piece.With(() => Token(http));
    }

    // The same all through one request.
    private string Token(HttpContext http) => antiforgery.GetAndStoreTokens(http).RequestToken ?? throw new InvalidOperationException("No form token.");

    /// <summary>Cut where a form's token or number stands.</summary>
    private sealed record Piece(IReadOnlyList<string> Parts, IReadOnlyList<bool> TokenAfter, DateTimeOffset MadeAt)
    {
        private const string NumberField = $"name=\"{AnswerPost.FormField}\" value=\"";
        private const int NumberLength = 32;

        public static Piece Cut(string html, string token, DateTimeOffset at)
        {
            List<string> parts = [];
            List<bool> tokenAfter = [];
            int from = 0;
            while (true)
            {
                int number = html.IndexOf(NumberField, from, StringComparison.Ordinal);
                int sealedAt = token.Length == 0 ? -1 : html.IndexOf(token, from, StringComparison.Ordinal);
                if (number < 0 && sealedAt < 0) break;
                bool isToken = sealedAt >= 0 && (number < 0 || sealedAt < number);
                int to = isToken ? sealedAt : number + NumberField.Length;
                parts.Add(html[from..to]);
                tokenAfter.Add(isToken);
                from = to + (isToken ? token.Length : NumberLength);
            }

            parts.Add(html[from..]);
            return new Piece(parts, tokenAfter, at);
        }

        public IHtmlContent With(Func<string> token)
        {
            if (Parts.Count == 1) return new HtmlString(Parts[0]);
            HtmlContentBuilder whole = new(2 * Parts.Count);
            for (int i = 0; i < Parts.Count; i++)
            {
                whole.AppendHtml(Parts[i]);
                if (i < TokenAfter.Count) whole.AppendHtml(TokenAfter[i] ? token() : AnswerPost.NewFormNumber());
            }

            return whole;
        }
    }
}
