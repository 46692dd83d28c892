using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

/// <summary>The names of a class, for whoever helps its students.</summary>
[Authorize(ClassPolicies.Mentor)]
public sealed class StudentsModel(ClassAccess access, ClassRegister register, TimeProvider time) : PageModel
{
    public ImmutableArray<NameLine> Names { get; private set; } = [];

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet()
    {
        if (access.Current is { } room) Names = register.NamesIn(room);
    }
}
