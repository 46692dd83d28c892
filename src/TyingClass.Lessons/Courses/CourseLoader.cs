using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Courses;

/// <summary>Puts a course together from the files of a folder.</summary>
internal static class CourseLoader
{
    private const string Unreadable = "This file cannot be read, or is larger than 1 MB.";

    /// <param name="last">The course shown until now: a lesson that has become unreadable stays as it was in it.</param>
    public static Course Load(LessonFiles files, Course last)
    {
        List<Lesson> lessons = [];
        List<AuthorError> problems = [];
        Dictionary<string, string> idOwners = new(StringComparer.Ordinal);
        // Reading is most of a server's start; each lesson is read by itself.
        (string Name, LessonResult Result)[] read = [.. files.LessonNames().ToArray().AsParallel().AsOrdered().Select(name => (name, Read(files, name)))];
        foreach ((string name, LessonResult result) in read)
        {
            Lesson? lesson = result.Lesson;
            problems.AddRange(result.Errors.Select(e => Placed(e, name, files)));
            if (lesson is not null && Clashes(lesson, lessons, idOwners) is { Length: > 0 } clashes)
            {
                problems.AddRange(clashes.Select(e => Placed(e, name, files)));
                lesson = null;
            }

            lesson ??= last.Lessons.FirstOrDefault(l => l.File == name && Clashes(l, lessons, idOwners).Length == 0);
            if (lesson is null) continue;
            lessons.Add(lesson);
            foreach (Exercise exercise in lesson.Exercises) idOwners[exercise.Id] = name;
        }

        (ImmutableArray<CourseEvening> evenings, ImmutableArray<AuthorError> wrong) = !files.TextNames().Contains(EveningsReader.FileName) ? ([], [])
            : files.Read(EveningsReader.FileName) is { } plans ? EveningsReader.Read(plans, files.ReadRecipe)
            : ([], [new AuthorError(EveningsReader.FileName, 1, 1, Unreadable)]);
        problems.AddRange(wrong.Select(e => Placed(e, EveningsReader.FileName, files)));
        GlossaryLinks links = new(Glossary.Of(lessons));
        return new Course([.. lessons.OrderBy(l => l.Number).ToArray().AsParallel().AsOrdered().Select(links.Apply)], [.. problems])
        {
            Evenings = wrong.IsEmpty ? evenings : last.Evenings,
        };
    }

    private static LessonResult Read(LessonFiles files, string name) => files.Read(name) is { } text
        ? LessonReader.Read(name, text, files.ReadRecipe)
        : new LessonResult(null, [new AuthorError(name, 1, 1, Unreadable)]);

    public static AuthorError Placed(AuthorError error, string lesson, LessonFiles files) => error with
    {
        Lesson = lesson,
        Source = LessonFiles.Lines(files.Read(error.File)).ElementAtOrDefault(error.Line - 1) is { } line && line.Trim().Length > 0
            ? line.TrimEnd() : null,
    };

    private static ImmutableArray<AuthorError> Clashes(Lesson lesson, List<Lesson> earlier, Dictionary<string, string> idOwners)
    {
        ImmutableArray<AuthorError>.Builder clashes = ImmutableArray.CreateBuilder<AuthorError>();
        if (earlier.FirstOrDefault(l => l.Slug == lesson.Slug) is { } twin)
            clashes.Add(new AuthorError(lesson.File, 1, 1, $"The name “{lesson.Slug}” is taken by {twin.File}. Give one of the two files another name."));
        HashSet<string> own = new(StringComparer.Ordinal);
        foreach (Exercise exercise in lesson.Exercises)
        {
            (int line, int column) = exercise.Place.Of("id");
            if (idOwners.TryGetValue(exercise.Id, out string? owner))
                clashes.Add(
                    new AuthorError(lesson.File, line, column,
                        $"The id “{exercise.Id}” is taken by an exercise in {owner}. Attempts hang on ids, so each must be unique in the course."));
            else if (!own.Add(exercise.Id))
                clashes.Add(
                    new AuthorError(lesson.File, line, column,
                        $"The id “{exercise.Id}” is used twice in this lesson. Attempts hang on ids, so each must be unique in the course."));
        }

        return clashes.ToImmutable();
    }
}
