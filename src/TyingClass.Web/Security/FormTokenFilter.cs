using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;

namespace TyingClass.Web.Security;

/// <summary>
/// Checks the form token of every post to every page. A form that went stale (the cookie was cleared, someone signed in or out meanwhile)
/// is shown again with what was typed and a fresh token; nothing is carried out.
/// </summary>
internal sealed class FormTokenFilter : IAsyncPageFilter
{
    public Task OnPageHandlerSelectionAsync(PageHandlerSelectedContext context) => Task.CompletedTask;

    public async Task OnPageHandlerExecutionAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next)
    {
        HttpContext http = context.HttpContext;
        if (IsSafe(http.Request.Method) || await http.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(http))
        {
            await next();
            return;
        }

        http.Response.StatusCode = StatusCodes.Status400BadRequest;
        context.Result = context.HandlerInstance is IKeepsTyped page ? page.ShowAgain() : new StatusCodeResult(StatusCodes.Status400BadRequest);
    }

    // A re-executed problem page keeps the method of the request that failed, but carries nothing out.
    private static bool IsSafe(string method) =>
        HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);
}

/// <summary>A page that can show its form again from a post, carrying nothing out.</summary>
public interface IKeepsTyped
{
    /// <summary>Called instead of the handler when the form's token is stale.</summary>
    IActionResult ShowAgain();
}
