using System.CommandLine;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;

namespace TyingClass.CommandLine;

/// <summary>check-lessons [DIR] [--record] [--watch]: everything an author can get wrong, all of it at once.</summary>
internal static class CheckLessonsVerb
{
    public static Command Command()
    {
        Argument<DirectoryInfo?> folder =
            new("DIR") { Description = "The lessons folder; left out, the nearest folder named lessons, here or above.", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> record = new("--record") { Description = $"When all is well, add new exercise ids to {IdList.FileName}." };
        Option<bool> watch = new("--watch") { Description = "Check again whenever a file changes, until interrupted." };
        Command command = new("check-lessons", "Check every lesson and work every exercise.") { folder, record, watch };
        command.SetAction(async (parsed, cancel) => LessonsFolder.Find(parsed.GetValue(folder), Console.Error) is not { } path
            ? ExitCodes.InputError
            : parsed.GetValue(watch)
                ? await WatchAsync(path, cancel).ConfigureAwait(false)
                : Check(path, parsed.GetValue(record), Console.Out));
        return command;
    }

    private static int Check(string path, bool record, TextWriter output)
    {
        CheckResult result = CourseChecker.Check(path);
        result = result with { Errors = [.. result.Errors, .. FigureDrawer.Check(result.Course)] };
        foreach (AuthorError error in result.Errors)
        {
            output.WriteLine(error with { File = Path.Combine(Path.GetRelativePath(Directory.GetCurrentDirectory(), path), error.File) });
        }

        LessonTable.Write(result.Measures, output);
        foreach (IGrouping<(string Question, int Of), KeyCount> kind in result.Keys.GroupBy(k => (k.Question, k.Of)))
        {
            output.WriteLine($"{kind.Key.Of} questions “{kind.Key.Question}”; right is {string.Join(", ", kind.Select(k => $"{k.Choice}: {k.Right}"))}");
        }

        int exercises = result.Course.Exercises.Count();
        output.WriteLine(result.Errors.IsEmpty
            ? $"{result.Course.Lessons.Length} lessons and {exercises} exercises: all is well."
            : $"{result.Course.Lessons.Length} lessons and {exercises} exercises: {result.Errors.Length} to mend.");
        if (result.Errors.IsEmpty && record)
        {
            foreach (string id in IdList.Record(path, result.Course))
            {
                output.WriteLine($"published: {id}");
            }
        }

        return result.Errors.IsEmpty ? ExitCodes.AllIsWell : ExitCodes.FallsShort;
    }

    private static async Task<int> WatchAsync(string path, CancellationToken cancel)
    {
        using CourseFolder course = new(path);
        using SemaphoreSlim changed = new(1, 1);
        course.Changed += (_, _) =>
        {
            if (changed.CurrentCount == 0)
            {
                changed.Release();
            }
        };
        int exit = ExitCodes.AllIsWell;
        try
        {
            while (true)
            {
                await changed.WaitAsync(cancel).ConfigureAwait(false);
                exit = Check(path, record: false, Console.Out);
                Console.Out.WriteLine();
            }
        }
        catch (OperationCanceledException)
        {
            return exit;
        }
    }
}
