using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using TyingClass.Storage.Classes;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class SetupModel(ClassSetup setup, ClassAccess access, Visitor visitor) : ClassNameModel, IKeepsTyped
{
    [BindProperty(Name = "new-name")]
    public string? NewName { get; set; }

    public override ClassRoom? Room => access.Current;

    public ImmutableArray<ClassRoom> Mine => access.ClassesOf(visitor.Person);

    /// <summary>A one-time code for another instructor: shown this once.</summary>
    [TempData]
    public string? Invitation { get; set; }

    [TempData]
    public string? Done { get; set; }

    public void OnGet() => Fill();

    public IActionResult OnPost([FromForm(Name = "do")] string? what, string? id)
    {
        switch (what)
        {
            case "rename":
                if (setup.Rename(Name, Zone, Version) is { } trouble) return Refuse("name", trouble);
                Done = "Kept.";
                break;
            case "code":
                setup.RenewCode();
                Done = "The class has a new code. The old one lets nobody in any more; whoever joined stays.";
                break;
            case "invite":
                Invitation = setup.Invite();
                break;
            case "create":
                setup.Create(NewName);
                Done = "Made, and open now.";
                break;
            case "open" when id is not null:
                setup.Open(id);
                break;
            case "archive" when id is not null:
                setup.Archive(id, archived: true);
                Done = "Archived. It stands below under “Archived” and can be opened, read and taken back.";
                break;
            case "take-back" when id is not null:
                setup.Archive(id, archived: false);
                Done = "Taken back, and open now.";
                break;
        }

        return LocalRedirect("/class/setup");
    }

    public IActionResult ShowAgain() => Refuse("name", "The form had gone stale and nothing was changed. What you typed stands below; send it again.");
}
