using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.People;

public sealed class PersonStoreTests
{
    [Fact]
    public void FindGuest_BySecret_FindsThatGuestOnly()
    {
        using TempStore temp = new();
        (Person wren, string secret) = temp.Store.People.AddGuest("Wren");
        temp.Store.People.AddGuest("Heron");
        temp.Reopen();
        Assert.Equal(wren, temp.Store.People.FindGuest(secret));
        Assert.Null(temp.Store.People.FindGuest(secret[..^1]));
        Assert.Null(temp.Store.People.FindGuest(wren.Id));
    }

    [Fact]
    public void AddGuest_Always_SecretIsNowhereInTheFiles()
    {
        using TempStore temp = new();
        (Person guest, string secret) = temp.Store.People.AddGuest();
        temp.Store.Dispose();
        string[] files = [.. Directory.GetFiles(temp.Folder.Path).Select(File.ReadAllText)];
        // What is kept as text can be found this way at all.
        Assert.Contains(files, text => text.Contains(guest.Id, StringComparison.Ordinal));
        Assert.All(files, text => Assert.DoesNotContain(secret, text, StringComparison.Ordinal));
        temp.Reopen();
    }

    [Theory]
    [InlineData("  Wren  ", "Wren")]
    [InlineData("   ", null)]
    [InlineData(null, null)]
    [InlineData("a\u0000b\nc", "abc")]
    [InlineData("<script>alert(1)</script>", "<script>alert(1)</script>")]
    public void Rename_AnyText_KeepsItCleaned(string? typed, string? kept)
    {
        using TempStore temp = new();
        (Person guest, _) = temp.Store.People.AddGuest("before");
        Assert.True(temp.Store.People.Rename(guest.Id, typed));
        Assert.Equal(kept, temp.Store.People.Find(guest.Id)!.Name);
    }

    [Fact]
    public void Rename_LongName_IsCut()
    {
        using TempStore temp = new();
        (Person guest, _) = temp.Store.People.AddGuest(new string('n', 500));
        Assert.Equal(PersonStore.MostNameLength, guest.Name!.Length);
    }

    [Fact]
    public void Rename_UnknownPerson_IsFalse()
    {
        using TempStore temp = new();
        Assert.False(temp.Store.People.Rename("nobody", "Wren"));
    }

    [Fact]
    public void All_Always_OldestFirst()
    {
        using TempStore temp = new();
        temp.Store.People.AddGuest("first");
        temp.Clock.Advance(TimeSpan.FromSeconds(1));
        temp.Store.People.AddGuest("second");
        Assert.Equal(["first", "second"], temp.Store.People.All().Select(p => p.Name));
    }
}
