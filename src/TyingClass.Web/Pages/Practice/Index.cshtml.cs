using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Practice;

namespace TyingClass.Web.Pages.Practice;

public sealed class IndexModel(ConceptBoard board) : PageModel
{
    public ConceptView Concepts { get; private set; } = null!;

    public void OnGet() => Concepts = board.Mine();
}
