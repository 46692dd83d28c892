using System.Net;

namespace TyingClass.Web.Tests.Access;

/// <summary>Who may open a page at all.</summary>
internal enum May
{
    Everyone,

    /// <summary>Anyone signed in.</summary>
    Student,

    /// <summary>Whoever runs an evening: its deputy, a deputy of everything, instructors.</summary>
    Evening,

    /// <summary>Mentors, deputies of everything, instructors.</summary>
    Mentor,

    /// <summary>Deputies of everything, and instructors.</summary>
    Deputy,
    Instructor,
}

/// <param name="Route">As the page declares it.</param>
/// <param name="Sample">An address of it that exists, about Wren of the first class where it is about anyone: {wren}, {pattern}, {review}, {log} stand for ids;
/// {guest} is someone without an account.</param>
/// <param name="OpensFor">Names, where the role alone does not decide: everyone else of that role gets what Else says.</param>
/// <param name="Else">"unknown", that is "no such page", or "refused", for those of the first class; of another class it is always unknown.</param>
/// <param name="Says">What the sample answers to those who may open it.</param>
/// <param name="OfOneClass">What the sample shows belongs to the first class: people of the second class with the right role get "no such page".</param>
internal sealed record RouteRow(string Route, May May, string? Sample = null, bool OfOneClass = false, HttpStatusCode Says = HttpStatusCode.OK,
    string? OpensFor = null, string Else = "unknown")
{
    public string Address => Sample ?? Route;

    /// <param name="role">As whom: <see cref="May.Evening"/> is a student who is deputy of one evening, <see cref="May.Deputy"/> one who is deputy of
    /// everything.</param>
    public bool IsOpenTo(May role) => (May, role) switch
    {
        (May.Evening, May.Mentor) => false,
        (May.Mentor, May.Evening) => false,
        _ => role >= May,
    };

    public string Expected(string name, May role, bool ofFirstClass)
    {
        if (!IsOpenTo(role)) return role == May.Everyone ? "leads to the door" : "refused";
        return OpensFor is null ? (OfOneClass && !ofFirstClass ? "unknown" : "opens") : OpensFor.Split(' ').Contains(name) ? "opens"
            : ofFirstClass ? Else : "unknown";
    }
}

