using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Practice;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <param name="Errors">In the order of files and lines; none when the course is fit to teach.</param>
public sealed record CheckResult(Course Course, ImmutableArray<AuthorError> Errors)
{
    /// <summary>Size and reading level of each lesson.</summary>
    public ImmutableArray<LessonMeasure> Measures => [.. Course.Lessons.Select(LessonMeasure.Of)];

    /// <summary>How often each choice is the right one, by kind of question.</summary>
    public ImmutableArray<KeyCount> Keys => KeyBalance.Of(Course);
}

/// <summary>Everything check-lessons proves about a lessons folder.</summary>
public static class CourseChecker
{
    // A stated time may be this far off the reckoned one either way. Estimate.
    private const double TimeFactor = 1.6;

    /// <summary>All problems at once. Uses every core.</summary>
    public static CheckResult Check(string directory)
    {
        ArgumentException.ThrowIfNullOrEmpty(directory);
        LessonFiles files = new(Path.GetFullPath(directory));
        if (!Directory.Exists(files.Directory)) return new CheckResult(Course.Empty, [new AuthorError(directory, 1, 1, "There is no such folder.")]);
        Course course = CourseLoader.Load(files, Course.Empty);
        ConcurrentBag<AuthorError> errors = [.. course.Problems];
        if (course.Lessons.IsEmpty && course.Problems.IsEmpty)
            errors.Add(new AuthorError(directory, 1, 1, "There are no lessons in this folder. A lesson is a file such as 01-mass-center.md."));
        BrokenLessons broken = BrokenLessons.Of(files, course);
        FrozenSet<string> renamed = IdList.Renamed(files.Directory, course);
        Add(Recipes(files).Concat(IdList.Check(files.Directory, course, broken.MayHold)).Concat(Concepts(course, broken))
            .Concat(GlossaryChecker.Check(course)).Concat(TermOrder.Check(course)).Concat(KeyBalance.Check(course))
            .Concat(EveningChecker.Check(course, name => broken.MayHold(name) || renamed.Contains(name))));
        Action[] work =
        [
            .. course.Exercises.Select(e => (Action)(() => Add(ExerciseChecker.Check(e)))),
            .. course.Lessons.Select(l => (Action)(() => Add(FigureChecker.Check(l)))),
            .. course.Lessons.Select(l => (Action)(() => Add(AnsweredAbove.Check(l)))),
            .. course.Lessons.SelectMany(l => l.Blocks.OfType<PracticeBlock>().Select(p => (Action)(() => Add(PracticeChecker.Check(l, p.Practice))))),
        ];
        Parallel.ForEach(work, action => action());
        foreach (Lesson lesson in course.Lessons)
        {
            Add(LinkChecker.Check(course, lesson, id => broken.MayHold(id) || renamed.Contains(id), broken.HasLesson));
            if (Time(lesson) is { } error) errors.Add(error);
        }

        return new CheckResult(
            course, [
                .. errors.Distinct().OrderBy(e => e.File, StringComparer.Ordinal).ThenBy(e => e.Line).ThenBy(e => e.Column).ThenBy(e => e.Text,
                    StringComparer.Ordinal)]);

        void Add(IEnumerable<AuthorError> found)
        {
            foreach (AuthorError error in found) errors.Add(error);
        }
    }

    private static ImmutableArray<AuthorError> Recipes(LessonFiles files)
    {
        ImmutableArray<AuthorError>.Builder all = ImmutableArray.CreateBuilder<AuthorError>();
        foreach (string name in files.RecipeNames())
        {
            if (files.ReadRecipe(name) is not { } text)
            {
                all.Add(new AuthorError(name, 1, 1, "A recipe file is named in small letters, digits and hyphens, as in slate-minnow.fly.yaml."));
                continue;
            }

            AuthorErrors errors = new(name);
            new RecipeSource(text, name, 1, 0).Parse(errors);
            all.AddRange(errors.InOrder());
        }

        return all.ToImmutable();
    }

    private static IEnumerable<AuthorError> Concepts(Course course, BrokenLessons broken)
    {
        string[] taught = [.. course.Lessons.SelectMany(l => l.Concepts).Distinct()];
        foreach (Lesson lesson in course.Lessons)
        {
            IEnumerable<(Exercise Exercise, string Concept)> used = lesson.Exercises
                .Concat(lesson.Blocks.OfType<PracticeBlock>().Select(p => p.Practice.Template))
                .SelectMany(e => e.Concepts.Select(c => (e, c)));
            foreach ((Exercise exercise, string concept) in used.Where(u => !taught.Contains(u.Concept) && !broken.MayHold(u.Concept)))
            {
                (int line, int column) = exercise.Place.Of("concepts");
                yield return new AuthorError(lesson.File, line, column,
                    $"No lesson teaches “{concept}”.{Nearest.Hint(concept, taught)} Lessons list what they teach under “concepts”.");
            }
        }
    }

    private static AuthorError? Time(Lesson lesson)
    {
        double minutes = ReadingTime.Minutes(lesson);
        return lesson.Minutes > TimeFactor * minutes || lesson.Minutes * TimeFactor < minutes
            ? new AuthorError(lesson.File, 1, 1,
            $"“minutes” says {lesson.Minutes}, but {ReadingTime.Words(lesson)} words and {lesson.Exercises.Count()} exercises take "
                + $"about {Math.Round(minutes)}.")
            : null;
    }
}
