using System.Net;

namespace TyingClass.Web.Tests.Access;

/// <summary>Who may open a page at all.</summary>
internal enum May
{
    Everyone,

    /// <summary>Anyone signed in.</summary>
    Student,

    /// <summary>Mentors and instructors.</summary>
    Mentor,
    Instructor,
}

/// <param name="Route">As the page declares it.</param>
/// <param name="Sample">An address of it that exists, about Wren of the first class where it is about anyone: {wren}, {first} stand for ids.</param>
/// <param name="OfOneClass">What the sample shows belongs to the first class: people of the second class with the right role get "no such page".</param>
internal sealed record RouteRow(string Route, May May, string? Sample = null, bool OfOneClass = false, HttpStatusCode Says = HttpStatusCode.OK)
{
    public string Address => Sample ?? Route;

    public bool IsOpenTo(May role) => role >= May;
}

/// <summary>Every address of the program and who may open it. A page without a row here fails <see cref="RouteTableTests"/>.</summary>
internal static class RouteTable
{
    public static RouteRow[] Rows { get; } =
    [
        // Reading and answering: everyone, with or without an account.
        new("/", May.Everyone),
        new("/css/drawing.css", May.Everyone),
        new("/lessons/{slug}", May.Everyone, "/lessons/first-evening"),
        new("/exercises/{id}", May.Everyone, "/exercises/first-03"),
        new("/glossary", May.Everyone),
        new("/handouts/bench-test", May.Everyone),
        new("/model", May.Everyone),
        new("/safety", May.Everyone),
        new("/preferences", May.Everyone),
        new("/problem/{status:int}", May.Everyone, "/problem/404", Says: HttpStatusCode.NotFound),

        // The door.
        new("/sign-in", May.Everyone),
        new("/sign-out", May.Everyone),
        new("/join", May.Everyone),
        new("/welcome", May.Everyone),

        // One's own.
        new("/account", May.Student),
        new("/comments", May.Student),

        // Reading others' work.
        new("/class/waiting", May.Mentor),
        new("/class/students/{personId}", May.Mentor, "/class/students/{wren}", OfOneClass: true),
        new("/class/students/{personId}/{exerciseId}", May.Mentor, "/class/students/{wren}/second-03", OfOneClass: true),

        // Running a class.
        new("/class", May.Instructor),
        new("/class/stuck", May.Instructor),
        new("/class/exercises/{id}", May.Instructor, "/class/exercises/first-03"),
        new("/class/people", May.Instructor),
        new("/class/people/{personId}", May.Instructor, "/class/people/{wren}", OfOneClass: true),
        new("/class/people/{personId}/remove", May.Instructor, "/class/people/{wren}/remove", OfOneClass: true),
        new("/class/setup", May.Instructor),
    ];
}
