using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;

namespace TyingClass.Web.Security;

/// <summary>
/// A post that no part of the page takes (an address made up, or of an older edition) is answered so, before the page is laid out without its contents.
/// </summary>
internal sealed class KnownHandlers : IPageFilter
{
    public void OnPageHandlerSelected(PageHandlerSelectedContext context)
    {
    }

    public void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        bool isPost = HttpMethods.IsPost(context.HttpContext.Request.Method);
        if (isPost && context.HandlerMethod is null) context.Result = new StatusCodeResult(StatusCodes.Status404NotFound);
    }

    public void OnPageHandlerExecuted(PageHandlerExecutedContext context)
    {
    }
}