/// <summary>Every address of the program and who may open it. A page without a row here fails <see cref="RouteTableTests"/>.</summary>
internal static class RouteTable
{
    public static RouteRow[] Rows { get; } =
    [
        // Reading and answering: everyone, with or without an account.
        new("/", May.Everyone),
        new("/css/drawing.css", May.Everyone),
        new("/health", May.Everyone),
        new("/lessons/{slug}", May.Everyone, "/lessons/first-evening"),
        new("/exercises/{id}", May.Everyone, "/exercises/first-03"),
        new("/glossary", May.Everyone),
        new("/lessons/{slug}/projector", May.Everyone, "/lessons/first-evening/projector"),
        new("/practice", May.Everyone),
        new("/practice/{concept}", May.Everyone, "/practice/keel-side"),
        new("/bench", May.Everyone),
        new("/bench/index", May.Everyone),
        // Nothing to print without a recipe.
        new("/bench/card", May.Everyone, Says: HttpStatusCode.NotFound),
        new("/tonight", May.Everyone),
        new("/handouts/bench-test", May.Everyone),
        new("/model", May.Everyone),
        new("/safety", May.Everyone),
        new("/first-wraps", May.Everyone),
        new("/preferences", May.Everyone),
        new("/reached", May.Everyone),
        new("/problem/{status:int}", May.Everyone, "/problem/404", Says: HttpStatusCode.NotFound),

        // The door.
        new("/sign-in", May.Everyone),
        new("/sign-out", May.Everyone),
        new("/join", May.Everyone),
        new("/welcome", May.Everyone),

        // One's own.
        new("/account", May.Student),
        new("/comments", May.Student),
        // A comment is its writer's to correct; here nobody wrote one.
        new("/comments/{id}/correct", May.Mentor, "/comments/nobodys/correct", OpensFor: ""),

        new("/patterns", May.Student),
        new("/patterns/new", May.Everyone),
        new("/patterns/{id}", May.Student, "/patterns/{pattern}", OpensFor: "Wren"),
        new("/patterns/{id}/card", May.Student, "/patterns/{pattern}/card", OpensFor: "Wren Otter Dunlin Dipper"),
        // Without a review that proposes something there is no such page, not even for the owner.
        new("/patterns/{id}/proposal", May.Student, "/patterns/{pattern}/proposal?review={review}", OpensFor: ""),
        new("/patterns/{id}/compare", May.Student, "/patterns/{pattern}/compare?from=1&to=1", OpensFor: "Wren"),
        new("/bench-log", May.Student),
        new("/bench-log/new", May.Student),
        new("/bench-log/{id}", May.Student, "/bench-log/{log}", OpensFor: "Wren Otter Dunlin Dipper"),
        new("/bench-log/{id}/correct", May.Student, "/bench-log/{log}/correct", OpensFor: "Wren"),
        new("/bench-log/{id}/photo", May.Student, "/bench-log/{log}/photo", OpensFor: "Wren Otter Dunlin Dipper"),

        // Of one's class.
        new("/pattern-book", May.Student),
        new("/pattern-book/cards", May.Student),
        new("/pattern-book/booklet", May.Student),
        new("/pattern-book/labels", May.Student),

        // Reading others' work.
        new("/reviews", May.Mentor),
        new("/reviews/{id}", May.Mentor, "/reviews/{review}", OpensFor: "Otter Dunlin Dipper"),
        new("/bench-log/class", May.Mentor),
        new("/class/waiting", May.Mentor),
        new("/class/students", May.Mentor),
        new("/class/read", May.Mentor),
        new("/phrases", May.Mentor),
        new("/class/students/{personId}", May.Mentor, "/class/students/{wren}", OfOneClass: true),
        new("/class/students/{personId}/{exerciseId}", May.Mentor, "/class/students/{wren}/second-03", OfOneClass: true),

        // Of a guest, where there are several classes: nobody's.
        new("/class/students/{personId}", May.Mentor, "/class/students/{guest}", OpensFor: ""),
        new("/class/students/{personId}/{exerciseId}", May.Mentor, "/class/students/{guest}/first-01", OpensFor: ""),

        // Running a class.
        new("/class", May.Deputy),
        new("/class/register", May.Deputy),
        // Nobody shares a wrong answer in the sample classes: it leads back to the brief.
        new("/class/show/{exerciseId}", May.Deputy, "/class/show/first-03"),
        new("/class/stuck", May.Deputy),
        new("/class/exercises/{id}", May.Deputy, "/class/exercises/first-03"),
        new("/class/people", May.Instructor),
        new("/class/people/names", May.Instructor),
        new("/class/people/{personId}", May.Instructor, "/class/people/{wren}", OfOneClass: true),
        new("/class/people/{personId}/remove", May.Instructor, "/class/people/{wren}/remove", OfOneClass: true),
        new("/class/setup", May.Instructor),
        new("/class/room", May.Instructor),
        new("/class/start", May.Instructor),
        // Without a class to copy there is no such page.
        new("/class/copy", May.Instructor, Says: HttpStatusCode.NotFound),
        new("/class/dates", May.Deputy),
        new("/class/evenings", May.Evening),
        new("/class/evenings/{number:int:range(1,60)}", May.Evening, "/class/evenings/1"),
        new("/class/evenings/{number:int:range(1,60)}/handout", May.Evening, "/class/evenings/1/handout"),
        new("/class/evenings/{number:int:range(1,60)}/wall/{step:int:min(1)}", May.Evening, "/class/evenings/1/wall/1"),
        // An evening Siskin was not asked to run; the other class has no such evening at all.
        new("/class/evenings/{number:int:range(1,60)}", May.Evening, "/class/evenings/2", OpensFor: "Dunlin Dipper", Else: "refused"),
        new("/class/evenings/{number:int:range(1,60)}/handout", May.Evening, "/class/evenings/2/handout", OpensFor: "Dunlin Dipper",
            Else: "refused"),
        new("/class/evenings/{number:int:range(1,60)}/wall/{step:int:min(1)}", May.Evening, "/class/evenings/2/wall/1", OpensFor: "Dunlin Dipper",
            Else: "refused"),
        new("/class/tonight", May.Evening),
        new("/class/tonight/wall", May.Evening),
        new("/class/files", May.Instructor),
        // Slips are shown once, after an import.
        new("/class/files/slips", May.Instructor, Says: HttpStatusCode.Gone),
        new("/class/backup", May.Instructor),
    ];
}
