using TyingClass.Web.Bench;
using Xunit;

namespace TyingClass.Web.Tests.Bench;

public sealed class PackedTests
{
    [Theory]
    [InlineData("recipe: Slate Minnow\n"), InlineData("åß∂ƒ 12 °C \u001e 🪶"), InlineData(" ")]
    public void Pack_AnyText_ComesBackAndNeedsNoEscaping(string text)
    {
        string packed = Packed.Pack(text);
        Assert.Matches("^[A-Za-z0-9_-]+$", packed);
        Assert.True(Packed.TryUnpack(packed, 1000, out string? back));
        Assert.Equal(text, back);
    }

    [Fact]
    public void TryUnpack_ABombOfZeros_IsRefused()
    {
        string bomb = Packed.Pack(new string('0', 30_000_000));
        Assert.True(bomb.Length < 100, bomb);
        Assert.False(Packed.TryUnpack(bomb, 64 * 1024, out _));
    }

    [Fact]
    public void Unpack_VersionsCutShort_AreNone()
    {
        string packed = Versions.Of("a").With("b").With("c").Pack();
        Assert.Equal("c", Versions.Unpack(packed)!.Current);
        Assert.Null(Versions.Unpack(packed[..^4]));
        Assert.Null(Versions.Unpack(Packed.Pack("9\u001e\u001eonly one")));
    }

    [Fact]
    public void With_MoreVersionsThanAreKept_ForgetsTheOldest()
    {
        Versions versions = Enumerable.Range(1, 60).Aggregate(Versions.Of("0"), (v, i) => v.With($"{i}"));
        Assert.Equal((Versions.Most, "60"), (versions.All.Length, versions.Current));
    }

    [Fact]
    public void With_TheSameGesture_GoesOnWithItsVersion()
    {
        Versions versions = Versions.Of("a").With("b", "size").With("c", "size").With("d", "gape");
        Assert.Equal(["a", "c", "d"], versions.All);
        Assert.Equal("c", versions.Undo().Current);
        Assert.Equal(["a", "c", "e"], versions.Undo().With("e", "gape").All);
    }
}
