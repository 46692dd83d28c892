using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>The server as a process of its own.</summary>
public sealed class StartTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-start-");
    private readonly List<Process> _started = [];

    [Fact]
    public async Task Server_FirstStart_PrintsItsAddressAndAOneTimeCode()
    {
        Process server = Start("--urls", "http://127.0.0.1:0");

        List<string> lines = await ReadUntilAsync(server, "Stop with");

        Assert.Matches(@"^TyingClass is open at http://127\.0\.0\.1:\d+$", lines[0]);
        Assert.Single(lines, line => System.Text.RegularExpressions.Regex.IsMatch(line, "one-time code: [0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4}$"));
        Assert.True(File.Exists(Path.Combine(_folder.FullName, "class.db")));
    }

    [Fact]
    public async Task Server_SecondOnTheSameFolder_StopsAndNamesIt()
    {
        await ReadUntilAsync(Start("--urls", "http://127.0.0.1:0"), "Stop with");

        Process second = Start("--urls", "http://127.0.0.1:0");
        string complaint = await second.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);

        Assert.True(second.WaitForExit(Patience));
        Assert.Equal(1, second.ExitCode);
        Assert.Contains(_folder.FullName, complaint, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", complaint, StringComparison.Ordinal);
    }

    /// <summary>198.51.100.7 is kept for examples (RFC 5737), so that no machine has it; the other is one this test holds.</summary>
    [Theory]
    [InlineData("http://198.51.100.7:5099", "does not have the address"), InlineData(null, "Another program has that address")]
    public async Task Server_CannotListen_SaysSoInASentenceAndNothingElse(string? url, string said)
    {
        using TcpListener taken = new(IPAddress.Loopback, 0);
        taken.Start();
        Process server = Start("--urls", url ?? $"http://{taken.LocalEndpoint}");
        Task<string> console = server.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        string complaint = await server.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);

        Assert.True(server.WaitForExit(Patience));
        Assert.Equal(1, server.ExitCode);
        Assert.Contains(said, complaint, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", complaint + await console, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Server_NoSuchLessonsFolder_StopsAndSaysSo()
    {
        Process server = Start("--lessons", Path.Combine(_folder.FullName, "nowhere"));
        string complaint = await server.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        Assert.True(server.WaitForExit(Patience));
        Assert.Equal(1, server.ExitCode);
        Assert.Contains("nowhere", complaint, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Server_DataOfANewerProgram_StopsAndSaysSo()
    {
        DataFolder data = DataFolder.At(_folder.FullName);
        new ClassStore(data, TimeProvider.System).Dispose();
        using (LiteDB.LiteDatabase db = new(data.DatabasePath)) db.UserVersion = 99;

        Process server = Start("--urls", "http://127.0.0.1:0");
        string complaint = await server.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);

        Assert.True(server.WaitForExit(Patience));
        Assert.Equal(1, server.ExitCode);
        Assert.Contains("was kept by a newer TyingClass: its format is 99", complaint, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", complaint, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        foreach (Process process in _started)
        {
            if (!process.HasExited) process.Kill();
            process.WaitForExit();
            process.Dispose();
        }

        _folder.Delete(recursive: true);
    }

    private Process Start(params string[] arguments)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "TyingClass.Web.dll");
        string[] lessons = arguments.Contains("--lessons") ? [] : ["--lessons", Path.Combine(AppContext.BaseDirectory, "Course")];
        Process process = Process.Start(new ProcessStartInfo("dotnet", [program, "--data", _folder.FullName, .. lessons, .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        _started.Add(process);
        return process;
    }

    private static async Task<List<string>> ReadUntilAsync(Process process, string last)
    {
        using CancellationTokenSource patience = new(Patience);
        List<string> lines = [];
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            lines.Add(line);
            if (line.StartsWith(last, StringComparison.Ordinal)) return lines;
        }

        Assert.Fail($"The server ended: {string.Join('\n', lines)} {await process.StandardError.ReadToEndAsync(patience.Token)}");
        return lines;
    }
}
