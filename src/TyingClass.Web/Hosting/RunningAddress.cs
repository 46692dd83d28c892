using TyingClass.Storage.Files;

namespace TyingClass.Web.Hosting;

/// <summary>Where the server that holds a data folder can be opened, written there for whoever starts a second one by another double click.</summary>
internal static class RunningAddress
{
    public static void Note(DataFolder folder, string address)
    {
        try
        {
            File.WriteAllText(PathIn(folder), address);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A convenience only.
        }
    }

    /// <returns>Null when none is written there.</returns>
    public static string? Find(DataFolder folder)
    {
        try
        {
            return File.Exists(PathIn(folder)) && Uri.TryCreate(File.ReadAllText(PathIn(folder)).Trim(), UriKind.Absolute, out Uri? address)
                && address.Scheme is "http" or "https" ? address.ToString() : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string PathIn(DataFolder folder) => Path.Combine(folder.Path, "open-at.txt");
}
