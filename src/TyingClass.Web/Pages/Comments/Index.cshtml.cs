using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Comments;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Comments;

[Authorize(ClassPolicies.Student)]
public sealed class IndexModel(Visitor visitor, CommentStore store) : PageModel, IKeepsTyped
{
    public ImmutableArray<Comment> Comments => store.To(visitor.Person!.Id);

    public void OnGet()
    {
    }

    public IActionResult OnPost([FromForm] string? id, [FromForm] string? back)
    {
        if (id is not null) store.MarkSeen(id, visitor.Person!.Id);
        return LocalRedirect(Url.IsLocalUrl(back) ? back : "/comments");
    }

    public IActionResult ShowAgain() => Page();
}
