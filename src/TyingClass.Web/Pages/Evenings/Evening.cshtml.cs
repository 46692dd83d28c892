using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Evenings;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Evenings;

public sealed class EveningModel(EveningBook book, ClassStore store) : PageModel, IKeepsTyped
{
    [BindProperty(SupportsGet = true)]
    public PacketQuery Packets { get; set; } = new();

    public EveningView Evening { get; private set; } = null!;

    public EveningForm Form { get; private set; } = null!;

    public ImmutableArray<MaterialLine> Materials { get; private set; }

    /// <summary>What someone else wrote meanwhile.</summary>
    public EveningPlan? Theirs { get; private set; }

    public string? Notice { get; private set; }

    public bool Saved { get; private set; }

    public IActionResult OnGet(int number, bool saved = false)
    {
        if (!Open(number)) return NotFound();
        (Form, Saved) = (EveningForm.Of(Evening), saved);
        return Page();
    }

    public IActionResult OnPost(int number)
    {
        if (!Open(number)) return NotFound();
        Form = EveningForm.Posted(Request.Form, Evening);
        foreach ((string field, string text) in Form.Errors()) ModelState.AddModelError(field, text);
        if (Form.Errors().Any()) return Again("Nothing was saved yet.");
        EditOutcome<EveningPlan> outcome = store.Evenings.Save(Form.ToPlan(Evening.Room.Id, number));
        if (outcome.Saved) return RedirectToPage(new { number, saved = true });
        (Theirs, Form) = (outcome.Current, Form with { Version = outcome.Current.Version });
        return Again("Someone else changed this evening while you had it open. Yours stands in the form, theirs below it: take over what you want, and save again.");
    }

    public IActionResult ShowAgain()
    {
        if (!Open(int.Parse((string)RouteData.Values["number"]!, System.Globalization.CultureInfo.InvariantCulture))) return NotFound();
        Form = EveningForm.Posted(Request.Form, Evening);
        return Again("The form had gone stale and nothing was saved. What you typed is below: save once more.");
    }

    private PageResult Again(string notice)
    {
        Notice = notice;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private bool Open(int number)
    {
        if (book.Open(number) is not { } evening) return false;
        (Evening, Materials) = (evening, MaterialsView.Of(evening.Supplies, Packets.ToPackets()));
        return true;
    }
}
