using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Mentor)]
public sealed class WaitingModel(ReadingDesk desk, TimeProvider time) : PageModel
{
    public ImmutableArray<StuckLine> Lines { get; private set; } = [];

    /// <summary>The last that waited was just read.</summary>
    public bool Done { get; private set; }

    /// <summary>Where the word just given on it can be changed.</summary>
    public string? Again { get; private set; }

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet(bool done, string? last) => (Lines, Done, Again) = (desk.Waiting(), done, done ? ReadingDesk.AddressOf(last) : null);
}
