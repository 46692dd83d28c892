using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Explain;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Dates;
using TyingClass.Web.Calendar;
using Xunit;

namespace TyingClass.Web.Tests.Calendar;

/// <summary>When clocks change: 2026-03-29 at 01:00 UTC forward and 2026-10-25 at 01:00 UTC back in Berlin (Directive 2000/84/EC, articles 2 and 3).</summary>
public sealed class ClassClockTests
{
    private static readonly ClassClock Berlin = new(Room("Europe/Berlin"));

    [Fact]
    public void Due_TimeTheClocksSkip_MovesOnByAsMuch()
    {
        DateTime skipped = new(2026, 3, 29, 2, 30, 0);

        Assert.Equal(ClockChange.Skipped, Berlin.ChangeAt(skipped));
        Assert.Equal(new DateTimeOffset(2026, 3, 29, 1, 30, 0, TimeSpan.Zero), Berlin.Due(skipped).ToUniversalTime());
        Assert.Equal(new DateTime(2026, 3, 29, 3, 30, 0), Berlin.Local(Berlin.Due(skipped)));
    }

    [Fact]
    public void TimeThatComesTwice_OpensTheFirstAndIsDueTheSecond()
    {
        DateTime twice = new(2026, 10, 25, 2, 30, 0);

        Assert.Equal(ClockChange.Twice, Berlin.ChangeAt(twice));
        Assert.Equal(new DateTimeOffset(2026, 10, 25, 0, 30, 0, TimeSpan.Zero), Berlin.Opening(twice).ToUniversalTime());
        Assert.Equal(new DateTimeOffset(2026, 10, 25, 1, 30, 0, TimeSpan.Zero), Berlin.Due(twice).ToUniversalTime());
    }

    [Fact]
    public void Due_OneWeekApartAcrossTheChange_KeepsTheHourOnTheWall()
    {
        DateTimeOffset before = Berlin.Due(new DateTime(2026, 3, 25, 19, 0, 0)), after = Berlin.Due(new DateTime(2026, 4, 1, 19, 0, 0));

        Assert.Equal(TimeSpan.FromHours(7 * 24 - 1), after - before);
        Assert.Equal("Wed, Apr 1, 2026, 19:00", Berlin.Say(after));
    }

    [Fact]
    public void Zone_Unknown_IsUtc() =>
        Assert.Equal(TimeSpan.Zero, new ClassClock(Room("Nowhere/Alder_Bridge")).Due(new DateTime(2026, 7, 1, 12, 0, 0)).Offset);

    [Theory]
    [InlineData("2026-01-14T19:00", true)]
    [InlineData("2026-01-14T19:00:30", true)]
    [InlineData(" 2026-01-14 19:00 ", true)]
    [InlineData("", true)]
    [InlineData("14.1.2026", false)]
    [InlineData("2026-02-30T19:00", false)]
    [InlineData("0026-01-14T19:00", false)]
    public void TryRead_WhatPeopleType_IsReadOrRefused(string text, bool reads) => Assert.Equal(reads, ClassClock.TryRead(text, out _));

    [Fact]
    public void Lateness_HandedInBeforeAtAndAfter_IsLateOnlyAfter()
    {
        DateTimeOffset due = new(2026, 1, 21, 19, 0, 0, TimeSpan.Zero);
        Window window = new(null, due);

        Assert.Equal(Lateness.None, ClassWindows.Of(Passed(due), window, due.AddDays(1)));
        Assert.Equal(Lateness.Late, ClassWindows.Of(Passed(due.AddSeconds(1)), window, due.AddDays(1)));
        Assert.Equal(Lateness.Overdue, ClassWindows.Of(null, window, due.AddSeconds(1)));
        Assert.Equal(Lateness.None, ClassWindows.Of(null, window, due));
        Assert.Equal(Lateness.None, ClassWindows.Of(Passed(due.AddDays(9)), default, due.AddDays(10)));
    }

    [Fact]
    public void Lateness_PassedInTimeAndTriedAgainLater_IsInTime()
    {
        DateTimeOffset due = new(2026, 1, 21, 19, 0, 0, TimeSpan.Zero);
        Standing standing = Passed(due.AddDays(-1)) with { Attempts = 2, LastAt = due.AddDays(2) };
        Assert.Equal(Lateness.None, ClassWindows.Of(standing, new Window(null, due), due.AddDays(3)));
    }

    [Fact]
    public void Window_ExerciseWithADueDateOfItsOwn_KeepsTheOpeningOfItsLesson()
    {
        DateTime opens = new(2026, 1, 7, 19, 0, 0), due = new(2026, 1, 14, 19, 0, 0), own = new(2026, 1, 10, 12, 0, 0);
        ClassWindows windows = new(new ClassDates("c", [new DateRow("lesson:keel", opens, due), new DateRow("exercise:keel-01", null, own)], 1), Berlin);
        Lesson lesson = new() { Slug = "keel", Number = 1, Title = "", Summary = "", Concepts = [], Minutes = 1, Blocks = [] };
        Exercise exercise = new() { Id = "keel-01", Task = new ExplainTask(), Title = "", Concepts = [], PromptHtml = "" };

        Assert.Equal(new Window(Berlin.Opening(opens), Berlin.Due(own)), windows.Of(lesson, exercise));
        Assert.Equal(new Window(Berlin.Opening(opens), Berlin.Due(due)), windows.Of(lesson, exercise with { Id = "keel-02" }));
    }

    private static Standing Passed(DateTimeOffset at) => new("p", "e") { Attempts = 1, Passed = true, LastAt = at, HandedInAt = at };

    private static Storage.Classes.ClassRoom Room(string zone) => new("c", "Alder Bridge", ["i"], "one-two-three", zone, default, 1);
}
