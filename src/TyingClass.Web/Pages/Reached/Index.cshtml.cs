using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Network;

namespace TyingClass.Web.Pages.Reached;

/// <summary>Opened on a phone, it proves that the network lets phones in.</summary>
public sealed class IndexModel(Reaches reaches) : PageModel
{
    public bool FromElsewhere { get; private set; }

    /// <summary>The instructor's page is open and turns green; otherwise it will be when it is opened.</summary>
    public bool Watched => reaches.IsWatched;

    public void OnGet() => FromElsewhere = reaches.Note(HttpContext.Connection);
}
