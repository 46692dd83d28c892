using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

public sealed class StartFlagsTests
{
    [Theory]
    [InlineData("--port", "5081")]
    [InlineData("--dmeo")]
    [InlineData("--lesson", "somewhere", "--data", "elsewhere")]
    public void RefuseUnknown_NoSuchWord_IsNamedAndNothingStarts(params string[] args)
    {
        StartRefusedException refused = Assert.Throws<StartRefusedException>(() => StartFlags.RefuseUnknown(args));
        Assert.Contains($"no option {args[0]}.", refused.Message, StringComparison.Ordinal);
        Assert.Contains("--help", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void RefuseUnknown_WordsThatHelpLists_AreTaken()
    {
        string[] listed = [.. StartFlags.Help.Split(' ', '\n').Select(w => w.Trim()).Where(w => w.StartsWith("--", StringComparison.Ordinal)).Distinct()];
        Assert.True(listed.Length > 10, string.Join(' ', listed));
        StartFlags.RefuseUnknown([.. listed, "--urls=http://localhost:5081", "--Logging:LogLevel:Default=Debug"]);
        Assert.True(StartFlags.AsksForHelp(["--help"]));
        Assert.False(StartFlags.AsksForHelp(listed));
    }
}
