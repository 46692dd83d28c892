using System.Globalization;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Classes;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Deputy)]
public sealed class RegisterModel(ClassAccess access, ClassRegister register, EveningDays days, TimeProvider time) : PageModel
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
        RegisterFilter filter = new(number, concept, stuck, sort);
        Register = Request.Query.Count == 0 ? Current(room, filter) : register.Of(room, filter);
    }

    // The evening that is prepared, once anyone has begun on it; else the last one; all of it where evenings say nothing.
    private RegisterView Current(ClassRoom room, RegisterFilter filter)
    {
        EveningsNow when = days.Of(room);
        foreach (int evening in new[] { when.Next, when.Last }.OfType<int>())
        {
            RegisterView view = register.Of(room, filter with { Evening = evening });
            if (view.Rows.Any(r => r.Cells.Any(c => c.Attempts > 0)) || (evening == when.Next && when.Last is null && !view.Columns.IsEmpty)) return view;
        }

        return register.Of(room, filter);
    }
}
