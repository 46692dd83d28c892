using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Editing;
using TyingClass.Web.Pictures;

namespace TyingClass.Web.Pages.Lessons;

public sealed class LessonModel(ICourseSource course, ExerciseDesk desk, ClassCalendar calendar, ClassAccess access, LessonReaders readers) : PageModel
{
    private Course _course = Course.Empty;

    public Lesson Lesson { get; private set; } = null!;

    public Lesson? Before { get; private set; }

    public Lesson? After { get; private set; }

    /// <summary>What is wrong with its file now, for whoever runs the class; the lesson shown is the last good one.</summary>
    public ImmutableArray<AuthorError> Problems =>
        access.Right >= ClassRight.Everything ? [.. course.Current.Problems.Where(p => p.Lesson == Lesson.File)] : [];

    /// <summary>When it opens, for a student of a class that has not come so far.</summary>
    public string? Opens => calendar.OpensLater(Lesson) is { } at ? calendar.Say(at) : null;

    public IActionResult OnGet(string slug)
    {
        Course now = course.Current;
        if (!now.TryFindLesson(slug, out Lesson lesson)) return NotFound();
        (_course, Lesson) = (now, lesson);
        int index = now.Lessons.IndexOf(lesson);
        Before = now.Lessons.ElementAtOrDefault(index - 1);
        After = now.Lessons.ElementAtOrDefault(index + 1);
        return Page();
    }

    /// <summary>A block as it stands on the page: out of the pieces that many readers share, unless this one has worked on it.</summary>
    public async ValueTask<IHtmlContent> PieceAsync(int block, Func<Task<IHtmlContent>> make) => await readers.PieceAsync(_course, Lesson, block, make);

    public ExerciseView? Show(Exercise exercise) => desk.Open(exercise.Id, inLesson: true);
}
