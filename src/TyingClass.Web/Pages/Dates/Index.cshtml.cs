using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Dates;

public sealed class IndexModel(ICourseSource course, ClassDatesStore classDatesStore, EveningStore eveningStore, ClassAccess access) : PageModel, IKeepsTyped
{
    public const int MostDaysBefore = 365;

    [BindProperty(Name = "version")]
    public int Version { get; set; }

    [BindProperty(Name = "days")]
    public int DaysBefore { get; set; } = 7;

    public ClassRoom Room { get; private set; } = null!;

    public ClassClock Clock { get; private set; } = null!;

    public DatesForm Form { get; private set; } = null!;

    public string? Notice { get; private set; }

    public bool Saved { get; private set; }

    public IActionResult OnGet(bool saved = false)
    {
        if (!Open()) return NotFound();
        (Form, Saved) = (DatesForm.Of(course.Current, classDatesStore.Of(Room.Id), Clock), saved);
        return Page();
    }

    public IActionResult OnPost()
    {
        if (!Open()) return NotFound();
        TakeTyped();
        if (Form.HasErrors) return Again("Nothing was saved yet: something below cannot be read.");
        EditOutcome<ClassDates> outcome = classDatesStore.Save(Room.Id, Form.Rows(), Version);
        if (outcome.Saved) return RedirectToPage(new { saved = true });
        Form = Form.Beside(outcome.Current);
        return Again(
            "Someone else changed the dates while you had them open. Yours stand in the fields, theirs beside them where they differ; save again to keep "
                + "yours.");
    }

    /// <summary>Fills the fields, saves nothing.</summary>
    public IActionResult OnPostFill()
    {
        if (!Open()) return NotFound();
        TakeTyped();
        Form = Form.FromEvenings(course.Current, eveningStore.OfClass(Room.Id), Math.Clamp(DaysBefore, 0, MostDaysBefore), Clock);
        Notice = "Filled from the evenings. Look it over; it counts once you save.";
        ModelState.Clear();
        return Page();
    }

    public IActionResult ShowAgain()
    {
        if (!Open()) return NotFound();
        TakeTyped();
        return Again("The form had gone stale and nothing was saved. What you typed is below: save once more.");
    }

    private PageResult Again(string notice)
    {
        Notice = notice;
        // The version in the form must be the one just read, not the one posted.
        ModelState.Clear();
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private void TakeTyped() => Form = DatesForm.Posted(course.Current, Request.Form, Version, Clock);

    private bool Open()
    {
        if (access.Current is not { } room) return false;
        (Room, Clock) = (room, new ClassClock(room));
        return true;
    }
}
