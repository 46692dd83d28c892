using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Security;

/// <summary>
/// A class that is archived can be read but not changed: a post to one of the pages that run it carries nothing out, and the page comes back
/// with what was typed. What is needed to take it back, or to open another class, still works; so do the students' own pages.
/// </summary>
internal sealed class ArchivedFilter : IAsyncPageFilter
{
    /// <summary>Says on the request that it was refused for this reason.</summary>
    public const string Refused = "archived";

    private static readonly string[] Open = ["/Class/Setup", "/Class/Copy", "/Class/Room", "/Files/Index"];

    public Task OnPageHandlerSelectionAsync(PageHandlerSelectedContext context) => Task.CompletedTask;

    public async Task OnPageHandlerExecutionAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next)
    {
        HttpContext http = context.HttpContext;
        string page = context.ActionDescriptor.ViewEnginePath;
        bool runs = page.StartsWith("/Class/", StringComparison.Ordinal) || page.StartsWith("/Evenings/", StringComparison.Ordinal)
            || page.StartsWith("/Dates/", StringComparison.Ordinal);
        if (!HttpMethods.IsPost(http.Request.Method) || !runs || Open.Contains(page)
            || http.RequestServices.GetRequiredService<ClassAccess>().Current?.ArchivedAt is null || context.HandlerInstance is not IKeepsTyped keeps)
        {
            await next();
            return;
        }

        http.Items[Refused] = true;
        context.Result = keeps.ShowAgain();
        // The page takes it for a form gone stale and asks to send it once more: that would be refused again.
        foreach (ModelStateEntry entry in context.ModelState.Values) entry.Errors.Clear();
        // After the page, which says the form could not be read.
        http.Response.StatusCode = StatusCodes.Status409Conflict;
    }
}
