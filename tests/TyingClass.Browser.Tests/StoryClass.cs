using System.Collections.Immutable;
using Microsoft.Playwright;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using Xunit;

namespace TyingClass.Browser.Tests;

/// <summary>A class of a story: an instructor, students and a mentor with one passphrase, and what they have done before it begins.</summary>
internal sealed class StoryClass
{
    private const string Passphrase = "kettle river amber stone";

    private readonly RunningApp _app;
    private readonly Chromium _browser;

    private StoryClass(RunningApp app, Chromium browser, ClassRoom room, ImmutableArray<Person> students)
    {
        (_app, _browser, Room, Students) = (app, browser, room, students);
    }

    public ClassRoom Room { get; }

    public ImmutableArray<Person> Students { get; }

    public static StoryClass Make(RunningApp app, Chromium browser, string instructor, params string[] students)
    {
        string hash = app.Hash(Passphrase);
        Person teacher = app.Store.Instructors.Claim(app.NewInstructorCode(), instructor, hash, $"Class of {instructor}")!;
        ClassRoom room = app.Store.Classes.OfInstructor(teacher.Id)[0];
        return new StoryClass(app, browser, room, [.. students.Select(s => app.Store.Accounts.Add(room.Id, Role.Student, s, hash).Person!)]);
    }

    public Person AddMentor(string name) => _app.Store.Accounts.Add(Room.Id, Role.Mentor, name, _app.Hash(Passphrase)).Person!;

    /// <summary>An answer that does not pass.</summary>
    public void Miss(Person person, Exercise exercise, string answer)
    {
        int failed = _app.Store.Attempts.StandingOf(person.Id, exercise.Id).Failed;
        Attempt kept = _app.Store.Attempts.Add(person.Id, exercise.Id, answer, Grader.Grade(exercise, answer, failed));
        Assert.False(kept.Passed);
    }

    /// <summary>A pattern with a review asked about its only revision.</summary>
    public (Pattern Pattern, Review Review) Ask(Person person, string name, string recipe, string question)
    {
        Pattern pattern = _app.Store.Patterns.Create(person.Id, name, recipe);
        return (pattern, _app.Store.Reviews.Ask(pattern.Id, person.Id, Room.Id, question)!);
    }

    public async Task<IPage> EnterAsync(string name, int width = 1280)
    {
        IPage page = await _browser.NewVisitorAsync(_app.Address, width);
        await page.GotoAsync("/sign-in?door=open");
        await page.Locator("#name").FillAsync(name);
        await page.Locator("#passphrase").FillAsync(Passphrase);
        await page.Locator("main form button.button").First.ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("/sign-in", StringComparison.Ordinal));
        return page;
    }
}
