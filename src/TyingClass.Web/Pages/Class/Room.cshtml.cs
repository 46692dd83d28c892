using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Network;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

/// <summary>Opens the server to the room, and shows whether a phone got in.</summary>
[Authorize(ClassPolicies.Instructor)]
public sealed class RoomModel(RoomSetup setup, StartDesk start, Reaches reaches, TimeProvider time) : PageModel, IKeepsTyped
{
    public (int Phones, DateTimeOffset? Last) Lately => reaches.Lately();

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet() => reaches.NoteLook();

    public async Task<IActionResult> OnPostAsync([FromForm(Name = "do")] string? what, string? address, string? typed, string? step)
    {
        if (what == "close") await setup.CloseAsync();
        else if (await setup.OpenAsync(address, typed) is { } wrong) return Refuse(wrong);
        // One of the steps of setting the class up: back to them.
        if (step != StartSteps.Room) return LocalRedirect("/class/room");
        start.Mark(StartSteps.Room);
        return LocalRedirect("/class/start#room");
    }

    public IActionResult ShowAgain() => Refuse("The form had gone stale and nothing was changed. Choose once more.");

    /// <summary>A clock would be that of the wrong zone for somebody.</summary>
    public static string Ago(TimeSpan since) => since.TotalMinutes < 1 ? "The last one just now." : $"The last one {(int)since.TotalMinutes} min ago.";

    private PageResult Refuse(string text)
    {
        ModelState.AddModelError("typed-address", text);
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }
}
