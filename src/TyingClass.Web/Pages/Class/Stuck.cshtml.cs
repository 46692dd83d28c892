using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Deputy)]
public sealed class StuckModel(ClassAccess access, ClassRegister register, TimeProvider time) : PageModel
{
    public ImmutableArray<StuckLine> Lines { get; private set; } = [];

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet()
    {
        if (access.Current is { } room) Lines = register.StuckIn(room);
    }
}
