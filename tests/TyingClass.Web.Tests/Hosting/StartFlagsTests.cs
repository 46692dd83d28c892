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

    /// <summary>Found on the running program: the word after was taken for the folder, or the folder of everyday use was opened.</summary>
    [Theory]
    [InlineData("--data", "--data"), InlineData("--data", "--data", "--demo"), InlineData("--proxy", "--room", "--proxy")]
    [InlineData("--urls", "--no-browser", "--urls", "--data", "somewhere")]
    public void RefuseUnknown_OptionWithoutItsValue_IsNamed(string named, params string[] args)
    {
        StartRefusedException refused = Assert.Throws<StartRefusedException>(() => StartFlags.RefuseUnknown(args));
        Assert.Contains($"After {named} something is missing.", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Club", "--data", "/home/heron/Fly", "Club"), InlineData("demo", "demo"), InlineData("-data", "-data", "somewhere")]
    public void RefuseUnknown_WordOfNoOption_IsNamed(string named, params string[] args)
    {
        StartRefusedException refused = Assert.Throws<StartRefusedException>(() => StartFlags.RefuseUnknown(args));
        Assert.Contains($"“{named}” belongs to no option.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void RefuseUnknown_WordsThatHelpLists_AreTaken()
    {
        string[] listed = [.. StartFlags.Help.Split(' ', '\n').Select(w => w.Trim()).Where(w => w.StartsWith("--", StringComparison.Ordinal)).Distinct()];
        Assert.True(listed.Length > 10, string.Join(' ', listed));
        // In the list a value is written large: DIR, ADDRESS, FILE; that of --urls is an example.
        string[] alone = [.. listed.Where(w => !System.Text.RegularExpressions.Regex.IsMatch(StartFlags.Help, $@"{w} ([A-Z]+|http)\b"))];
        Assert.Equal(5, alone.Length);
        string[] valued = [.. listed.Except(alone).SelectMany(w => (string[])[w, "somewhere"])];
        StartFlags.RefuseUnknown([.. valued, .. alone, "--urls=http://localhost:5081", "--Logging:LogLevel:Default=Debug"]);
        Assert.True(StartFlags.AsksForHelp(["--help"]));
        Assert.False(StartFlags.AsksForHelp(listed));
    }
}
