using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Storage.Practice;
using Xunit;

namespace TyingClass.Storage.Tests.People;

public sealed class GuestMovesTests : IDisposable
{
    private static readonly PracticeProblem Problem = new("practice-keel-7", "keel height", 7, 20, "name: a fly");

    private readonly TempStore temp = new();
    private readonly ClassRoom room;
    private readonly Person wren;
    private readonly Person guest;
    private readonly string secret;

    public GuestMovesTests()
    {
        room = temp.Store.Classes.Create("teacher");
        wren = temp.Store.Accounts.Join(room.Code, "Wren", "hash").Person!;
        (guest, secret) = temp.Store.People.AddGuest("on the old phone");
        Send(wren, "first-01", "mine", passes: true);
        Send(guest, "first-01", "as a guest", passes: false);
        Send(guest, "first-01", "as a guest again", passes: true);
        Send(guest, "first-02", "as a guest", passes: true);
        temp.Store.Practice.Add(wren.Id, Problem, "mine", Grades.Passed);
        temp.Store.Practice.Add(guest.Id, Problem, "as a guest", Grades.Failed);
        temp.Store.Comments.Add(guest.Id, "teacher", "Dipper", "first-01", "Who are you?");
        temp.Store.Comments.Add(wren.Id, "teacher", "Dipper", "first-01", "Well done.");
    }

    [Fact]
    public void MoveInto_Account_NumbersGoOnAndStandingsFollow()
    {
        _ = temp.Store.Attempts.StandingsOf(wren.Id);

        GuestMove move = temp.Store.GuestMoves.MoveInto(guest.Id, wren.Id)!;

        Assert.Equal((3, 1, "on the old phone"), (move.Attempts, move.PracticeAnswers, move.GuestLabel));
        Assert.Equal([(1, "mine"), (2, "as a guest"), (3, "as a guest again")], AnswersTo(wren, "first-01"));
        Assert.Equal([("first-01", 3), ("first-02", 1)], StandingsOf(wren));
        Assert.Empty(temp.Store.Attempts.StandingsOf(guest.Id));
        Assert.Equal(2, temp.Store.Comments.To(wren.Id).Length);
        Assert.Null(temp.Store.People.FindGuest(secret));
        Assert.Null(temp.Store.People.FindGuestByMark(guest.GuestMark!));
    }

    [Fact]
    public void MoveInto_AnotherAccountOrOneInTheTrash_IsNotDone()
    {
        Person heron = temp.Store.Accounts.Join(room.Code, "Heron", "hash").Person!;
        Assert.Null(temp.Store.GuestMoves.MoveInto(wren.Id, heron.Id));
        temp.Store.Trash.Remove(heron.Id);
        Assert.Null(temp.Store.GuestMoves.MoveInto(guest.Id, heron.Id));
        Assert.Equal(3, temp.Store.Attempts.AllOf(guest.Id).Length);
    }

    [Fact]
    public void Undo_AfterMoreWork_GivesBackExactlyWhatWasMovedAndLeavesTheRest()
    {
        string attemptsBefore = Written(guest.Id);
        GuestMove move = temp.Store.GuestMoves.MoveInto(guest.Id, wren.Id)!;
        Send(wren, "first-01", "since", passes: false);
        Send(wren, "first-02", "since", passes: false);
        temp.Store.Practice.Add(wren.Id, Problem, "since", Grades.Passed);
        temp.Clock.Advance(TimeSpan.FromDays(29));
        temp.Reopen();

        Assert.Equal(move, Assert.Single(temp.Store.GuestMoves.Into(wren.Id)));
        Assert.True(temp.Store.GuestMoves.Undo(move.Id));

        Assert.Equal(guest, temp.Store.People.FindGuest(secret));
        Assert.Equal(guest, temp.Store.People.FindGuestByMark(guest.GuestMark!));
        Assert.Equal(attemptsBefore, Written(guest.Id));
        Assert.Equal([("first-01", 2), ("first-02", 1)], StandingsOf(guest));
        Assert.Equal([(1, "as a guest")], temp.Store.Practice.Of(guest.Id, Problem.Id).Select(a => (a.Attempt.Number, a.Attempt.AnswerText)));
        Assert.Equal("Who are you?", Assert.Single(temp.Store.Comments.To(guest.Id)).Text);

        Assert.Equal([(1, "mine"), (2, "since")], AnswersTo(wren, "first-01"));
        Assert.Equal([(1, "since")], AnswersTo(wren, "first-02"));
        Assert.Equal([("first-01", 2), ("first-02", 1)], StandingsOf(wren));
        Assert.False(temp.Store.Attempts.StandingOf(wren.Id, "first-02").Passed);
        Assert.Equal([(1, "mine"), (2, "since")], temp.Store.Practice.Of(wren.Id, Problem.Id).Select(a => (a.Attempt.Number, a.Attempt.AnswerText)));
        Assert.Equal("Well done.", Assert.Single(temp.Store.Comments.To(wren.Id)).Text);
        Assert.Empty(temp.Store.GuestMoves.Into(wren.Id));
        Assert.False(temp.Store.GuestMoves.Undo(move.Id));
    }

