using System.Collections.Immutable;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Practice;
using TyingClass.Storage.Reviews;

namespace TyingClass.Storage.Exchange;

/// <summary>Classes out of and into this server.</summary>
public sealed class ClassExchange
{
    private readonly Database _database;
    private readonly TimeProvider _time;
    private readonly Lock _importing = new();

    internal ClassExchange(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>
    /// All of one class as it stands at one moment, but for its attempts: those are read later, as <see cref="ClassExport.Attempts"/> is gone through,
    /// with whatever came meanwhile.
    /// </summary>
    /// <returns>Null when there is no such class.</returns>
    public ClassExport? Export(string classId) => _database.Read(db =>
    {
        if (ClassRoomStore.FindIn(db, classId) is not { } room) return null;
        ImmutableArray<Person> people = AccountStore.OfClassIn(db, classId, removed: false);
        ImmutableArray<Pattern> patterns = [.. people.SelectMany(p => PatternStore.OfIn(db, p.Id)).Where(p => p.TrashedAt is null)];
        return new ClassExport
        {
            Format = ClassExport.CurrentFormat,
            ExportedAt = _time.GetUtcNow(),
            Class = new ExportedClass(room.Id, room.Name, room.TimeZoneId, room.CreatedAt),
            People = [.. people.Select(p => new ExportedPerson(p.Id, p.Role, p.Label, p.CreatedAt, p.LastSeenAt))],
            Attempts = people.SelectMany(p => _database.Read(later => AttemptStore.AllOfIn(later, p.Id))),
            Standings = [
                .. people.SelectMany(p => AttemptStore.StandingsOfIn(db, p.Id)).OrderBy(s => s.PersonId, StringComparer.Ordinal).ThenBy(s => s.ExerciseId,
                    StringComparer.Ordinal)],
            Comments = [.. people.SelectMany(p => CommentStore.ToIn(db, p.Id)).OrderBy(c => c.At)],
            Practice = [.. people.SelectMany(p => PracticeStore.AllOfIn(db, p.Id))],
            Patterns = patterns,
            PatternRevisions = [
                .. patterns.SelectMany(
                    p => PatternDocument.Revisions(db).FindAll("patternId = @0", p.Id).Select(PatternDocument.ToRevision).OrderBy(r => r.Number))],
            Reviews = [.. patterns.SelectMany(p => ReviewDocument.Of(db, p.Id)).Where(r => r.ClassId == classId)],
            ReviewComments =
                [.. patterns.SelectMany(p => ReviewDocument.Comments(db).FindAll("patternId = @0", p.Id).Select(ReviewDocument.ToComment).OrderBy(c => c.At))],
            BenchLog = [
                .. people.SelectMany(p => LogDocument.Entries(db).FindAll("personId = @0", p.Id).Select(LogDocument.ToEntry)).Where(e => e.TrashedAt is null)
                    .Select(e => e with { PhotoId = null })],
            Dates = ClassDatesStore.OfIn(db, classId).Rows,
            Evenings = [
                .. EveningStore.OfClassIn(db, classId)
                    .Select(e => new ExportedEvening(e.Number, e.StartsLocal, e.Plan, e.Demonstrations, e.Students, e.Flies))],
            RoomQuestions = [.. RoomQuestionStore.OfClassIn(db, classId).Where(q => !q.IsPrepared).Select(q => Of(q, RoomQuestionStore.AnswersIn(db, q.Id)))],
        };
    });

    /// <summary>
    /// Makes a new class of an export, taught by <paramref name="instructorId"/>. Ids and names that are taken here are renewed. It comes in piece by piece,
    /// so that others go on working beside it, and nobody sees anything of it before all of it is there.
    /// </summary>
    /// <param name="passphrases">As many as there are people: each gets one, to be handed over and changed at the first visit.</param>
    /// <param name="slips">What is to be handed over to them, kept in the same stroke; null for nothing.</param>
    /// <returns>The class, or everything that is wrong with the export; then nothing was kept.</returns>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    public ImportOutcome Import(
        ClassExport export, string instructorId, IReadOnlyList<HandedOut> passphrases, Func<ImportOutcome, SealedSlips>? slips = null)
    {
        ArgumentNullException.ThrowIfNull(export);
        ArgumentNullException.ThrowIfNull(passphrases);
        ImmutableArray<string> problems = ImportCheck.Problems(export);
        if (!problems.IsEmpty) return new ImportOutcome(null, [], problems);
        if (passphrases.Count < export.People.Length) throw new ArgumentException("Each person needs a passphrase.", nameof(passphrases));
        lock (_importing)
        {
            StagedAttempts.UndoAll(_database);
            StagedAttempts staged = StagedAttempts.Begin(_database, _time.GetUtcNow(), export);
            try
            {
                staged.Add(export.Attempts);
                return _database.Write(db =>
                {
                    ImportOutcome outcome = new ClassImporter(db, _time, export, staged.People).Run(instructorId, passphrases);
                    if (slips is not null) SlipStore.KeepIn(db, slips(outcome));
                    staged.Adopt(db);
                    return outcome;
                });
            }
            catch
            {
                TryUndo();
                throw;
            }
        }
    }

    /// <summary>Takes away what an import left behind that was cut off by the end of the program; leaves one that is under way alone.</summary>
    /// <exception cref="StorageException">The disk failed; the next call goes on.</exception>
    public void UndoUnfinished()
    {
        if (!_importing.TryEnter()) return;
        try
        {
            StagedAttempts.UndoAll(_database);
        }
        finally
        {
            _importing.Exit();
        }
    }

    private void TryUndo()
    {
        try
        {
            StagedAttempts.UndoAll(_database);
        }
        catch (StorageException)
        {
            // Nobody sees what is left; it goes with the next import or the next start.
        }
    }

    private static ExportedQuestion Of(RoomQuestion q, ImmutableArray<ExportedAnswer> answers) =>
        new(q.Id, q.Title, q.Choices, q.OpenedAt, q.ExerciseId, q.RecipeText, q.Ask, q.Answer, q.ClosedAt, answers);
}

/// <param name="Passphrase">Told to one person, kept nowhere.</param>
/// <param name="Hash">As the framework's hasher wrote it.</param>
public sealed record HandedOut(string Passphrase, string Hash);

/// <param name="Room">Null when something is wrong with the export.</param>
/// <param name="People">With the passphrase of each.</param>
public sealed record ImportOutcome(ClassRoom? Room, ImmutableArray<(Person Person, string Passphrase)> People, ImmutableArray<string> Problems);
