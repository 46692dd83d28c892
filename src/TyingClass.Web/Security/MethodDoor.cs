namespace TyingClass.Web.Security;

/// <summary>Pages are read and forms are posted; nothing else is understood here, and it is refused before any page sees it.</summary>
public sealed class MethodDoor(RequestDelegate next)
{
    private const string Understood = "GET, HEAD, POST";

    public Task InvokeAsync(HttpContext context)
    {
        string method = context.Request.Method;
        if (HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsPost(method)) return next(context);
        context.Response.StatusCode = StatusCodes.Status405MethodNotAllowed;
        context.Response.Headers.Allow = Understood;
        return Task.CompletedTask;
    }
}
