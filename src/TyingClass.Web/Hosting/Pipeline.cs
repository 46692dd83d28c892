using TyingClass.Drawing;
using TyingClass.Web.Network;
using TyingClass.Web.Security;

namespace TyingClass.Web.Hosting;

/// <summary>The order every request goes through.</summary>
internal static class Pipeline
{
    public static void Use(WebApplication app)
    {
        app.Use(app.Services.GetRequiredService<OwnPages>().Begin);
        // First: who asks, and how, is what a known proxy says of it.
        if (Proxies.AreKnown(app.Configuration)) app.UseForwardedHeaders();
        app.UseMiddleware<SecurityHeaders>();
        Squeezing.Use(app);
        app.UseMiddleware<LastWord>();
        app.UseExceptionHandler("/problem/500");
        app.UseStatusCodePagesWithReExecute("/problem/{0}");
        app.UseMiddleware<ProblemRequests>();
        app.UseMiddleware<MethodDoor>();
        app.UseMiddleware<BodyLimit>();
        app.UseStaticFiles(new StaticFileOptions
        {
            // Addresses carry a version, so a file may be kept a year.
            OnPrepareResponse = file =>
                file.Context.Response.Headers.CacheControl =
                    file.Context.Request.Query.ContainsKey("v") ? "public, max-age=31536000, immutable" : "public, max-age=3600",
        });
        app.UseRouting();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseMiddleware<FormDoor>();
        app.MapGet("/css/drawing.css", (HttpContext context) =>
        {
            context.Response.Headers.CacheControl = "public, max-age=3600";
            return Results.Text(DrawingStyle.Css, "text/css");
        });
        // Some of what watches a server asks with HEAD.
        app.MapMethods(Health.Address, [HttpMethods.Get, HttpMethods.Head], Health.Say);
        app.MapRazorPages();
    }
}
