using System.Collections.Immutable;
using Microsoft.AspNetCore.Identity;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Kinds;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.People;

namespace TyingClass.Web.Demo;

/// <summary>What was made.</summary>
/// <param name="Waiting">Attempts.</param>
/// <param name="Drops">Entries of the bench log.</param>
public sealed record DemoCounts(int Students, int Attempts, int Comments, int Waiting, int Patterns, int Drops, TimeSpan Took);

/// <summary>An invented class six weeks into its winter, so that a newcomer sees a living register. Everything in it is graded by the real grader.</summary>
public static class DemoClass
{
    private const int WeeksHeld = 6;

    /// <returns>Null when someone is there already: an invented class is never mixed with a real one.</returns>
    public static DemoCounts? FillIfEmpty(ClassStore store, Course course, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(time);
        if (!store.IsEmpty) return null;
        long began = time.GetTimestamp();
        store.MarkInvented();
        PasswordHasher<Person> hasher = new();
        Person instructor =
            store.Instructors.Claim(store.Instructors.NewCode(), DemoPeople.Instructor, hasher.HashPassword(null!, DemoPeople.Passphrase), className: null)!;
        string empty = store.Classes.OfInstructor(instructor.Id)[0].Id;
        ClassExport export = Invent(course, time.GetUtcNow());
        HandedOut[] passphrases =
            [.. export.People.AsParallel().AsOrdered().Select(_ => new HandedOut(DemoPeople.Passphrase, hasher.HashPassword(null!, DemoPeople.Passphrase)))];
        ImportOutcome outcome = store.Exchange.Import(export, instructor.Id, passphrases);
        if (outcome.Room is null) throw new InvalidOperationException("The invented class is no class: " + string.Join(" ", outcome.Problems));
        store.Classes.RemoveIfEmpty(empty);
        foreach ((Person person, HandedOut passphrase) in outcome.People.Select((p, i) => (p.Person, passphrases[i]))) store.Accounts.SetPassphrase(person.Id,
            passphrase.Hash, mustChoose: false);
        return new DemoCounts(
            export.People.Count(p => p.Role == Role.Student), export.Attempts.Count(), export.Comments.Length, export.Attempts.Count(a => a.Waits),
            export.Patterns.Length, export.BenchLog.Length, time.GetElapsedTime(began));
    }

    private static ClassExport Invent(Course course, DateTimeOffset now)
    {
        const string zone = "Europe/London";
        ImmutableArray<(string Id, DemoStudent Student)> students = [.. DemoPeople.Students.Select((s, i) => ($"demo-student-{i + 1}", s))];
        int[] numbers = [.. course.Lessons.Select(l => l.Evening).OfType<int>().Distinct().Order()];
        DateTime first = now.UtcDateTime.Date.AddDays(-7 * WeeksHeld + 1).AddHours(19);
        Dictionary<int, DateTime> starts = numbers.Select((n, i) => (n, first.AddDays(7 * i))).ToDictionary(e => e.n,
            e => DateTime.SpecifyKind(e.Item2, DateTimeKind.Unspecified));
        Dictionary<int, DateTimeOffset> held = starts.Take(WeeksHeld).ToDictionary(e => e.Key, e => new DateTimeOffset(e.Value, TimeSpan.Zero));
        PlannedAttempt[] plan = [.. DemoAttempts.Plan(course, held, students, now).OrderBy(p => p.At)];
        ImmutableArray<Attempt> attempts = [.. DemoAttempts.Grade(plan).Select(a => DemoJudgments.Read(a, now))];
        Dictionary<string, string> ids = students.ToDictionary(s => s.Student.Name, s => s.Id);
        ids[DemoPeople.Mentor] = DemoJudgments.MentorId;
        ClassExport bench = DemoBench.Invent(ids, now);
        return new ClassExport
        {
            Format = ClassExport.CurrentFormat,
            ExportedAt = now,
            Class = new ExportedClass("demo-class", DemoPeople.ClassName, zone, now.AddDays(-7 * WeeksHeld - 14)),
            People =
            [
                .. students.Select(
                    s => new ExportedPerson(s.Id, Role.Student, s.Student.Name, now.AddDays(-7 * WeeksHeld),
                        attempts.LastOrDefault(a => a.PersonId == s.Id)?.At ?? now.AddDays(-30))),
                new ExportedPerson(DemoJudgments.MentorId, Role.Mentor, DemoPeople.Mentor, now.AddDays(-7 * WeeksHeld), now.AddDays(-2)),
            ],
            Attempts = attempts,
            Comments = DemoJudgments.Comments(course, attempts, now),
            Patterns = bench.Patterns,
            PatternRevisions = bench.PatternRevisions,
            Reviews = bench.Reviews,
            ReviewComments = bench.ReviewComments,
            BenchLog = bench.BenchLog,
            Dates = [
                .. course.Lessons.Where(l => l.Evening is { } e && starts.ContainsKey(e))
                    .Select(l => new DateRow(DateTargets.Lesson(l.Slug), starts[l.Evening!.Value].AddDays(-7), starts[l.Evening!.Value].AddDays(7)))],
            Evenings = [.. starts.Select(e => new ExportedEvening(e.Key, e.Value, "", "", null, []))],
            RoomQuestions = [.. Asked(course, students, starts, now)],
        };
    }

    /// <summary>The first question of each of the first two evenings, as the room answered it.</summary>
    private static IEnumerable<ExportedQuestion> Asked(Course course, ImmutableArray<(string Id, DemoStudent Student)> students,
        Dictionary<int, DateTime> starts, DateTimeOffset now)
    {
        foreach ((int number, DateTime start) in starts.Take(2))
        {
            if (course.Lessons.Where(l => l.Evening == number).SelectMany(l => l.Exercises)
                .FirstOrDefault(e => e.Kind is IPutToRoom) is not { Kind: IPutToRoom kind } question) continue;
            if (kind.RoomAnswer(question) is not { } answer) continue;
            DateTimeOffset at = new(start.AddMinutes(15), TimeSpan.Zero);
            Random chance = new(104_729 * number);
            ImmutableArray<string> choices = kind.RoomChoices(question);
            int key = choices.IndexOf(answer.Choice);
            ImmutableArray<ExportedAnswer> answers = [
                .. students.Select(
                    s => new ExportedAnswer(s.Id, chance.NextDouble() < s.Student.Skill - 0.25 ? key : chance.Next(choices.Length),
                        at.AddMinutes(chance.NextDouble())))];
            yield return new ExportedQuestion(
                $"demo-question-{number}", question.Title, choices, at, question.Id, null, null,
                new RoomAnswer(answer.Choice, answer.Feedback.WhatItWouldDo, answer.Feedback.Why, at.AddMinutes(2)), at.AddMinutes(8), answers);
        }
    }
}
