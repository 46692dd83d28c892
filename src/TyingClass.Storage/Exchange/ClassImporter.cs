using System.Collections.Immutable;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Practice;
using TyingClass.Storage.Reviews;

namespace TyingClass.Storage.Exchange;

/// <summary>Writes the people and everything but the attempts of a checked export, all within one transaction.</summary>
/// <param name="people">What each id of the file is called here: the attempts are there already, under those.</param>
internal sealed class ClassImporter(OpenData db, TimeProvider time, ClassExport export, IReadOnlyDictionary<string, string> people)
{
    // What an id is called here: itself where it was free. By collection: an id that stands for two things in a file must not lead from one to the other.
    private readonly Dictionary<(string Collection, string Id), string> _ids = [];

    public ImportOutcome Run(string instructorId, IReadOnlyList<HandedOut> passphrases)
    {
        ClassRoom room = ClassRoomStore.CreateIn(db, time, instructorId, export.Class.Name, export.Class.TimeZone);
        ImmutableArray<(Person, string)> made = [.. export.People.Select((p, i) => (AddPerson(p, room.Id, passphrases[i].Hash), passphrases[i].Passphrase))];
        foreach (Comment comment in export.Comments)
            CommentStore.InsertIn(db,
                comment with { Id = Renewed("comments", comment.Id), PersonId = Here(comment.PersonId), ByPersonId = Known(comment.ByPersonId) });
        AddPatterns(room.Id);
        foreach (LogEntry entry in export.BenchLog)
            LogDocument.Entries(db).Insert(
                LogDocument.From(
                    entry with
                    {
                        Id = Renewed("bench_log", entry.Id),
                        PersonId = Here(entry.PersonId),
                        ClassId = room.Id,
                        Fly = Here(entry.Fly),
                        PhotoId = null,
                        TrashedAt = null
                    }));
        AddReviewComments();
        foreach (PracticeAnswer answer in export.Practice)
            PracticeStore.InsertIn(db,
                answer with { Attempt = answer.Attempt with { Id = Renewed("practice", answer.Attempt.Id), PersonId = Here(answer.Attempt.PersonId) } });
        if (!export.Dates.IsEmpty) ClassDatesStore.Keep(db, new ClassDates(room.Id, export.Dates, 1));
        foreach (ExportedEvening evening in export.Evenings) EveningStore.Keep(db, Of(evening, room.Id));
        foreach (ExportedQuestion question in export.RoomQuestions) AddQuestion(question, room.Id);
        return new ImportOutcome(room, made, []);
    }

    private Person AddPerson(ExportedPerson exported, string classId, string hash)
    {
        Person person = new(people[exported.Id], exported.Role, FreeName(PersonStore.CleanName(exported.Name)!), hash,
            RandomId.New(), exported.JoinedAt, exported.LastSeenAt)
        {
            ClassId = classId,
            MustChoosePassphrase = true,
        };
        PersonStore.People(db).Insert(PersonDocument.From(person, secretHash: null));
        return person;
    }

    private void AddPatterns(string classId)
    {
        foreach (Pattern p in export.Patterns)
            PatternDocument.Keep(db,
                p with { Id = Renewed("patterns", p.Id), OwnerId = Here(p.OwnerId), BookClassId = p.BookClassId is null ? null : classId, TrashedAt = null });
        foreach (PatternRevision r in export.PatternRevisions)
            PatternDocument.Revisions(db).Insert(PatternDocument.From(r with { PatternId = _ids[("patterns", r.PatternId)] }));
        foreach (Review r in export.Reviews)
            ReviewDocument.Keep(
                db, r with
                {
                    Id = Renewed("reviews", r.Id),
                    PatternId = _ids[("patterns", r.PatternId)],
                    OwnerId = Here(r.OwnerId),
                    ClassId = classId,
                    DecidedById = r.DecidedById is { } by ? Known(by) : null
                });
    }

    private void AddReviewComments()
    {
        foreach (ReviewComment c in export.ReviewComments)
            ReviewDocument.Comments(db).Insert(
                ReviewDocument.From(
                    c with
                    {
                        Id = Renewed("review_comments", c.Id),
                        PatternId = _ids[("patterns", c.PatternId)],
                        ReviewId = _ids[("reviews", c.ReviewId)],
                        ById = Known(c.ById),
                        About = c.Subject == CommentSubject.Log ? _ids.GetValueOrDefault(("bench_log", c.About), c.About) : c.About
                    }));
    }

    private void AddQuestion(ExportedQuestion q, string classId)
    {
        RoomQuestion question = new(Renewed("room_questions", q.Id), classId, q.Title, q.Choices, q.OpenedAt)
        {
            ExerciseId = q.ExerciseId,
            RecipeText = q.RecipeText,
            Ask = q.Ask,
            Answer = q.Answer,
            // What was open on the other server is not open in this room.
            ClosedAt = q.ClosedAt ?? export.ExportedAt,
        };
        RoomQuestionStore.Keep(db, question);
        foreach (ExportedAnswer answer in q.Answers) RoomQuestionStore.KeepAnswer(db, question.Id, Here(answer.PersonId), answer.Choice, answer.At);
    }

    private static EveningPlan Of(ExportedEvening e, string classId) => new(classId, e.Number)
    {
        StartsLocal = e.StartsLocal,
        Plan = e.Plan,
        Demonstrations = e.Demonstrations,
        Students = e.Students,
        Flies = e.Flies,
        Version = 1,
    };

    private string Renewed(string collection, string id)
    {
        string here = db.Records(collection).FindById(id) is null ? id : RandomId.New();
        _ids[(collection, id)] = here;
        return here;
    }

    private TiedFly Here(TiedFly fly) =>
        fly is { Source: FlySource.Pattern, SourceId: { } id } ? fly with { SourceId = _ids.GetValueOrDefault(("patterns", id)) } : fly;

    private string Here(string personId) => people[personId];

    // Whoever judged or commented may be an instructor of the other server: the name stays, the id then points to nobody.
    private string Known(string personId) => people.GetValueOrDefault(personId, personId);

    private string FreeName(string name) =>
        NumberedName.FirstFree(name, PersonStore.MostNameLength, free => AccountStore.NameIsFree(db, free, exceptPersonId: null));
}
