using Microsoft.Extensions.FileProviders;

namespace TyingClass.Web.Hosting;

/// <summary>Style sheets, scripts and fonts stand in the folder wwwroot beside the program. Copied without it, every page comes bare.</summary>
public static class LooksCheck
{
    private const string OneOfThem = "css/base.css";

    /// <returns>What to say at the start; null when the folder is there.</returns>
    public static string? Complaint(IFileProvider files)
    {
        ArgumentNullException.ThrowIfNull(files);
        return files.GetFileInfo(OneOfThem).Exists ? null
            : "The folder wwwroot is missing beside the program: every page will come without its looks, its letters and its buttons' help. "
                + "Copy the whole folder that “dotnet publish” makes, and start it again.";
    }
}
