using Microsoft.Extensions.Logging.Console;

namespace TyingClass.Web.Hosting;

/// <summary>A quiet console: what is printed at the start must not scroll away under the framework's own notes.</summary>
internal static class Logs
{
    public static void Configure(ILoggingBuilder logging)
    {
        logging.AddConsole(console => console.FormatterName = CountedLines.FormatterName);
        logging.AddConsoleFormatter<CountedLines, ConsoleFormatterOptions>();
        logging.AddFilter("Microsoft", LogLevel.Warning);
        // It would warn that "urls" are overridden by endpoints: we made the endpoints out of them.
        logging.AddFilter("Microsoft.AspNetCore.Server.Kestrel", LogLevel.Error);
        // A piece of a file that it does not have is the asker's mistake.
        logging.AddFilter("Microsoft.AspNetCore.StaticFiles", LogLevel.Error);
        // Keys at rest are guarded by the folder's mode; said in the README, not at every start.
        logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        // A stale form is met with a page of its own; it is no event for the console.
        logging.AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.None);
    }
}
