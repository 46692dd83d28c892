using TyingClass.Storage.Classes;
using TyingClass.Storage.People;

namespace TyingClass.Web.Identity;

/// <summary>Who else will see what somebody is about to write or send in, said where they decide it. What is true is settled by <c>ClassAccess</c>.</summary>
public sealed class WhoSees(Visitor visitor, ClassRoomStore classes)
{
    private const string NobodyElse = "Nobody but you sees this.";

    private Role? Role => visitor.PersonIfReadable?.Role;

    /// <summary>An answer to an exercise.</summary>
    public string Answers => Seen("this answer") ?? Guest();

    /// <summary>The answers to the exercises of a lesson, said once at its head.</summary>
    public string AnswersHere => Seen("your answers") ?? Guest("what you answer here");

    /// <summary>An entry of the bench log.</summary>
    public string Log => (Seen("this entry and its photo") ?? Guest()) + " A fly of the pattern book is compared with what the whole class logged.";

    /// <summary>A photo of a tied fly.</summary>
    public string Photo => Seen("the photo") ?? Guest();

    /// <summary>A pattern that is being written.</summary>
    public string Pattern => Role == Storage.People.Role.Instructor ? NobodyElse
        : "Nobody but you sees a pattern until you ask for a review of it; then your mentors and your instructor see every revision.";

    /// <summary>An answer to a question put to the room.</summary>
    public string Vote => "The wall shows how many chose each answer, never who. Your instructor can see who chose what.";

    /// <summary>An answer in practice.</summary>
    public string Practice => visitor.HasAccount
        ? "Practice is your own: no page shows it to anyone else. It is kept with the class, and stands in the file an instructor can take of it."
        : Guest();

    /// <summary>The name one is known by.</summary>
    public string Name => "Your instructor and mentors see this name beside your work. The class sees it in the pattern book, beside a pattern of yours "
        + "that was signed off. It never stands on the wall.";

    private string Guest(string what = "this") => classes.All().Length switch
    {
        0 => $"Nobody reads {what}: there is no class on this server. It is kept for this browser.",
        1 => $"As you are a guest, nobody reads {what}. It is kept for this browser, without a name; the instructor of this server could look it up.",
        _ => $"As you are a guest, nobody reads {what}. It is kept for this browser.",
    };

    private string? Seen(string what) => Role switch
    {
        Storage.People.Role.Student => $"Your mentors and your instructor see {what}; other students do not.",
        Storage.People.Role.Mentor => $"Your instructor sees {what}; students and other mentors do not.",
        Storage.People.Role.Instructor => NobodyElse,
        _ => null,
    };
}
