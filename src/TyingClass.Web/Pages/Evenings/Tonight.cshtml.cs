using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
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

    /// <summary>Where the question was put from, and where closing it leads back to: a slide of the wall, or the brief.</summary>
    [BindProperty(Name = "back", SupportsGet = true)]
    public string? Back { get; set; }

    public RoomDesk Desk => desk;

    public RoomView? Now { get; private set; }

    public ImmutableArray<string> Errors { get; private set; } = [];

    public IActionResult OnGet() => Show();

    public IActionResult OnPost() => After(desk.PutExercise(ExerciseId ?? "") is { } wrong ? [wrong] : []);

    public IActionResult OnPostRecipe() => After(desk.PutRecipe(RecipePaste.Read(Recipe), Ask ?? ""));

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
        return GoodBack is { } back ? LocalRedirect(back) : RedirectToPage();
    }

    public IActionResult ShowAgain()
    {
        // An archived class has said already why nothing was done, and sending it again would not help.
        Errors = HttpContext.Items.ContainsKey(ArchivedFilter.Refused) ? [] : ["The form had gone stale and nothing was done. Send it once more."];
        return Show();
    }

    private IActionResult After(ImmutableArray<string> errors)
    {
        if (errors.IsEmpty) return RedirectToPage("/Evenings/RoomWall", new { back = GoodBack });
        Errors = errors;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Show();
    }

    /// <summary>A page of the class on this server, and nothing else that an address might say.</summary>
    internal static bool IsGoodBack(string back, IUrlHelper url) => back.StartsWith("/class", StringComparison.Ordinal) && url.IsLocalUrl(back);

    private string? GoodBack => Back is { } back && IsGoodBack(back, Url) ? back : null;

    private IActionResult Show()
    {
        if (desk.Room is null) return NotFound();
        Now = desk.Now();
        return Page();
    }
}
