using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Classes;
using TyingClass.Web.Calendar;

namespace TyingClass.Web.Pages.Class;

/// <summary>What the pages share on which a class is given its name and time zone.</summary>
public abstract class ClassNameModel : PageModel
{
    [BindProperty(Name = "name")]
    public string? Name { get; set; }

    [BindProperty(Name = "zone")]
    public string? Zone { get; set; }

    [BindProperty(Name = "version")]
    public int Version { get; set; }

    public abstract ClassRoom? Room { get; }

    public IEnumerable<string> Zones => ClassClock.ZonesToChoose(Room?.TimeZoneId);

    protected void Fill() => (Name, Zone, Version) = (Room?.Name, Room?.TimeZoneId, Room?.Version ?? 0);

    /// <summary>The page as it was typed. What is sent again counts from the class as it is now.</summary>
    protected PageResult Refuse(string field, string text)
    {
        ModelState.AddModelError(field, text);
        Version = Room?.Version ?? 0;
        ModelState.Remove("version");
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }
}
