using TyingClass.Storage;

namespace TyingClass.Web.Hosting;

/// <summary>
/// One word for whatever watches over the server: open to everyone, so it names nobody and no path. What is wrong stands on the console and, for the
/// instructor, on the pages of the class.
/// </summary>
internal static class Health
{
    public const string Address = "/health";

    public static IResult Say(HttpContext context, ClassStore store)
    {
        context.Response.Headers.CacheControl = "no-store";
        if (!store.TakesWrites) return Results.Text("cannot write\n", statusCode: StatusCodes.Status503ServiceUnavailable);
        return Results.Text(store.Damage.Lines.IsEmpty ? "well\n" : "well, with damage found\n");
    }
}
