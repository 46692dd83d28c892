using System.CommandLine;
using TyingClass.Drawing.ContactSheets;

namespace TyingClass.CommandLine;

/// <summary>contact-sheet [DIR]: two dozen or so flies drawn on one sheet, to be looked at.</summary>
internal static class ContactSheetVerb
{
    private const string UsualFolder = "docs";

    public static Command Command()
    {
        Argument<DirectoryInfo> folder = new("DIR")
        {
            Description = "Where contact-sheet.svg is written; docs when left out. A file of that name is replaced.",
            DefaultValueFactory = _ => new DirectoryInfo(UsualFolder),
        };
        Option<bool> pages =
            new("--html") { Description = "Also contact-sheet.html: side, front and hang views and the curves, light or dark as the reader's system is." };
        Command command = new("contact-sheet", "Draws some two dozen flies on one sheet, to see whether each looks like what it is.") { folder, pages };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), parsed.GetValue(pages), Console.Out, Console.Error));
        return command;
    }

    public static int Run(DirectoryInfo folder, bool html, TextWriter output, TextWriter errors)
    {
        try
        {
            foreach (string path in ContactSheet.Write(folder.FullName, html)) output.WriteLine(path);
            return ExitCodes.AllIsWell;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{folder.FullName} cannot be written to: {e.Message} Give a folder of your own.");
            return ExitCodes.InputError;
        }
    }
}
