using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Storage.Practice;
using Xunit;

namespace TyingClass.Storage.Tests.People;

public sealed class GuestMovesTests : IDisposable
{
    private static readonly PracticeProblem Problem = new("practice-keel-7", "keel height", 7, 20, "name: a fly");

    private readonly TempStore _temp = new();
    private readonly ClassRoom _room;
    private readonly Person _wren;
    private readonly Person _guest;
    private readonly string _secret;

    public GuestMovesTests()
    {
        _room = _temp.Store.Classes.Create("teacher");
        _wren = _temp.Store.Accounts.Join(_room.Code, "Wren", "hash").Person!;
        (_guest, _secret) = _temp.Store.People.AddGuest("on the old phone");
        Send(_wren, "first-01", "mine", passes: true);
        Send(_guest, "first-01", "as a guest", passes: false);
        Send(_guest, "first-01", "as a guest again", passes: true);
        Send(_guest, "first-02", "as a guest", passes: true);
        _temp.Store.Practice.Add(_wren.Id, Problem, "mine", Grades.Passed);
        _temp.Store.Practice.Add(_guest.Id, Problem, "as a guest", Grades.Failed);
        _temp.Store.Comments.Add(_guest.Id, "teacher", "Dipper", "first-01", "Who are you?");
        _temp.Store.Comments.Add(_wren.Id, "teacher", "Dipper", "first-01", "Well done.");
    }

    [Fact]
    public void MoveInto_Account_NumbersGoOnAndStandingsFollow()
    {
        // What was read before is remembered, and must be forgotten.
        Assert.Single(_temp.Store.Attempts.StandingsOf(_wren.Id));
        Assert.Equal(2, _temp.Store.Attempts.StandingsOf(_guest.Id).Length);

        GuestMove move = _temp.Store.GuestMoves.MoveInto(_guest.Id, _wren.Id)!;

        Assert.Equal((3, 1, "on the old phone"), (move.Attempts, move.PracticeAnswers, move.GuestLabel));
        Assert.Equal([(1, "mine"), (2, "as a guest"), (3, "as a guest again")], AnswersTo(_wren, "first-01"));
        Assert.Equal([("first-01", 3), ("first-02", 1)], StandingsOf(_wren));
        Assert.Empty(_temp.Store.Attempts.StandingsOf(_guest.Id));
        Assert.Equal(2, _temp.Store.Comments.To(_wren.Id).Length);
        Assert.Null(_temp.Store.People.FindGuest(_secret));
        Assert.Null(_temp.Store.People.FindGuestByMark(_guest.GuestMark!));
    }

    [Fact]
    public void MoveInto_AnotherAccountOrOneInTheTrash_IsNotDone()
    {
        Person heron = _temp.Store.Accounts.Join(_room.Code, "Heron", "hash").Person!;
        Assert.Null(_temp.Store.GuestMoves.MoveInto(_wren.Id, heron.Id));
        _temp.Store.Trash.Remove(heron.Id);
        Assert.Null(_temp.Store.GuestMoves.MoveInto(_guest.Id, heron.Id));
        Assert.Equal(3, _temp.Store.Attempts.AllOf(_guest.Id).Length);
    }

    [Fact]
    public void Undo_IntoAnAccountWithoutWorkOfItsOwn_LeavesNoStandingThere()
    {
        Person heron = _temp.Store.Accounts.Join(_room.Code, "Heron", "hash").Person!;
        GuestMove move = _temp.Store.GuestMoves.MoveInto(_guest.Id, heron.Id)!;
        // What was read before is remembered, and must be forgotten.
        Assert.Equal([("first-01", 2), ("first-02", 1)], StandingsOf(heron));
        Assert.True(_temp.Store.GuestMoves.Undo(move.Id));
        Assert.Empty(_temp.Store.Attempts.StandingsOf(heron.Id));
        Assert.Equal([("first-01", 2), ("first-02", 1)], StandingsOf(_guest));
    }

    [Fact]
    public void Undo_AfterMoreWork_GivesBackExactlyWhatWasMovedAndLeavesTheRest()
    {
        string attemptsBefore = Written(_guest.Id);
        GuestMove move = _temp.Store.GuestMoves.MoveInto(_guest.Id, _wren.Id)!;
        Send(_wren, "first-01", "since", passes: false);
        Send(_wren, "first-02", "since", passes: false);
        _temp.Store.Practice.Add(_wren.Id, Problem, "since", Grades.Passed);
        _temp.Clock.Advance(TimeSpan.FromDays(29));
        _temp.Reopen();

        Assert.Equal(move, Assert.Single(_temp.Store.GuestMoves.Into(_wren.Id)));
        Assert.True(_temp.Store.GuestMoves.Undo(move.Id));

        Assert.Equal(_guest, _temp.Store.People.FindGuest(_secret));
        Assert.Equal(_guest, _temp.Store.People.FindGuestByMark(_guest.GuestMark!));
        Assert.Equal(attemptsBefore, Written(_guest.Id));
        Assert.Equal([("first-01", 2), ("first-02", 1)], StandingsOf(_guest));
        Assert.Equal([(1, "as a guest")], _temp.Store.Practice.Of(_guest.Id, Problem.Id).Select(a => (a.Attempt.Number, a.Attempt.AnswerText)));
        Assert.Equal("Who are you?", Assert.Single(_temp.Store.Comments.To(_guest.Id)).Text);

        Assert.Equal([(1, "mine"), (2, "since")], AnswersTo(_wren, "first-01"));
        Assert.Equal([(1, "since")], AnswersTo(_wren, "first-02"));
        Assert.Equal([("first-01", 2), ("first-02", 1)], StandingsOf(_wren));
        Assert.False(_temp.Store.Attempts.StandingOf(_wren.Id, "first-02").Passed);
        Assert.Equal([(1, "mine"), (2, "since")], _temp.Store.Practice.Of(_wren.Id, Problem.Id).Select(a => (a.Attempt.Number, a.Attempt.AnswerText)));
        Assert.Equal("Well done.", Assert.Single(_temp.Store.Comments.To(_wren.Id)).Text);
        Assert.Empty(_temp.Store.GuestMoves.Into(_wren.Id));
        Assert.False(_temp.Store.GuestMoves.Undo(move.Id));
    }

