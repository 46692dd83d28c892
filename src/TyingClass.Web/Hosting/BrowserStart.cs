using System.Diagnostics;
using System.Runtime.InteropServices;

namespace TyingClass.Web.Hosting;

/// <summary>Opens the browser for someone who started the program by a double click.</summary>
internal static class BrowserStart
{
    /// <summary>Only for an installed program with a screen of its own: not in a repository, not for a service.</summary>
    public static bool IsWanted(string[] args) => ProjectFolder.IsInstalled && !args.Contains(StartFlags.NoBrowserFlag) && HasScreen(Environment.GetEnvironmentVariable);

    internal static bool HasScreen(Func<string, string?> environment)
    {
        bool Has(string name) => environment(name) is { Length: > 0 };

        // systemd.exec(5): set for every unit's process, that of a desktop's terminal too, which has a kind of terminal as well.
        bool isService = Has("INVOCATION_ID") && !Has("TERM");
        return !isService && (!OperatingSystem.IsLinux() || Has("DISPLAY") || Has("WAYLAND_DISPLAY"));
    }

    public static void Open(string address)
    {
        try
        {
            using Process? browser = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception e) when (e is ExternalException or InvalidOperationException or PlatformNotSupportedException)
        {
            Console.WriteLine($"No browser could be opened. Open {address} in one yourself.");
        }
    }

    /// <summary>As a browser on this machine reaches a listener.</summary>
    public static string Here(string bound)
    {
        Uri address = new(bound);
        return address.Host is "[::]" or "0.0.0.0" ? $"{address.Scheme}://localhost:{address.Port}" : bound;
    }
}
