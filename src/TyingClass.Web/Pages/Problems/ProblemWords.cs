using TyingClass.Storage.Photos;
using TyingClass.Web.Exchange;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Problems;

/// <param name="Advice">What to do now.</param>
public sealed record ProblemWords(string Title, string Advice)
{
    /// <param name="typed">Something was typed and is handed back on the page.</param>
    /// <param name="lent">Whoever reads it is a deputy, and what they may run stands on the page.</param>
    public static ProblemWords For(int status, bool typed = false, bool lent = false) => status switch
    {
        StatusCodes.Status400BadRequest =>
            new("This form had gone stale", "Nothing was sent in. Go back with your browser’s Back button, load the page anew and send it again."),
        StatusCodes.Status401Unauthorized => new("You are signed out",
            "Your sign-in ended while you typed: it ran out, your role or passphrase changed, or you signed out in another tab. Nothing was sent in, and "
                + "nothing you typed is lost. Sign in again in another tab, come back to this one, and put it back into its form."),
        StatusCodes.Status403Forbidden => Turned(typed, lent),
        StatusCodes.Status404NotFound =>
            new("There is no such page", "The address is mistyped, or the lesson was renamed. The course lists everything there is."),
        StatusCodes.Status405MethodNotAllowed => new("That cannot be done here", "Pages are read and forms are sent. Begin from the course."),
        StatusCodes.Status415UnsupportedMediaType =>
            new("That was no form", "Only what the pages’ own forms send is understood here. Nothing was kept. Begin from the course."),
        StatusCodes.Status422UnprocessableEntity => new("That form could not be read",
            $"It was cut short on the way, had over {BodyLimit.MostFields:N0} fields, or held a character that no form may hold (a zero byte, pasted from a "
                + "file that is no text, say). Nothing was kept. Go back with your browser’s Back button: what you typed is still in its form."),
        StatusCodes.Status413PayloadTooLarge => new("That was too much to send",
            $"An answer may hold 64 KB, a photo {PhotoReader.MostBytes >> 20} MB and the file of a class {FilesDesk.MostBytes >> 20} MB; this was more and was "
                + "not read. Go back with your browser’s Back button: what you typed is still in its form. Shorten it, or choose a smaller picture, and send "
                + "it again."),
        StatusCodes.Status429TooManyRequests => new("Too many tries", "Wait a minute, then try again."),
        StatusCodes.Status503ServiceUnavailable => new("The server cannot use its disk",
            "Nothing was kept. Go back with your browser’s Back button: what you typed is still in its form. Tell whoever runs the server to look at its "
                + "console."),
        >= 500 =>
            new("Something broke on the server",
                "It is not your doing. Go back with your browser’s Back button: what you typed is still in its form. If it happens again, tell the "
                    + "instructor."),
        _ => new("That did not work", "Go back and try again, or begin from the course."),
    };

    private static ProblemWords Turned(bool typed, bool lent)
    {
        string kept = "Nothing was saved. What you typed stands below: copy it, and ask your instructor to lend you this page, or to put it in.";
        if (lent)
            return new("This part of the class is not lent to you", "It never was, or your instructor took it back meanwhile. "
                + (typed ? kept + " What you may run stands at the end of this page." : "What you may run stands below; ask if this should be among it."));
        return typed
            ? new("This page is not yours to change", $"It belongs to the instructor or mentor of a class, or your instructor took it back meanwhile. {kept}")
            : new("This page is not yours to open",
                "You are signed in, but this page belongs to the instructor or mentor of a class, or your instructor took it back. If it should be open to "
                    + "you, ask your instructor.");
    }
}
