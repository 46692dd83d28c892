using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Evenings;

/// <summary>Where the instructor puts questions to the room.</summary>
public sealed class TonightModel(RoomDesk desk) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "exercise", SupportsGet = true)]
    public string? ExerciseId { get; set; }

    [BindProperty(Name = "recipe")]
    public string? Recipe { get; set; }

    [BindProperty(Name = "ask")]
    public string? Ask { get; set; }

    [BindProperty(Name = "question")]
    public string? QuestionId { get; set; }

    public RoomDesk Desk => desk;

    public RoomView? Now { get; private set; }

    public ImmutableArray<string> Errors { get; private set; } = [];

    public IActionResult OnGet() => Show();

    public IActionResult OnPost() => After(desk.PutExercise(ExerciseId ?? "") is { } wrong ? [wrong] : []);

    public IActionResult OnPostRecipe() => After(desk.PutRecipe((Recipe ?? "").ReplaceLineEndings("\n"), Ask ?? ""));

    public IActionResult OnPostPrepared() => After(desk.PutPrepared(QuestionId ?? "") is { } wrong ? [wrong] : []);

    public IActionResult OnPostForget()
    {
        desk.Forget(QuestionId ?? "");
        return RedirectToPage();
    }

    public IActionResult OnPostReveal() => After(desk.Reveal(QuestionId ?? "") is { } wrong ? [wrong] : []);

    public IActionResult OnPostClose()
    {
        desk.Close(QuestionId ?? "");
        return RedirectToPage();
    }

    public IActionResult ShowAgain()
    {
        // An archived class has said already why nothing was done, and sending it again would not help.
        Errors = HttpContext.Items.ContainsKey(ArchivedFilter.Refused) ? [] : ["The form had gone stale and nothing was done. Send it once more."];
        return Show();
    }

    private IActionResult After(ImmutableArray<string> errors)
    {
        if (errors.IsEmpty) return RedirectToPage("/Evenings/RoomWall");
        Errors = errors;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Show();
    }

    private IActionResult Show()
    {
        if (desk.Room is null) return NotFound();
        Now = desk.Now();
        return Page();
    }
}
