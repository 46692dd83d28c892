using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Instructors;

public sealed class InstructorStoreTests
{
    [Fact]
    public void Claim_RightCode_MakesTheInstructorOnce()
    {
        using TempStore temp = new();
        string code = temp.Store.Instructors.NewCode();

        Person? claimed = temp.Store.Instructors.Claim(code, "Dipper", "hash");

        Assert.NotNull(claimed);
        Assert.Equal((Role.Instructor, "Dipper", "hash"), (claimed.Role, claimed.Name, claimed.PassphraseHash));
        Assert.Null(temp.Store.Instructors.Claim(code, "Thief", "other"));
        temp.Reopen();
        Assert.Equal(claimed, temp.Store.Instructors.Find());
    }

    [Fact]
    public void Claim_CodeTypedLoosely_IsTheSameCode()
    {
        using TempStore temp = new();
        string code = temp.Store.Instructors.NewCode();
        string loose = " " + code.Replace("-", " ", StringComparison.Ordinal).ToLowerInvariant().Replace('0', 'o').Replace('1', 'l');
        Assert.NotNull(temp.Store.Instructors.Claim(loose, null, "hash"));
    }

    [Fact]
    public void Claim_WrongCode_ChangesNothing()
    {
        using TempStore temp = new();
        string code = temp.Store.Instructors.NewCode();
        Assert.Null(temp.Store.Instructors.Claim("0000-0000-0000", "Thief", "hash"));
        Assert.Null(temp.Store.Instructors.Find());
        Assert.NotNull(temp.Store.Instructors.Claim(code, "Dipper", "hash"));
    }

    [Fact]
    public void NewCode_BeforeTheFirstIsUsed_VoidsTheFirst()
    {
        using TempStore temp = new();
        string first = temp.Store.Instructors.NewCode();
        string second = temp.Store.Instructors.NewCode();
        Assert.Null(temp.Store.Instructors.Claim(first, "Dipper", "hash"));
        Assert.NotNull(temp.Store.Instructors.Claim(second, "Dipper", "hash"));
    }

    [Fact]
    public void Claim_SecondCode_GivesTheSamePersonANewPassphraseAndStamp()
    {
        using TempStore temp = new();
        Person before = temp.Store.Instructors.Claim(temp.Store.Instructors.NewCode(), "Dipper", "old")!;
        Person after = temp.Store.Instructors.Claim(temp.Store.Instructors.NewCode(), "Dipper", "new")!;
        Assert.Equal((before.Id, "new"), (after.Id, after.PassphraseHash));
        Assert.NotEqual(before.Stamp, after.Stamp);
        Assert.Single(temp.Store.People.All());
    }

    [Fact]
    public async Task Claim_TwoAtOnce_OnlyOneWins()
    {
        using TempStore temp = new();
        string code = temp.Store.Instructors.NewCode();
        Person?[] claims = await Task.WhenAll(Enumerable.Range(0, 8).Select(i =>
            Task.Run(() => temp.Store.Instructors.Claim(code, $"n{i}", "hash"), TestContext.Current.CancellationToken)));
        Assert.Single(claims, c => c is not null);
    }
}
