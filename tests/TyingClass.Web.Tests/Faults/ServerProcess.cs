using System.Diagnostics;
using System.Net;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>The server as a process of its own, to be killed.</summary>
internal sealed class ServerProcess : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly Process _process;

    private readonly Task<string> _said;

    private ServerProcess(Process process, string address, Task<string> said) => (_process, Address, _said) = (process, address, said);

    /// <summary>Where it listens.</summary>
    public string Address { get; }

    /// <param name="arguments">More than the data folder, the small course and a free port.</param>
    public static async Task<ServerProcess> StartAsync(string data, params string[] arguments)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "TyingClass.Web.dll");
        Process process = Process.Start(new ProcessStartInfo(
            "dotnet", [program, "--data", data, "--lessons", Path.Combine(AppContext.BaseDirectory, "Course"), "--urls", "http://127.0.0.1:0", .. arguments])
        {
            RedirectStandardOutput = true,
        })!;
        using CancellationTokenSource patience = new(Patience);
        const string open = "TyingClass is open at ";
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (!line.StartsWith(open, StringComparison.Ordinal)) continue;
            // Read on, or a full pipe would hold it up.
            return new ServerProcess(process, line[open.Length..], process.StandardOutput.ReadToEndAsync(CancellationToken.None));
        }

        process.Dispose();
        throw new InvalidOperationException("The server ended before it listened.");
    }

    /// <summary>A browser whose cookies outlive the server.</summary>
    public Browser NewBrowser(CookieContainer cookies) =>
        new(new HttpClient(new HttpClientHandler { CookieContainer = cookies, AllowAutoRedirect = false }) { BaseAddress = new Uri(Address) });

    /// <summary>All that stood on its console after its address, once it has ended.</summary>
    public Task<string> SaidAsync() => _said.WaitAsync(Patience, TestContext.Current.CancellationToken);

    /// <summary>At once, as when the plug is pulled out of the machine.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    /// <summary>As systemd and Ctrl+C do it.</summary>
    /// <returns>Its exit code.</returns>
    public async Task<int> StopAsync()
    {
        using Process signal = Process.Start("kill", ["-TERM", _process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        await _process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
        return _process.ExitCode;
    }

    public void Dispose()
    {
        if (!_process.HasExited) Kill();
        _process.Dispose();
    }
}
