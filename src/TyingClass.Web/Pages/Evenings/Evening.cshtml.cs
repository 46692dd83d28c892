using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Briefs;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Evenings;
using TyingClass.Web.Preferences;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Evenings;

public sealed class EveningModel(EveningBook book, EveningStore evenings, ClassRoomStore classes, BriefDesk brief, ClassAccess access) : PageModel, IKeepsTyped
{
    [BindProperty(SupportsGet = true)]
    public PacketQuery Packets { get; set; } = new();

    public EveningView Evening { get; private set; } = null!;

    public EveningForm Form { get; private set; } = null!;

    public ImmutableArray<MaterialLine> Materials { get; private set; }

    /// <summary>Wrong answers to the exercises of this evening that several share; no names stand beside them.</summary>
    public ImmutableArray<BeliefLine> Shared { get; private set; } = [];

    /// <summary>A deputy of an evening reads what is shared, and opens nobody's answers.</summary>
    public bool SeesClass => access.Right >= ClassRight.Everything;

    /// <summary>It can be looked back on.</summary>
    public bool IsOver => brief.Held.Any(e => e.Number == Evening.Number);

    /// <summary>What someone else wrote meanwhile.</summary>
    public EveningPlan? Theirs { get; private set; }

    public string? Notice { get; private set; }

    public bool Saved { get; private set; }

    public bool PacketsKept { get; private set; }

    /// <summary>The class keeps sizes of its own, and these are they.</summary>
    public bool ShowsKept => !Packets.WasAsked(Request) && Evening.Room.Packets is not null;

    public IActionResult OnGet(int number, bool saved = false, bool kept = false)
    {
        if (!Open(number)) return Missing(number);
        (Form, Saved, PacketsKept) = (EveningForm.Of(Evening), saved, kept);
        return Page();
    }

    public IActionResult OnPost(int number)
    {
        if (!Open(number)) return Missing(number);
        Form = EveningForm.Posted(Request.Form, Evening);
        foreach ((string field, string text) in Form.Errors()) ModelState.AddModelError(field, text);
        if (Form.Errors().Any()) return Again("Nothing was saved yet.");
        DateTime? before = Evening.Plan.StartsLocal;
        EditOutcome<EveningPlan> outcome = evenings.Save(Form.ToPlan(Evening.Room.Id, number));
        if (outcome.Saved && MovesOthers(before, outcome.Current))
            return RedirectToPage("/Evenings/Index", null, new { moved = number, was = ClassClock.Write(before) }, "dates");
        if (outcome.Saved) return RedirectToPage(new { number, saved = true });
        (Theirs, Form) = (outcome.Current, Form with { Version = outcome.Current.Version });
        return Again(
            "Someone else changed this evening while you had it open. Yours stands in the form, theirs below it: take over what you want, and save again.");
    }

    /// <summary>Keeps the packet sizes that are shown for every evening of the class.</summary>
    public IActionResult OnPostPackets(int number)
    {
        if (!Open(number)) return Missing(number);
        classes.KeepPackets(Evening.Room.Id, Packets.ToPackets());
        return RedirectToPage(new { number, kept = true });
    }

    public IActionResult ShowAgain()
    {
        int number = int.Parse((string)RouteData.Values["number"]!, System.Globalization.CultureInfo.InvariantCulture);
        if (!Open(number)) return Missing(number);
        Form = EveningForm.Posted(Request.Form, Evening);
        return Again("The form had gone stale and nothing was saved. What you typed is below: save once more.");
    }

    private IActionResult Missing(int number) => book.IsOfOthers(number) ? Forbid() : NotFound();

    private PageResult Again(string notice)
    {
        // An archived class has said already why nothing was saved, and sending it again would not help.
        Notice = HttpContext.Items.ContainsKey(ArchivedFilter.Refused) ? null : notice;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    // A date that became another one, with evenings after it that have dates, and someone who may move them.
    private bool MovesOthers(DateTime? before, EveningPlan after) =>
        before is not null && after.StartsLocal is not null && before != after.StartsLocal && access.Right >= ClassRight.Everything
        && book.All().Any(e => e.Number > after.Number && e.Plan.StartsLocal is not null);

    private bool Open(int number)
    {
        if (book.Open(number) is not { } evening) return false;
        if (!Packets.WasAsked(Request) && evening.Room.Packets is { } kept) Packets = PacketQuery.Of(kept);
        Shared = brief.OfEvening(evening);
        (Evening, Materials) = (evening, MaterialsView.Of(evening.Supplies, Packets.ToPackets(), Look.Of(Request).Units));
        return true;
    }
}
