using System.Diagnostics;
using System.Text.RegularExpressions;
using Xunit;

namespace TyingClass.Browser.Tests;

/// <summary>The published program as its user starts it: in an empty home, with nothing of ours in its environment and no .NET to be found.</summary>
internal sealed class PublishedRun : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("tyingclass-home");
    private readonly List<string> _lines = [];
    private Process? _process;

    public string Home => _home.FullName;

    public static async Task<PublishedRun> StartAsync(PublishedFolder published, params string[] arguments)
    {
        PublishedRun run = new();
        run._process = run.Begin(published.Starter, arguments);
        using CancellationTokenSource enough = new(Patience);
        while (await run._process.StandardOutput.ReadLineAsync(enough.Token) is { } line)
        {
            run._lines.Add(line);
            if (line.StartsWith("Stop with", StringComparison.Ordinal)) return run;
        }

        Assert.Fail($"The published program ended: {string.Join('\n', run._lines)} {await run._process.StandardError.ReadToEndAsync(enough.Token)}");
        return run;
    }

    /// <summary>What stands behind a few words of the console.</summary>
    public string Said(string before) =>
        _lines.Select(line => Regex.Match(line, $"^{Regex.Escape(before)}(.+)$")).FirstOrDefault(m => m.Success)?.Groups[1].Value
        ?? throw new InvalidOperationException($"The console does not say “{before}”: {string.Join('\n', _lines)}");

    /// <summary>The file of the runtime that this process has loaded, after Linux's own list of what it has mapped.</summary>
    public string LoadedRuntime() =>
        File.ReadLines(FormattableString.Invariant($"/proc/{_process!.Id}/maps")).First(line => line.EndsWith("/libcoreclr.so", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)[^1];

    /// <summary>Another program of the folder, in the same home, to its end.</summary>
    public async Task<(int ExitCode, string Output)> CallAsync(string program, params string[] arguments)
    {
        using Process process = Begin(program, arguments);
        using CancellationTokenSource enough = new(Patience);
        string output = await process.StandardOutput.ReadToEndAsync(enough.Token) + await process.StandardError.ReadToEndAsync(enough.Token);
        await process.WaitForExitAsync(enough.Token);
        return (process.ExitCode, output);
    }

    public async ValueTask DisposeAsync()
    {
        if (_process is { HasExited: false }) _process.Kill();
        if (_process is not null) await _process.WaitForExitAsync();
        _process?.Dispose();
        _home.Delete(recursive: true);
    }

    private Process Begin(string program, string[] arguments)
    {
        ProcessStartInfo start = new(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Home,
        };
        start.Environment.Clear();
        start.Environment["HOME"] = Home;
        start.Environment["PATH"] = "/nowhere";
        return Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
    }
}
