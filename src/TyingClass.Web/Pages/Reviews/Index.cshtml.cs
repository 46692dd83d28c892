using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Pages.Reviews;

public sealed class IndexModel(ReviewDesk desk) : PageModel
{
    public ImmutableArray<QueueLine> Waiting { get; private set; } = [];

    public ImmutableArray<QueueLine> Decided { get; private set; } = [];

    public void OnGet() => (Waiting, Decided) = (desk.Queue(), desk.Decided());
}
