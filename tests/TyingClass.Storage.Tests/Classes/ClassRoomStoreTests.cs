using TyingClass.Storage.Classes;
using TyingClass.Storage.Editing;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Classes;

public sealed class ClassRoomStoreTests
{
    [Fact]
    public void Claim_FirstInstructor_HasAClassToInviteInto()
    {
        using TempStore temp = new();
        Person dipper = temp.Store.Instructors.Claim(temp.Store.Instructors.NewCode(), "Dipper", "hash", "Winter tying")!;
        ClassRoom room = Assert.Single(temp.Store.Classes.OfInstructor(dipper.Id));
        Assert.Equal("Winter tying", room.Name);
        Assert.Equal(3, room.Code.Split('-').Length);
        Assert.Equal([room.Id], temp.Store.Classes.All().Select(c => c.Id));
    }

    [Fact]
    public void Claim_AgainFromTheConsole_MakesNoSecondClass()
    {
        using TempStore temp = new();
        Person dipper = temp.Store.Instructors.Claim(temp.Store.Instructors.NewCode(), "Dipper", "hash")!;
        temp.Store.Instructors.Claim(temp.Store.Instructors.NewCode(), "Dipper", "other");
        Assert.Single(temp.Store.Classes.OfInstructor(dipper.Id));
    }

    [Fact]
    public void OfInstructor_TwoInstructors_EachTheirOwn()
    {
        using TempStore temp = new();
        ClassRoom first = temp.Store.Classes.Create("a", "First");
        temp.Clock.Advance(TimeSpan.FromSeconds(1));
        ClassRoom second = temp.Store.Classes.Create("a", "Second");
        ClassRoom other = temp.Store.Classes.Create("b", "Other");
        Assert.Equal([first.Id, second.Id], temp.Store.Classes.OfInstructor("a").Select(c => c.Id));
        Assert.Equal([other.Id], temp.Store.Classes.OfInstructor("b").Select(c => c.Id));
        Assert.Empty(temp.Store.Classes.OfInstructor("c"));
    }

    [Fact]
    public void Code_TypedLoosely_IsTheSameClass()
    {
        using TempStore temp = new();
        ClassRoom room = temp.Store.Classes.Create("a");
        Assert.True(Opens(temp, "  " + room.Code.Replace('-', ' ').ToUpperInvariant()));
        Assert.True(Opens(temp, room.Code.Replace("-", "", StringComparison.Ordinal)));
        Assert.False(Opens(temp, ""));
        Assert.False(Opens(temp, "-"));
    }

    [Fact]
    public void RenewCode_Always_OldOneOpensNothing()
    {
        using TempStore temp = new();
        ClassRoom room = temp.Store.Classes.Create("a");
        ClassRoom renewed = temp.Store.Classes.RenewCode(room.Id)!;
        Assert.NotEqual(room.Code, renewed.Code);
        Assert.False(Opens(temp, room.Code));
        Assert.True(Opens(temp, renewed.Code));
    }

    [Fact]
    public void Rename_FromAStalePage_IsToldAndChangesNothing()
    {
        using TempStore temp = new();
        ClassRoom room = temp.Store.Classes.Create("a", "Tying class");
        EditOutcome<ClassRoom> first = temp.Store.Classes.Rename(room.Id, "Monday class", room.Version)!;
        EditOutcome<ClassRoom> second = temp.Store.Classes.Rename(room.Id, "Winter class", room.Version)!;
        Assert.True(first.Saved);
        Assert.Equal((false, "Monday class"), (second.Saved, second.Current.Name));
        Assert.Equal("Monday class", temp.Store.Classes.Find(room.Id)!.Name);
        Assert.True(temp.Store.Classes.Rename(room.Id, "Winter class", second.Current.Version)!.Saved);
        Assert.Null(temp.Store.Classes.Rename("nowhere", "x", 1));
    }

    [Fact]
    public void Words_Always_256ThatRunTogetherStillMeanOneCode()
    {
        Assert.Equal(256, ClassWords.All.Distinct().Count());
        Assert.All(ClassWords.All, word => Assert.DoesNotContain(ClassWords.All, other => other != word && other.StartsWith(word, StringComparison.Ordinal)));
    }

    // Whether it is the code of a class.
    private static bool Opens(TempStore temp, string code) => !temp.Store.Accounts.WhatKeepsOut(code, "Somebody").Contains(JoinProblem.NoSuchClass);
}
