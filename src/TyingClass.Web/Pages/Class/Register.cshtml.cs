using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Deputy)]
public sealed class RegisterModel(ClassAccess access, ClassRegister register, TimeProvider time) : PageModel
{
    /// <summary>Null for an instructor who has no class yet.</summary>
    public RegisterView? Register { get; private set; }

    public DateTimeOffset Now => time.GetUtcNow();

    /// <summary>Whole lessons side by side, as many as fit on paper.</summary>
    public bool InSheets { get; private set; }

    public void OnGet(int? evening, string? concept, bool stuck, RegisterSort sort, bool sheets)
    {
        InSheets = sheets;
        if (access.Current is { } room) Register = register.Of(room, new RegisterFilter(evening, concept, stuck, sort));
    }
}
