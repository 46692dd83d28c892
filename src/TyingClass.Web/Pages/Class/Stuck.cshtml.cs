using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.People;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Deputy)]
public sealed class StuckModel(BriefDesk desk, TimeProvider time) : PageModel
{
    public ImmutableArray<StuckGroup> Groups { get; private set; } = [];

    public ImmutableArray<StuckLine> Once { get; private set; } = [];

    /// <summary>Who shares their cause with nobody, the last try first.</summary>
    public IEnumerable<IGrouping<Person, StuckLine>> Alone => Groups.Where(g => g.People.Length == 1).SelectMany(g => g.People[0].Lines)
        .OrderByDescending(l => l.Standing.LastAt).GroupBy(l => l.Person);

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet() => (Groups, Once) = desk.Stuck();
}
