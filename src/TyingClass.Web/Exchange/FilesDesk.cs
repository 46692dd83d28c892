using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;
using TyingClass.Storage.Instructors;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Hosting;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Exchange;

/// <param name="Ticket">For <see cref="PassphraseSlips"/>; null when nothing was made.</param>
public sealed record FilesOutcome(string? Ticket, ImmutableArray<string> Problems);

/// <summary>What files are made of, and the day they are named by.</summary>
public sealed record FilesThere(ClassExchange Exchange, InstructorStore Instructors, PageFiles Backups, TimeProvider Time);

/// <summary>What leaves or enters the server as a file: registers, classes, backups.</summary>
public sealed class FilesDesk(FilesThere there, ClassAccess access, Visitor visitor, AccountSignIn account, PassphraseSlips slips, RegisterCsv register)
{
    public const long MostBytes = 1L << 30;

    public ClassRoom? Room => access.Current;

    /// <summary>A backup holds every class of the server: for whoever came first and set it up.</summary>
    public bool MayBackUp => visitor.Person is { Role: Role.Instructor } person && there.Instructors.Find()?.Id == person.Id;

    public (string Name, byte[] Bytes)? RegisterFile() => Room is { } room ? ($"register-{Stem(room)}.csv", register.Of(room)) : null;

    /// <exception cref="StorageException">It could not be written whole; nothing was sent.</exception>
    public async Task<(string Name, FileStream File)?> ClassFileAsync(CancellationToken cancel) =>
        Room is { } room && there.Exchange.Export(room.Id) is { } export
            ? ($"class-{Stem(room)}.json", await there.Backups.MakeAsync(export, cancel)) : null;

    /// <summary>Makes a new class of an export.</summary>
    public async Task<FilesOutcome> ImportAsync(Stream json, CancellationToken cancel)
    {
        (ClassExport? export, string? problem) = await ExportJson.ReadAsync(json, cancel);
        if (export is null) return new FilesOutcome(null, [problem!]);
        // Hashing is slow on purpose: before the store is locked, and no more of it than people there can be.
        if (export.People.Length > 1000) return new FilesOutcome(null, ["$.people: more than 1000 people are no class."]);
        HandedOut[] passphrases =
            [.. export.People.AsParallel().AsOrdered().Select(_ => HandedPassphrase.New()).Select(p => new HandedOut(p, account.Hash(p)))];
        string? ticket = null;
        ImportOutcome outcome = there.Exchange.Import(export, visitor.Person!.Id, passphrases, made =>
        {
            SealedSlips sheet = Seal(made.Room!, made.People.Select(p => new Slip(p.Person.Label, p.Passphrase)));
            ticket = sheet.Ticket;
            return sheet;
        });
        return new FilesOutcome(ticket, outcome.Problems);
    }

    public (string Name, FileStream File, BackupContents Contents) Backup()
    {
        (FileStream file, BackupContents contents) = there.Backups.Make();
        return ($"tyingclass-backup-{Day()}.zip", file, contents);
    }

    private SealedSlips Seal(ClassRoom room, IEnumerable<Slip> made) =>
        slips.Seal(visitor.Person!.Id, new SlipSheet($"Imported: {room.Name}", [.. made], room.Id));

    private string Stem(ClassRoom room)
    {
        StringBuilder stem = new();
        foreach (char c in room.Name.ToLowerInvariant()) stem.Append(char.IsAsciiLetterOrDigit(c) ? c : '-');
        return $"{stem}-{Day()}";
    }

    private string Day() => there.Time.GetUtcNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
