using System.Xml;
using System.Xml.Linq;

namespace TyingClass.Web.Hosting;

/// <summary>
/// The keys that seal cookies and form tokens. One that a power failure tore can be read by nobody, and every page that needs a key would fail: it is put
/// aside at the start, and another is made. Who was signed in signs in again; nothing else is lost.
/// </summary>
internal static class KeyFiles
{
    /// <returns>What was put aside.</returns>
    public static string[] PutAsideTorn(string folder)
    {
        string[] torn = [.. Directory.EnumerateFiles(folder, "*.xml").Where(f => !IsWhole(f))];
        foreach (string file in torn) File.Move(file, file + ".torn", overwrite: true);
        return torn;
    }

    private static bool IsWhole(string file)
    {
        try
        {
            return XDocument.Load(file).Root is not null;
        }
        catch (XmlException)
        {
            return false;
        }
    }
}
