using System.Globalization;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Classes;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Deputy)]
public sealed class RegisterModel(ClassAccess access, ClassRegister register, BriefDesk brief, TimeProvider time) : PageModel
{
    /// <summary>Null for an instructor who has no class yet.</summary>
    public RegisterView? Register { get; private set; }

    public DateTimeOffset Now => time.GetUtcNow();

    /// <summary>Whole lessons side by side, as many as fit on paper.</summary>
    public bool InSheets { get; private set; }

    /// <param name="evening">A number, or anything else for all; without any question at all, the evening that is being prepared.</param>
    public void OnGet(string? evening, string? concept, bool stuck, RegisterSort sort, bool sheets)
    {
        InSheets = sheets;
        if (access.Current is not { } room) return;
        int? number = int.TryParse(evening, CultureInfo.InvariantCulture, out int asked) ? asked : null;
        RegisterFilter filter = new(Request.Query.Count == 0 ? Current(room) : number, concept, stuck, sort);
        Register = register.Of(room, filter);
        if (Request.Query.Count == 0 && Register.Columns.IsEmpty) Register = register.Of(room, filter with { Evening = null });
    }

    private int? Current(ClassRoom room) => brief.When(room) is { } when ? when.Next ?? when.Last : null;
}
