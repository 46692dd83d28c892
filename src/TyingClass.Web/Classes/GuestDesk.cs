using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.People;
using TyingClass.Storage.Practice;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Classes;

/// <summary>What an instructor who was told a guest's mark learns of the guest's work before moving it.</summary>
public sealed record GuestHolding(string Mark, Person Guest, ImmutableArray<(string Title, int Attempts)> Exercises, int PracticeAnswers)
{
    public bool IsEmpty => Exercises.IsEmpty && PracticeAnswers == 0;
}

/// <param name="Holding">Null when there is trouble.</param>
/// <param name="Trouble">What to tell whoever typed the mark.</param>
public sealed record GuestSearch(GuestHolding? Holding, string? Trouble);

/// <summary>What the desk reads and moves of a guest's work.</summary>
public sealed record GuestStores(PersonStore People, AttemptStore Attempts, PracticeStore Practice, GuestMoves GuestMoves);

/// <summary>Brings in the work of whoever told the instructor the mark of their browser.</summary>
public sealed class GuestDesk(ICourseSource source, GuestStores store, PeopleDesk people, Visitor visitor, AccountLimit limit)
{
    /// <summary>Counted, whether the mark is right or not.</summary>
    public GuestSearch Try(string? mark)
    {
        if (string.IsNullOrWhiteSpace(mark)) return new GuestSearch(null, "Type the four words the student reads out.");
        if (!limit.MayTryMark(visitor.Person!.Id))
            return new GuestSearch(null, $"Too many marks tried. Wait {AccountLimit.Minutes} minutes, then try again. Nothing was moved.");
        return Look(mark) is { } holding ? new GuestSearch(holding, null)
            : new GuestSearch(null,
            "No browser has this mark. Have it read out again from the foot of the Course page; once work was moved or its browser has joined, its mark is "
                + "gone.");
    }

    /// <summary>Not counted: for a mark that was already found.</summary>
    public GuestHolding? Look(string mark)
    {
        if (store.People.FindGuestByMark(mark) is not { GuestMark: { } own } guest) return null;
        Dictionary<string, string> titles = source.Current.Exercises.ToDictionary(e => e.Id, e => e.Title);
        ImmutableArray<Standing> standings = store.Attempts.StandingsOf(guest.Id);
        return new GuestHolding(
            own, guest, [.. standings.OrderBy(s => s.LastAt).Select(s => (titles.GetValueOrDefault(s.ExerciseId, s.ExerciseId), s.Attempts))],
            store.Practice.CountOf(guest.Id));
    }

    /// <returns>What was moved, or what to tell whoever asked for it.</returns>
    public (GuestMove? Move, string? Trouble) Move(string? mark, string? personId)
    {
        GuestSearch found = Try(mark);
        if (found.Holding is not { } holding) return (null, found.Trouble);
        if (string.IsNullOrEmpty(personId) || people.Find(personId) is null) return (null, "Choose the account the work is to stand in. Nothing was moved.");
        return (store.GuestMoves.MoveInto(holding.Guest.Id, personId), null);
    }
}
