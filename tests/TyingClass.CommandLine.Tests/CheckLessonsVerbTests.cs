using System.Diagnostics;
using Xunit;

namespace TyingClass.CommandLine.Tests;

public sealed class CheckLessonsVerbTests : IDisposable
{
    private const string Good = "---\ntitle: T\nsummary: S\nconcepts: [keel side]\nminutes: 4\n---\n\n## Words\n\n";
    private const string Exercise = "\n```exercise\nid: x-1\nkind: explain\ntitle: T\nconcepts: [keel side]\nprompt: Why?\nmodel answer: Because.\n```\n";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tyingclass");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void CheckLessons_AllIsWell_ExitsZeroAndRecordsWhenAsked()
    {
        Write("01-a.md", Good + Exercise);

        CommandRun run = CommandRun.Of(_folder, "check-lessons", "--record");

        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains("1 lessons and 1 exercises: all is well.", run.Output, StringComparison.Ordinal);
        Assert.Equal("x-1", File.ReadAllText(Path.Combine(_folder.FullName, "lessons", "exercise-ids.txt")).Trim());
    }

    [Fact]
    public void CheckLessons_SeveralMistakes_ExitsOneWithFileLineAndColumnOfEach()
    {
        Write("01-a.md", Good + "[x](/lessons/nowhere)\n" + Exercise);
        Write("02-b.md", Good.Replace("minutes: 4", "minutes: four", StringComparison.Ordinal) + "[x](javascript:1)\n");

        CommandRun run = CommandRun.Of(_folder, "check-lessons", Path.Combine(_folder.FullName, "lessons"));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains($"{Path.Combine("lessons", "01-a.md")}:10:1: There is no lesson at /lessons/nowhere.", run.Output, StringComparison.Ordinal);
        Assert.Contains($"{Path.Combine("lessons", "02-b.md")}:5:10: ", run.Output, StringComparison.Ordinal);
        Assert.Contains($"{Path.Combine("lessons", "02-b.md")}:10:1: “javascript:”", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void CheckLessons_NoFolder_ExitsTwo() => Assert.Equal(2, CommandRun.Of(_folder, "check-lessons", "nowhere").ExitCode);

    [Fact]
    public async Task CheckLessons_Watch_ChecksAgainWhenAFileIsSaved()
    {
        Write("01-a.md", Good + Exercise);
        using Process process = CommandRun.Start(_folder, "check-lessons", "--watch");
        try
        {
            await WaitForAsync(process, "all is well");
            Write("01-a.md", Good + "[x](/lessons/nowhere)\n" + Exercise);
            await WaitForAsync(process, "There is no lesson at /lessons/nowhere.");
            Write("01-a.md", Good + Exercise);
            await WaitForAsync(process, "all is well");
        }
        finally
        {
            process.Kill();
        }
    }

    private static async Task WaitForAsync(Process process, string text)
    {
        using CancellationTokenSource patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromSeconds(60));
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (line.Contains(text, StringComparison.Ordinal)) return;
        }

        Assert.Fail($"The program ended without saying “{text}”.");
    }

    private void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.Combine(_folder.FullName, "lessons"));
        File.WriteAllText(Path.Combine(_folder.FullName, "lessons", name), text);
    }
}
