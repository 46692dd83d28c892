using System.Diagnostics;
using Xunit;

namespace TyingClass.Browser.Tests;

/// <summary>
/// What <c>dotnet publish</c> gives, published once for all stories about it. TYINGCLASS_PUBLISHED names a folder that was published
/// before, for whoever works on a story.
/// </summary>
public sealed class PublishedFolder : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(8);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tyingclass-published");

    /// <summary>A folder of somebody else's that happens to be called lessons stands beside it.</summary>
    public string Path { get; private set; } = "";

    public string Starter => System.IO.Path.Combine(Path, "TyingClass");

    public string CommandLine => System.IO.Path.Combine(Path, "tying");

    public async ValueTask InitializeAsync()
    {
        Directory.CreateDirectory(System.IO.Path.Combine(_folder.FullName, "lessons"));
        Path = System.IO.Path.Combine(_folder.FullName, "TyingClass");
        if (Environment.GetEnvironmentVariable("TYINGCLASS_PUBLISHED") is { Length: > 0 } made)
        {
            Path = made;
            return;
        }

        ProcessStartInfo publish = new(
            "dotnet",
            ["publish", Project(), "-c", "Release", "-r", "linux-x64", "--self-contained", "-o", Path, "--nologo", "-v", "q", "-p:RunAnalyzers=false",
                "-nodeReuse:false"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // The test host's own build settings are none of the publishing's business.
        foreach (string name in publish.Environment.Keys.Where(k => k.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList())
            publish.Environment.Remove(name);
        using Process process = Process.Start(publish) ?? throw new InvalidOperationException("dotnet did not start.");
        using CancellationTokenSource enough = new(Patience);
        Task<string> output = process.StandardOutput.ReadToEndAsync(enough.Token), errors = process.StandardError.ReadToEndAsync(enough.Token);
        await process.WaitForExitAsync(enough.Token);
        Assert.True(process.ExitCode == 0, $"Publishing failed: {await output} {await errors}");
    }

    public ValueTask DisposeAsync()
    {
        _folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }

    private static string Project()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (System.IO.Path.Combine(at.FullName, "src", "TyingClass.Web") is var project && Directory.Exists(project)) return project;
        throw new DirectoryNotFoundException("The repository is not above the tests.");
    }
}
