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
    /// <summary>Causes shown at most: the widest shared.</summary>
    public const int MostGroups = 25;

    /// <summary>People shown of a cause, and of those alone with one, the last try first.</summary>
    public const int MostPeople = 12;

    public ImmutableArray<StuckGroup> Groups { get; private set; } = [];

    /// <summary>How many causes are shared.</summary>
    public int Shared { get; private set; }

    public ImmutableArray<StuckLine> Once { get; private set; } = [];

    /// <summary>Who shares their cause with nobody, the last try first.</summary>
    public IEnumerable<IGrouping<Person, StuckLine>> Alone => _all.Where(g => g.People.Length == 1).SelectMany(g => g.People[0].Lines)
        .OrderByDescending(l => l.Standing.LastAt).GroupBy(l => l.Person);

    public DateTimeOffset Now => time.GetUtcNow();

    public void OnGet()
    {
        (_all, Once) = desk.Stuck();
        ImmutableArray<StuckGroup> shared = [.. _all.Where(g => g.People.Length > 1)];
        (Shared, Groups) = (shared.Length, [.. shared.Take(MostGroups).Select(desk.WithWhy)]);
    }

    private ImmutableArray<StuckGroup> _all = [];
}
