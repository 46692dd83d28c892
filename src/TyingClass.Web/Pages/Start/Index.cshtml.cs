using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Start;

/// <summary>From a new class to slips in the students' hands, step by step.</summary>
[Authorize(ClassPolicies.Instructor)]
public sealed class IndexModel(StartDesk desk, ClassSetup setup, Visitor visitor) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "my-name")]
    public string? MyName { get; set; }

    [BindProperty(Name = "name")]
    public string? Name { get; set; }

    [BindProperty(Name = "zone")]
    public string? Zone { get; set; }

    [BindProperty(Name = "version")]
    public int Version { get; set; }

    public StartView View { get; private set; } = null!;

    public string? SlipsStillHere => desk.SlipsStillHere;

    public IEnumerable<string> Zones => ClassClock.ZonesToChoose(View.Room.TimeZoneId);

    public IActionResult OnGet()
    {
        if (!Open()) return LocalRedirect("/class/setup");
        (MyName, Name, Zone, Version) = (visitor.Person!.Name, View.Room.Name, View.Room.TimeZoneId, View.Room.Version);
        return Page();
    }

    public IActionResult OnPost([FromForm(Name = "do")] string? what, string? step)
    {
        if (!Open()) return LocalRedirect("/class/setup");
        switch (what)
        {
            case StartSteps.Class:
                if (desk.NameInstructor(MyName) is { } wrong) return Refuse("my-name", wrong);
                if (setup.Rename(Name, Zone, Version) is { } trouble) return Refuse("name", trouble);
                desk.Mark(StartSteps.Class);
                return After();
            case StartSteps.Slips when desk.MakeSlips() is { } ticket:
                return RedirectToPage("/Files/Slips", new { ticket });
            case StartSteps.End:
                desk.Mark(StartSteps.End);
                return LocalRedirect("/class");
            default:
                desk.Mark(step ?? "");
                return After();
        }
    }

    public IActionResult ShowAgain() => Open()
        ? Refuse("name", "The form had gone stale and nothing was kept. What you typed stands below; send it again.")
        : LocalRedirect("/class/setup");

    private LocalRedirectResult After() => LocalRedirect(desk.Open()?.Next is { } next ? $"/class/start#{next}" : "/class/start#slips");

    private PageResult Refuse(string field, string text)
    {
        ModelState.AddModelError(field, text);
        Version = View.Room.Version;
        ModelState.Remove("version");
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private bool Open()
    {
        if (desk.Open() is not { } view) return false;
        View = view;
        return true;
    }
}
