using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;
using TyingClass.Storage.Starts;
using Xunit;

namespace TyingClass.Storage.Tests.Files;

/// <summary>
/// A sign beyond the first 65 536 is kept in two halves, and half of one is no text. Found on the running program: a name cut between them had the whole data
/// file mended and called damaged. Lengths are counted by hand: a fish is two, of 60 that a name may have.
/// </summary>
public sealed class CleanTextTests : IDisposable
{
    private const string Fish = "🐟";

    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData("x", 29), InlineData("", 30)]
    public void Join_NameWithASignAcrossItsEnd_IsKeptWithoutThatSign(string before, int left)
    {
        string code = _temp.Store.Classes.Create("teacher").Code;
        Person joined = _temp.Store.Accounts.Join(code, before + Many(40), "hash").Person!;
        _temp.Reopen();
        Assert.Equal(before + Many(left), _temp.Store.People.Find(joined.Id)!.Name);
        Assert.Empty(_temp.Store.Damage.Lines);
    }

    [Fact]
    public void Lines_SignAcrossTheEnd_IsLeftOut() => Assert.Equal("a\n" + Many(1), CleanText.Lines("a\n" + Many(3), 5));

    [Fact]
    public void FirstFree_SignWhereTheNumberBegins_IsLeftOut()
    {
        string taken = "x" + Many(29) + "y";
        Assert.Equal("x" + Many(28) + " 2", NumberedName.FirstFree(taken, 60, name => name != taken));
    }

    [Fact]
    public void KeepNames_ListCutInASign_IsKeptWithoutThatSign()
    {
        string list = new('x', ClassStart.MostNamesLength - 1);
        Assert.Equal(list, _temp.Store.Starts.KeepNames("a", list + Fish, lastNameFirst: false, "").Names);
        Assert.Empty(_temp.Store.Damage.Lines);
    }

    /// <summary>Whatever else lets one through: it is our mistake, and the file is none the worse.</summary>
    [Fact]
    public void Write_HalfASign_IsRefusedAndTheFileIsNotCalledDamaged()
    {
        Assert.ThrowsAny<ArgumentException>(() => _temp.Store.Starts.KeepNames("a", Fish[..1], lastNameFirst: false, ""));
        Assert.Empty(_temp.Store.Damage.Lines);
        Assert.Equal("Wren", _temp.Store.Starts.KeepNames("a", "Wren", lastNameFirst: false, "").Names);
    }

    private static string Many(int fish) => string.Concat(Enumerable.Repeat(Fish, fish));
}
