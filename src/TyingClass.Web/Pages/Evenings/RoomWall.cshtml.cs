using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;

namespace TyingClass.Web.Pages.Evenings;

public sealed class RoomWallModel(RoomDesk desk) : PageModel
{
    public RoomView Now { get; private set; } = null!;

    public IActionResult OnGet()
    {
        if (desk.Now() is not { } now) return Redirect("/class/tonight");
        Now = now;
        return Page();
    }
}
