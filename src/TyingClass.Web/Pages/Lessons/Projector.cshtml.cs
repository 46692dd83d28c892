using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Lessons.Courses;

namespace TyingClass.Web.Pages.Lessons;

/// <summary>The drawings of a lesson, one at a time, for a wall.</summary>
public sealed class ProjectorModel(ICourseSource course) : PageModel
{
    public Lesson Lesson { get; private set; } = null!;

    public ImmutableArray<LessonBlock> Drawings { get; private set; }

    /// <summary>From 1.</summary>
    public int Step { get; private set; }

    public LessonBlock? Shown => Drawings.IsEmpty ? null : Drawings[Step - 1];

    public string? Before => Step > 1 ? At(Step - 1) : null;

    public string? After => Step < Drawings.Length ? At(Step + 1) : null;

    /// <param name="step">Any number: the nearest drawing there is.</param>
    public IActionResult OnGet(string slug, int step = 1)
    {
        if (!course.Current.TryFindLesson(slug, out Lesson lesson)) return NotFound();
        Lesson = lesson;
        Drawings = [.. lesson.Blocks.Where(b => b is FlyBlock or FigureBlock)];
        Step = Math.Clamp(step, 1, Math.Max(Drawings.Length, 1));
        return Page();
    }

    private string At(int step) => $"/lessons/{Uri.EscapeDataString(Lesson.Slug)}/projector?step={step}";
}
