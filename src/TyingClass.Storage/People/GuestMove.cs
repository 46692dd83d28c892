namespace TyingClass.Storage.People;

/// <summary>A guest's work that was moved into an account and can still go back.</summary>
/// <param name="GuestLabel">As the guest was called.</param>
public sealed record GuestMove(string Id, string ToPersonId, string GuestLabel, int Attempts, int PracticeAnswers, DateTimeOffset At)
{
    /// <summary>The last moment it can be undone.</summary>
    public DateTimeOffset Until => At.AddDays(PersonStore.DaysInTrash);
}

/// <param name="Number">Which it had with the guest.</param>
internal readonly record struct MovedWork(string Id, int Number);
