using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using TyingClass.Storage.Classes;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Pages.Class;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Start;

/// <summary>From a new class to slips in the students' hands, step by step.</summary>
[Authorize(ClassPolicies.Instructor)]
public sealed class IndexModel(StartDesk desk, ClassSetup setup, Visitor visitor) : ClassNameModel, IKeepsTyped
{
    [BindProperty(Name = "my-name")]
    public string? MyName { get; set; }

    public StartView View { get; private set; } = null!;

    public string? SlipsStillHere => desk.SlipsStillHere;

    public override ClassRoom? Room => View.Room;

    public IActionResult OnGet()
    {
        if (!Open()) return LocalRedirect("/class/setup");
        MyName = visitor.Person!.Name;
        Fill();
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

    private bool Open()
    {
        if (desk.Open() is not { } view) return false;
        View = view;
        return true;
    }
}
