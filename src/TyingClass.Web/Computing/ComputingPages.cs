using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.ApplicationModels;

namespace TyingClass.Web.Computing;

/// <summary>Which pages compute flies that their asker thought of: those take turns. The course's own flies are computed once and kept.</summary>
internal static class ComputingPages
{
    private static readonly ImmutableArray<string> Folders = ["/Bench", "/BenchLog", "/Exercises", "/PatternBook", "/Patterns", "/Practice", "/Reviews"];

    // A photo cannot travel through the page that says to wait, and costs no fly.
    private const string Photo = "/BenchLog/Photo";

    public static void TakeTurns(PageConventionCollection pages)
    {
        TurnFilter filter = new();
        foreach (string folder in Folders)
        {
            pages.AddFolderApplicationModelConvention(folder, page =>
            {
                if (page.ViewEnginePath != Photo) page.Filters.Add(filter);
            });
        }
    }
}