    [Fact]
    public void Undo_NothingElseDone_LeavesNoStandingBehind()
    {
        Person heron = temp.Store.Accounts.Join(room.Code, "Heron", "hash").Person!;
        GuestMove move = temp.Store.GuestMoves.MoveInto(guest.Id, heron.Id)!;
        temp.Store.GuestMoves.Undo(move.Id);
        Assert.Empty(temp.Store.Attempts.StandingsOf(heron.Id));
        Assert.Empty(temp.Store.Attempts.AllOf(heron.Id));
    }

    [Fact]
    public void Undo_TheFirstOfTwoMoves_LeavesTheSecond()
    {
        GuestMove first = temp.Store.GuestMoves.MoveInto(guest.Id, wren.Id)!;
        (Person other, _) = temp.Store.People.AddGuest();
        Send(other, "first-01", "as another", passes: false);
        GuestMove second = temp.Store.GuestMoves.MoveInto(other.Id, wren.Id)!;

        Assert.True(temp.Store.GuestMoves.Undo(first.Id));
        Assert.Equal([(1, "mine"), (2, "as another")], AnswersTo(wren, "first-01"));
        Assert.True(temp.Store.GuestMoves.Undo(second.Id));
        Assert.Equal([(1, "as another")], AnswersTo(other, "first-01"));
        Assert.Equal([(1, "mine")], AnswersTo(wren, "first-01"));
    }

    [Fact]
    public void Undo_After30Days_IsNotDoneAndTheRecordIsGone()
    {
        GuestMove move = temp.Store.GuestMoves.MoveInto(guest.Id, wren.Id)!;
        temp.Clock.Advance(TimeSpan.FromDays(30) + TimeSpan.FromSeconds(1));
        Assert.Empty(temp.Store.GuestMoves.Into(wren.Id));
        Assert.False(temp.Store.GuestMoves.Undo(move.Id));
        temp.Store.Trash.Empty();
        // Even with the clock put back there is nothing left to bring back.
        temp.Clock.AdjustTime(temp.Clock.GetUtcNow().AddDays(-20));
        Assert.False(temp.Store.GuestMoves.Undo(move.Id));
        Assert.Equal(3, temp.Store.Attempts.Of(wren.Id, "first-01").Length);
    }

    [Fact]
    public void GuestMark_OfManyGuests_IsFourWordsOfItsOwnHoweverTyped()
    {
        Person[] guests = [.. Enumerable.Range(0, 50).Select(_ => temp.Store.People.AddGuest().Guest)];
        Assert.Equal(50, guests.Select(g => g.GuestMark).Distinct().Count());
        Assert.All(guests, g => Assert.Equal(4, g.GuestMark!.Split('-').Length));
        Assert.Equal(guests[7], temp.Store.People.FindGuestByMark("  " + guests[7].GuestMark!.Replace('-', ' ').ToUpperInvariant()));
        Assert.Null(temp.Store.People.FindGuestByMark("- 12 -"));
        Assert.Null(temp.Store.People.FindGuestByMark(guests[7].GuestMark![..^3]));
    }

    [Fact]
    public void GuestMark_OnceJoined_IsGone()
    {
        Person joined = temp.Store.Accounts.Join(room.Code, "Teal", "hash", guest.Id).Person!;
        Assert.Equal((guest.Id, null), (joined.Id, joined.GuestMark));
        Assert.Null(temp.Store.People.FindGuestByMark(guest.GuestMark!));
    }

    public void Dispose() => temp.Dispose();

    private void Send(Person person, string exerciseId, string text, bool passes)
    {
        temp.Store.Attempts.Add(person.Id, exerciseId, text, passes ? Grades.Passed : Grades.Failed);
        temp.Clock.Advance(TimeSpan.FromMinutes(1));
    }

    private IEnumerable<(int Number, string Text)> AnswersTo(Person person, string exerciseId) =>
        temp.Store.Attempts.Of(person.Id, exerciseId).Select(a => (a.Number, a.AnswerText));

    private IEnumerable<(string ExerciseId, int Attempts)> StandingsOf(Person person) =>
        temp.Store.Attempts.StandingsOf(person.Id).OrderBy(s => s.ExerciseId, StringComparer.Ordinal).Select(s => (s.ExerciseId, s.Attempts));

    private string Written(string personId) => string.Join('\n', temp.Store.Attempts.AllOf(personId).Select(a => AttemptDocument.From(a).ToString()));
}