    [Fact]
    public void Undo_NothingElseDone_LeavesNoStandingBehind()
    {
        Person heron = _temp.Store.Accounts.Join(_room.Code, "Heron", "hash").Person!;
        GuestMove move = _temp.Store.GuestMoves.MoveInto(_guest.Id, heron.Id)!;
        _temp.Store.GuestMoves.Undo(move.Id);
        Assert.Empty(_temp.Store.Attempts.StandingsOf(heron.Id));
        Assert.Empty(_temp.Store.Attempts.AllOf(heron.Id));
    }

    [Fact]
    public void Undo_TheFirstOfTwoMoves_LeavesTheSecond()
    {
        GuestMove first = _temp.Store.GuestMoves.MoveInto(_guest.Id, _wren.Id)!;
        (Person other, _) = _temp.Store.People.AddGuest();
        Send(other, "first-01", "as another", passes: false);
        GuestMove second = _temp.Store.GuestMoves.MoveInto(other.Id, _wren.Id)!;

        Assert.True(_temp.Store.GuestMoves.Undo(first.Id));
        Assert.Equal([(1, "mine"), (2, "as another")], AnswersTo(_wren, "first-01"));
        Assert.True(_temp.Store.GuestMoves.Undo(second.Id));
        Assert.Equal([(1, "as another")], AnswersTo(other, "first-01"));
        Assert.Equal([(1, "mine")], AnswersTo(_wren, "first-01"));
    }

    [Fact]
    public void Undo_After30Days_IsNotDoneAndTheRecordIsGone()
    {
        GuestMove move = _temp.Store.GuestMoves.MoveInto(_guest.Id, _wren.Id)!;
        _temp.Clock.Advance(TimeSpan.FromDays(30) + TimeSpan.FromSeconds(1));
        Assert.Empty(_temp.Store.GuestMoves.Into(_wren.Id));
        Assert.False(_temp.Store.GuestMoves.Undo(move.Id));
        _temp.Store.Trash.Empty();
        // Even with the clock put back there is nothing left to bring back.
        _temp.Clock.AdjustTime(_temp.Clock.GetUtcNow().AddDays(-20));
        Assert.False(_temp.Store.GuestMoves.Undo(move.Id));
        Assert.Equal(3, _temp.Store.Attempts.Of(_wren.Id, "first-01").Length);
    }

    [Fact]
    public void GuestMark_OfManyGuests_IsFourWordsOfItsOwnHoweverTyped()
    {
        Person[] guests = [.. Enumerable.Range(0, 50).Select(_ => _temp.Store.People.AddGuest().Guest)];
        Assert.Equal(50, guests.Select(g => g.GuestMark).Distinct().Count());
        Assert.All(guests, g => Assert.Equal(4, g.GuestMark!.Split('-').Length));
        Assert.Equal(guests[7], _temp.Store.People.FindGuestByMark("  " + guests[7].GuestMark!.Replace('-', ' ').ToUpperInvariant()));
        Assert.Null(_temp.Store.People.FindGuestByMark("- 12 -"));
        Assert.Null(_temp.Store.People.FindGuestByMark(guests[7].GuestMark![..^3]));
    }

    [Fact]
    public void GuestMark_OnceJoined_IsGone()
    {
        Person joined = _temp.Store.Accounts.Join(_room.Code, "Teal", "hash", _guest.Id).Person!;
        Assert.Equal((_guest.Id, null), (joined.Id, joined.GuestMark));
        Assert.Null(_temp.Store.People.FindGuestByMark(_guest.GuestMark!));
    }

    public void Dispose() => _temp.Dispose();

    private void Send(Person person, string exerciseId, string text, bool passes)
    {
        _temp.Store.Attempts.Add(person.Id, exerciseId, text, passes ? Grades.Passed : Grades.Failed);
        _temp.Clock.Advance(TimeSpan.FromMinutes(1));
    }

    private IEnumerable<(int Number, string Text)> AnswersTo(Person person, string exerciseId) =>
        _temp.Store.Attempts.Of(person.Id, exerciseId).Select(a => (a.Number, a.AnswerText));

    private IEnumerable<(string ExerciseId, int Attempts)> StandingsOf(Person person) =>
        _temp.Store.Attempts.StandingsOf(person.Id).OrderBy(s => s.ExerciseId, StringComparer.Ordinal).Select(s => (s.ExerciseId, s.Attempts));

    private string Written(string personId) => string.Join('\n', _temp.Store.Attempts.AllOf(personId).Select(a => AttemptDocument.From(a).ToString()));
}
