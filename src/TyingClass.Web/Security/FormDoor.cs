namespace TyingClass.Web.Security;

/// <summary>
/// Reads every posted form before a page does, and after it is known who asks: one that is no form, is torn, holds too many fields or a character no form
/// may hold is refused here, in words, instead of failing in whatever touches it first.
/// </summary>
public sealed class FormDoor(RequestDelegate next)
{
    public async Task InvokeAsync(HttpContext context)
    {
        HttpRequest request = context.Request;
        if (!HttpMethods.IsPost(request.Method))
        {
            await next(context);
            return;
        }

        if (!request.HasFormContentType)
        {
            context.Response.StatusCode = StatusCodes.Status415UnsupportedMediaType;
            return;
        }

        try
        {
            await request.ReadFormAsync(context.RequestAborted);
        }
        catch (Exception e) when (e is InvalidDataException or IOException and not BadHttpRequestException)
        {
            request.Form = FormCollection.Empty;
            context.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
            return;
        }
        catch (BadHttpRequestException e)
        {
            // Too slow, too large, in pieces that are none: an error of whoever sent it, and no event for the console.
            request.Form = FormCollection.Empty;
            context.Response.StatusCode = e.StatusCode;
            return;
        }

        await next(context);
    }
}
