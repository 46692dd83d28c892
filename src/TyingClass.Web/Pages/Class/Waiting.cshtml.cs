using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Mentor)]
public sealed class WaitingModel(ClassAccess access, ClassRegister register, Visitor visitor, TimeProvider time) : PageModel
{
    public ImmutableArray<StuckLine> Lines { get; private set; } = [];

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet()
    {
        if (access.Current is { } room) Lines = register.WaitingIn(room, visitor.Person!);
    }
}
