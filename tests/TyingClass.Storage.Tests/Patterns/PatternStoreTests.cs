using TyingClass.Storage.Editing;
using TyingClass.Storage.Patterns;
using Xunit;

namespace TyingClass.Storage.Tests.Patterns;

public sealed class PatternStoreTests
{
    [Fact]
    public void Save_LatestExpected_AddsARevisionAndKeepsTheOlder()
    {
        using TempStore temp = new();
        Pattern pattern = temp.Store.Patterns.Create("wren", "Slate Minnow", "first\n", "begun");
        EditOutcome<Pattern> saved = temp.Store.Patterns.Save(pattern.Id, "wren", 1, "Slate Minnow", "second\n", "bigger eyes")!;
        temp.Reopen();
        Assert.True(saved.Saved);
        Assert.Equal(2, temp.Store.Patterns.Find(pattern.Id)!.Revision);
        Assert.Equal(["first\n", "second\n"], temp.Store.Patterns.Revisions(pattern.Id).Select(r => r.RecipeText));
        Assert.Equal(["begun", "bigger eyes"], temp.Store.Patterns.Revisions(pattern.Id).Select(r => r.Note));
    }

    [Fact]
    public void Save_OutdatedRevision_WritesNothingAndGivesTheCurrent()
    {
        using TempStore temp = new();
        Pattern pattern = temp.Store.Patterns.Create("wren", "Slate Minnow", "first");
        temp.Store.Patterns.Save(pattern.Id, "wren", 1, "Slate Minnow", "from the phone");
        EditOutcome<Pattern> late = temp.Store.Patterns.Save(pattern.Id, "wren", 1, "Slate Minnow", "from the desk")!;
        Assert.False(late.Saved);
        Assert.Equal(2, late.Current.Revision);
        Assert.Equal(["first", "from the phone"], temp.Store.Patterns.Revisions(pattern.Id).Select(r => r.RecipeText));
    }

    [Fact]
    public void Save_TextUnchanged_AddsNoRevision()
    {
        using TempStore temp = new();
        Pattern pattern = temp.Store.Patterns.Create("wren", "Slate Minnow", "first");
        Assert.True(temp.Store.Patterns.Save(pattern.Id, "wren", 1, "Slate Minnow", "first")!.Saved);
        Assert.Single(temp.Store.Patterns.Revisions(pattern.Id));
    }

    [Fact]
    public void AnyChange_ByAnotherPerson_DoesNothing()
    {
        using TempStore temp = new();
        Pattern pattern = temp.Store.Patterns.Create("wren", "Slate Minnow", "first");
        Assert.Null(temp.Store.Patterns.Save(pattern.Id, "heron", 1, "Mine", "stolen"));
        Assert.False(temp.Store.Patterns.Trash(pattern.Id, "heron"));
        Assert.Null(temp.Store.Reviews.Ask(pattern.Id, "heron", "class", null));
        Assert.Empty(temp.Store.Patterns.Of("heron"));
        Assert.Equal("first", temp.Store.Patterns.Revision(pattern.Id, 1)!.RecipeText);
    }

    [Fact]
    public void Trash_WithinThirtyDays_ComesBackWithEveryRevision()
    {
        using TempStore temp = new();
        Pattern pattern = temp.Store.Patterns.Create("wren", "Slate Minnow", "first");
        temp.Store.Patterns.Save(pattern.Id, "wren", 1, "Slate Minnow", "second");
        Assert.True(temp.Store.Patterns.Trash(pattern.Id, "wren"));
        Assert.Empty(temp.Store.Patterns.Of("wren"));
        Assert.Null(temp.Store.Patterns.Save(pattern.Id, "wren", 2, "Slate Minnow", "third"));
        temp.Clock.Advance(TimeSpan.FromDays(29));
        Assert.Equal(0, temp.Store.Patterns.EmptyTrash());
        Assert.True(temp.Store.Patterns.Restore(pattern.Id, "wren"));
        Assert.Equal(2, temp.Store.Patterns.Revisions(pattern.Id).Length);
        Assert.Equal(pattern.Id, Assert.Single(temp.Store.Patterns.Of("wren")).Id);
    }

    [Fact]
    public void EmptyTrash_AfterThirtyDays_RemovesItWithRevisionsReviewsAndComments()
    {
        using TempStore temp = new();
        Pattern pattern = temp.Store.Patterns.Create("wren", "Slate Minnow", "first");
        string reviewId = temp.Store.Reviews.Ask(pattern.Id, "wren", "class", null)!.Id;
        temp.Store.Reviews.AddComment(reviewId, "otter", Storage.Reviews.CommentSubject.Whole, "", "Nice.");
        temp.Store.Patterns.Trash(pattern.Id, "wren");
        temp.Clock.Advance(TimeSpan.FromDays(30));
        Assert.Equal(1, temp.Store.Patterns.EmptyTrash());
        Assert.Null(temp.Store.Patterns.Find(pattern.Id));
        Assert.Empty(temp.Store.Patterns.Revisions(pattern.Id));
        Assert.Empty(temp.Store.Reviews.Of(pattern.Id));
        Assert.Empty(temp.Store.Reviews.CommentsOn(pattern.Id));
    }
}
