using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

/// <summary>Last year's class for another winter.</summary>
[Authorize(ClassPolicies.Instructor)]
public sealed class CopyModel(ClassSetup setup, ClassAccess access, ClassRoomStore classes, EveningStore evenings, Visitor visitor) : PageModel, IKeepsTyped
{
    /// <summary>Fifty-two weeks: the same day of the week.</summary>
    private const int AYear = 364;

    private const string Form = "yyyy-MM-dd";

    [BindProperty(Name = "name")]
    public string? Name { get; set; }

    /// <summary>As typed.</summary>
    [BindProperty(Name = "first")]
    public string? First { get; set; }

    public ClassRoom From { get; private set; } = null!;

    /// <summary>Evenings of the old class that have a date.</summary>
    public ImmutableArray<EveningPlan> Moved { get; private set; } = [];

    public DateTime? FirstThen => Moved.Select(e => e.StartsLocal).Order().FirstOrDefault();

    public int Days { get; private set; }

    public IActionResult OnGet(string? from)
    {
        if (!Open(from)) return NotFound();
        (Name, Days) = ($"{From.Name}, next winter", AYear);
        if (FirstThen is { } then) First = then.AddDays(AYear).ToString(Form, CultureInfo.InvariantCulture);
        return Page();
    }

    public IActionResult OnPost([FromForm] string? from, [FromForm(Name = "do")] string? what)
    {
        if (!Open(from)) return NotFound();
        if (!TakeDays()) return Refuse("first", $"“{First}” is not a date. Write it as 2026-11-04.");
        if (what != "copy") return Page();
        if (string.IsNullOrWhiteSpace(Name)) return Refuse("name", "The new class needs a name.");
        return setup.Copy(From.Id, Name, Days) is null ? NotFound() : LocalRedirect("/class/evenings?copied=true");
    }

    public IActionResult ShowAgain()
    {
        if (!Open(Request.Form["from"])) return NotFound();
        TakeDays();
        return Refuse("name", "The form had gone stale and nothing was made. What you typed stands below; send it again.");
    }

    private bool TakeDays()
    {
        if (FirstThen is not { } then) return true;
        if (!DateTime.TryParseExact(First?.Trim(), Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime first)
            || first.Year is < 2000 or > 2200)
            return false;
        Days = (first.Date - then.Date).Days;
        return true;
    }

    private PageResult Refuse(string field, string text)
    {
        ModelState.AddModelError(field, text);
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private bool Open(string? classId)
    {
        if (classId is null || !access.Teaches(visitor.Person, classId) || classes.Find(classId) is not { } room) return false;
        (From, Moved) = (room, [.. evenings.OfClass(room.Id).Where(e => e.StartsLocal is not null)]);
        return true;
    }
}
