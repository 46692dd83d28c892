using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Deputy)]
public sealed class StuckModel(BriefDesk desk, TimeProvider time) : PageModel
{
    public ImmutableArray<StuckGroup> Groups { get; private set; } = [];

    public ImmutableArray<StuckLine> Once { get; private set; } = [];

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet() => (Groups, Once) = desk.Stuck();
}
