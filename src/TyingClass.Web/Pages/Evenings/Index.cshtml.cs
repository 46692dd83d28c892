using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Evenings;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Evenings;

public sealed class IndexModel(EveningBook book, EveningStore evenings, ClassRoomStore classes, ClassAccess access) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "first")]
    public string? First { get; set; }

    [BindProperty(Name = "every")]
    public string? Every { get; set; }

    /// <summary>Days without an evening, as typed.</summary>
    [BindProperty(Name = "skip")]
    public string? Skip { get; set; }

    private const int UsualDays = 7;

    public string ClassName { get; private set; } = "";

    public string ZoneId { get; private set; } = "";

    public ImmutableArray<EveningLine> Evenings { get; private set; }

    /// <summary>Dates to be looked over; null while none are asked for.</summary>
    public EveningSchedule? Schedule { get; private set; }

    /// <summary>The evening whose move led here, and how far it went.</summary>
    public (int Number, string By)? Moved { get; private set; }

    public string? Done { get; private set; }

    /// <summary>Setting dates is for whoever runs all evenings.</summary>
    public bool MaySet => access.Right >= ClassRight.Everything;

    /// <param name="moved">An evening that was just moved: those after it are offered to move as far.</param>
    /// <param name="was">When it began before.</param>
    public IActionResult OnGet(bool saved = false, bool copied = false, int? moved = null, string? was = null)
    {
        Done = saved ? "The evenings are set. Dates of lessons stay as they are: look at Dates whether they still fit."
            : copied ? "The class is made, and open now. Look its evenings over; the class code is under People." : null;
        if (!Open()) return NotFound();
        if (MaySet && moved is { } number && ClassClock.TryRead(was, out DateTime? before) && before is { } then) Offer(number, then);
        return Page();
    }

    /// <summary>Works the dates out and shows them beside those that stand; sets nothing.</summary>
    public IActionResult OnPost()
    {
        if (!MaySet) return Forbid();
        (ImmutableHashSet<DateOnly> skipped, string? problem) = EveningSchedule.ReadSkipped(Skip);
        if (!ClassClock.TryRead(First, out DateTime? first) || first is null)
            ModelState.AddModelError("first", "Say when the first evening begins: a date with a time, as in 2026-01-14 19:00.");
        if (!int.TryParse(Every, CultureInfo.InvariantCulture, out int days) || days is < 1 or > 60)
            ModelState.AddModelError("every", "Days between evenings: a whole number from 1 to 60.");
        if (problem is not null) ModelState.AddModelError("skip", problem);
        if (!ModelState.IsValid) return Refused();
        if (!Open()) return NotFound();
        // Kept now, not when the dates are set: who leaves to look at a calendar finds them again.
        classes.KeepRhythm(book.Room!.Id, new EveningRhythm(days, (Skip ?? "").ReplaceLineEndings("\n").Trim()));
        Schedule = EveningSchedule.Every(Evenings, first!.Value, days, skipped);
        return Page();
    }

    /// <summary>Sets the dates as they were looked over, all of them or none.</summary>
    public IActionResult OnPostSet()
    {
        if (!MaySet) return Forbid();
        if (!Open()) return NotFound();
        Schedule = EveningSchedule.Posted(Request.Form, Evenings, new ClassClock(book.Room!));
        foreach (ScheduleLine line in Schedule.Lines.Where(l => l.Error is not null)) ModelState.AddModelError(line.Field, line.Error!);
        if (Schedule.HasErrors) return Refused();
        if (evenings.SetStarts(book.Room!.Id, Schedule.Starts())) return RedirectToPage(null, null, new { saved = true }, "main");
        Schedule = Schedule.Beside(evenings.OfClass(book.Room.Id).ToDictionary(e => e.Number));
        ModelState.AddModelError("look",
            "Someone else changed an evening meanwhile, and nothing was set. What stands now is beside your dates: look them over and set them again.");
        return Refused();
    }

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("first", "The form had gone stale and nothing was saved. Send it once more.");
        if (!Open()) return NotFound();
        EveningSchedule typed = EveningSchedule.Posted(Request.Form, Evenings, new ClassClock(book.Room!));
        if (!typed.Lines.IsEmpty) Schedule = typed;
        return Page();
    }

    private void Offer(int number, DateTime before)
    {
        if (Evenings.FirstOrDefault(e => e.Number == number)?.Plan.StartsLocal is not { } now || now == before) return;
        EveningSchedule after = EveningSchedule.After(Evenings, number, now - before);
        if (after.Lines.IsEmpty) return;
        Schedule = after;
        Moved = (number, $"{TimeWords.Span((now - before).Duration())} {(now > before ? "later" : "earlier")}");
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private IActionResult Refused()
    {
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Open() ? Page() : NotFound();
    }

    private bool Open()
    {
        if (book.Room is not { } room) return false;
        (ClassName, ZoneId, Evenings) = (room.Name, new ClassClock(room).ZoneId, book.All());
        if (!Request.HasFormContentType || !Request.Form.ContainsKey("every"))
            (Every, Skip) = (Whole(room.Rhythm?.EveryDays ?? UsualDays), room.Rhythm?.Skipped);
        First ??= Evenings.Select(e => e.Plan.StartsLocal).FirstOrDefault(s => s is not null) is { } starts ? ClassClock.Write(starts) : null;
        return true;
    }
}
