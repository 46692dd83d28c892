using Microsoft.AspNetCore.Diagnostics;

namespace TyingClass.Web.Security;

/// <summary>
/// A request that failed is answered by running the page about it in its place. That page only reads: it gets nothing of the form that failed, which may be
/// the very thing that cannot be read.
/// </summary>
public sealed class ProblemRequests(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context)
    {
        if (context.Features.Get<IExceptionHandlerFeature>() is null && context.Features.Get<IStatusCodeReExecuteFeature>() is null) return next(context);
        HttpRequest request = context.Request;
        request.Method = HttpMethods.Get;
        request.ContentType = null;
        request.ContentLength = null;
        request.Body = Stream.Null;
        request.QueryString = QueryString.Empty;
        request.Form = FormCollection.Empty;
        return next(context);
    }
}
