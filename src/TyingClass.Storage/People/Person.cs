namespace TyingClass.Storage.People;

public enum Role
{
    /// <summary>Someone with a browser and no account.</summary>
    Guest,
    Student,
    Mentor,
    Instructor,
}

/// <summary>Anyone whose work is kept.</summary>
/// <param name="Id">Random; may stand in an address, opens nothing by itself.</param>
/// <param name="Name">Chosen by the person; null for a guest who gave none. Any text: never markup.</param>
/// <param name="PassphraseHash">As the framework's hasher wrote it; null for a guest.</param>
/// <param name="Stamp">Changes with the passphrase: a sign-in made under an older one is void.</param>
public sealed record Person(string Id, Role Role, string? Name, string? PassphraseHash, string Stamp, DateTimeOffset CreatedAt, DateTimeOffset LastSeenAt)
{
    /// <summary>The one class a student or mentor belongs to; null for guests and instructors.</summary>
    public string? ClassId { get; init; }

    /// <summary>Four plain words by which a guest's work can be found and moved into an account; null for everyone else.</summary>
    public string? GuestMark { get; init; }

    /// <summary>In the trash since then; gone for good after <see cref="PersonStore.DaysInTrash"/> days.</summary>
    public DateTimeOffset? RemovedAt { get; init; }

    /// <summary>False for an account made for someone who has not signed in yet.</summary>
    public bool HasBeenHere => !MustChoosePassphrase || LastSeenAt != CreatedAt;

    /// <summary>The passphrase was handed over by the instructor: the person is asked to choose one.</summary>
    public bool MustChoosePassphrase { get; init; }

    /// <summary>The name, or a short label that tells unnamed guests apart.</summary>
    public string Label => Name ?? $"Guest {Id[..4]}";
}
