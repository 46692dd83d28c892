using TyingClass.Storage.Damages;
using Xunit;

namespace TyingClass.Storage.Tests.Damages;

/// <summary>The count of acknowledged writes beside the data: never in the way of a write or of a start.</summary>
public sealed class LedgerTests : IDisposable
{
    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData("7 0", true)]
    [InlineData("7 3155378975999999999", true)]
    [InlineData("7 -1", false)]
    [InlineData("7 3155378976000000000", false)]
    [InlineData("7", false)]
    [InlineData("seven 0", false)]
    [InlineData("7 noon", false)]
    [InlineData("7 0 0", false)]
    [InlineData("", false)]
    public void Beside_WhatTheFileSays_CountsOnlyWithATimeThereIs(string text, bool counts)
    {
        // Times in ticks of 100 ns from the year 1 to the end of 9999, which DateTimeOffset.MaxValue gives as 3155378975999999999.
        File.WriteAllText(_temp.Folder.CountPath, text);
        using Ledger ledger = new(_temp.Folder);
        Assert.Equal(counts ? 7 : null, ledger.Beside()?.Writes);
    }

    [Fact]
    public void Beside_NoFile_IsNothing()
    {
        using Ledger ledger = new(_temp.Folder);
        Assert.Null(ledger.Beside());
    }

    /// <summary>A link that leads to a disk that is gone, or something else under that name.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Write_CountCannotBeKept_StandsAllTheSame(bool link)
    {
        if (link) File.CreateSymbolicLink(_temp.Folder.CountPath, _temp.PathBeside("gone/class.count"));
        else Directory.CreateDirectory(_temp.Folder.CountPath);
        _temp.AddAnswer(1);
        _temp.Reopen();
        Assert.Single(_temp.Store.Attempts.Of("p1", "keel-03"));
    }

    [Fact]
    public void Write_CountTakenAgainAfterAFault_IsRightAgain()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "/dev/full is a disk without room, of Linux.");
        File.CreateSymbolicLink(_temp.Folder.CountPath, "/dev/full");
        _temp.AddAnswer(1);
        File.Delete(_temp.Folder.CountPath);
        _temp.AddAnswer(2);
        using Ledger ledger = new(_temp.Folder);
        Assert.Equal(new Acknowledged(2, _temp.Clock.GetUtcNow()), ledger.Beside());
    }

    [Fact]
    public void Write_ManyTimes_HoldsTheCountOpenOnceAndLetsItGo()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only Linux says in a folder which files a program has open.");
        for (int i = 1; i <= 10; i++) _temp.AddAnswer(i);
        Assert.Equal(1, Held());
        _temp.Store.Dispose();
        Assert.Equal(0, Held());

        int Held() => Directory.GetFiles("/proc/self/fd").Count(fd => new FileInfo(fd).LinkTarget == _temp.Folder.CountPath);
    }
}
