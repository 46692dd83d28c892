using Xunit;

namespace TyingClass.CommandLine.Tests;

/// <summary>How the program introduces itself to whoever found it beside the other one.</summary>
public sealed class NameTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-name-");

    [Theory]
    [InlineData()]
    [InlineData("--help")]
    public void Program_AloneOrAskedForHelp_ListsItsVerbsUnderItsOwnName(params string[] arguments)
    {
        CommandRun run = CommandRun.Of(_folder, arguments);
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains("tying [command]", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("TyingClass.CommandLine", run.Output, StringComparison.Ordinal);
        Assert.All(["balance", "grade", "check-lessons", "backup", "restore", "export"], verb =>
            Assert.Contains($"\n  {verb} ", run.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal));
    }

    [Fact]
    public void Program_UnknownVerb_IsAnErrorThatLeadsToHelp()
    {
        CommandRun run = CommandRun.Of(_folder, "bakup", "winter.zip");
        Assert.NotEqual(0, run.ExitCode);
        Assert.Contains("--help", run.Errors, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
