using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Exchange;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class NamesModel(NamesDesk desk) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "names")]
    public string? Names { get; set; }

    [BindProperty(Name = "last-first")]
    public bool LastNameFirst { get; set; }

    /// <summary>What was said before about the columns, as <see cref="RosterPick.Write"/> has it.</summary>
    [BindProperty(Name = "picked")]
    public string? Picked { get; set; }

    /// <summary>What is said about each column now.</summary>
    [BindProperty(Name = "column")]
    public string[] Columns { get; set; } = [];

    [BindProperty(Name = "headed")]
    public bool Headed { get; set; }

    [BindProperty(Name = "file")]
    public IFormFile? Upload { get; set; }

    /// <summary>Null before anything was typed.</summary>
    public Roster? Roster { get; private set; }

    public string? Notice { get; private set; }

    private NamesTyped Typed => new((Names ?? "").ReplaceLineEndings("\n"), LastNameFirst, RosterPick.Read(Picked));

    public IActionResult OnGet()
    {
        if (desk.Room is null) return LocalRedirect("/class/setup");
        NamesTyped kept = desk.Kept;
        (Names, LastNameFirst, Picked) = (kept.Text, kept.LastNameFirst, kept.Pick?.Write());
        if (!string.IsNullOrWhiteSpace(Names)) Roster = desk.Read(Typed);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync([FromForm(Name = "do")] string? what)
    {
        if (what == "add") return Add();
        if (what is "columns" or "turn") return Pick(what == "turn");
        if (Upload is { Length: > 0 } && !string.IsNullOrWhiteSpace(Names))
            return Show(null,
                "A file was chosen and names stand in the field as well, and only one of them can be taken at a time. Nobody was added. "
                + "Use the names below first, or empty the field and choose the file again.");
        if (Upload is { Length: > 0 } file)
        {
            (string text, Roster? wrong) = NamesDesk.Decode(await BytesAsync(file));
            if (wrong is not null) return Show(wrong);
            (Names, Picked) = (text, null);
        }

        return Show(desk.Look(Typed));
    }

    public IActionResult ShowAgain() => Show(desk.Read(Typed), "The form had gone stale and nobody was added. The names stand below: send them once more.");

    private PageResult Pick(bool turns)
    {
        // Turned is what is shown now, whether somebody said it or it was guessed.
        Picked = turns && desk.Read(Typed).Heads is { } heads ? new RosterPick(heads.Heading, heads.Columns).Turned().Write()
            : RosterPick.Of(Headed, Columns)?.Write() ?? Picked;
        return Show(desk.Look(Typed));
    }

    private IActionResult Add()
    {
        (string? ticket, Roster roster) = desk.Add(Typed);
        return ticket is not null ? RedirectToPage("/Files/Slips", new { ticket }) : Show(roster);
    }

    private PageResult Show(Roster? roster, string? notice = null)
    {
        (Roster, Notice) = (roster, notice);
        // What is shown was perhaps read from a file, not posted in the field.
        ModelState.Clear();
        if (roster is not { MayBeAdded: true } || notice is not null) Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    private static async Task<byte[]> BytesAsync(IFormFile file)
    {
        using MemoryStream bytes = new();
        await file.CopyToAsync(bytes);
        return bytes.ToArray();
    }
}
