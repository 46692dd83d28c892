using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Exchange;

/// <summary>Writes a checked export, all within one transaction.</summary>
internal sealed class ClassImporter(ILiteDatabase db, TimeProvider time, ClassExport export)
{
    // What an id is called here: itself where it was free.
    private readonly Dictionary<string, string> ids = new(StringComparer.Ordinal);

    public ImportOutcome Run(string instructorId, IReadOnlyList<HandedOut> passphrases)
    {
        ClassRoom room = ClassRoomStore.CreateIn(db, time, instructorId, export.Class.Name, Zone(export.Class.TimeZone));
        ImmutableArray<(Person, string)> people = [.. export.People.Select((p, i) => (AddPerson(p, room.Id, passphrases[i].Hash), passphrases[i].Passphrase))];
        AddAttempts();
        foreach (Comment comment in export.Comments) CommentStore.InsertIn(db, comment with { Id = Renewed("comments", comment.Id), PersonId = ids[comment.PersonId], ByPersonId = Known(comment.ByPersonId) });
        if (!export.Dates.IsEmpty) ClassDatesStore.Keep(db, new ClassDates(room.Id, export.Dates, 1));
        foreach (ExportedEvening evening in export.Evenings) EveningStore.Keep(db, Of(evening, room.Id));
        foreach (ExportedQuestion question in export.RoomQuestions) AddQuestion(question, room.Id);
        return new ImportOutcome(room, people, []);
    }

    private Person AddPerson(ExportedPerson exported, string classId, string hash)
    {
        Person person = new(Renewed(PersonDocument.Collection, exported.Id), exported.Role, FreeName(PersonStore.CleanName(exported.Name)!), hash, RandomId.New(), exported.JoinedAt, exported.LastSeenAt)
        {
            ClassId = classId,
            MustChoosePassphrase = true,
        };
        PersonStore.People(db).Insert(PersonDocument.From(person, secretHash: null));
        return person;
    }

    private void AddAttempts()
    {
        foreach (Attempt attempt in export.Attempts)
        {
            db.GetCollection(AttemptDocument.Collection).Insert(AttemptDocument.From(attempt with
            {
                Id = Renewed(AttemptDocument.Collection, attempt.Id),
                PersonId = ids[attempt.PersonId],
                Judgments = [.. attempt.Judgments.Select(j => j with { ByPersonId = Known(j.ByPersonId) })],
            }));
        }

        foreach (IGrouping<(string PersonId, string ExerciseId), Attempt> slot in export.Attempts.GroupBy(a => (a.PersonId, a.ExerciseId)))
            StandingDocument.Standings(db).Upsert(StandingDocument.From(Standing.Of(ids[slot.Key.PersonId], slot.Key.ExerciseId, slot.OrderBy(a => a.Number))));
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
        foreach (ExportedAnswer answer in q.Answers) RoomQuestionStore.KeepAnswer(db, question.Id, ids[answer.PersonId], answer.Choice, answer.At);
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
        string here = db.GetCollection(collection).FindById(id) is null ? id : RandomId.New();
        ids[id] = here;
        return here;
    }

    // Whoever judged or commented may be an instructor of the other server: the name stays, the id then points to nobody.
    private string Known(string personId) => ids.GetValueOrDefault(personId, personId);

    private string FreeName(string name)
    {
        string free = name;
        for (int i = 2; !AccountStore.NameIsFree(db, free, exceptPersonId: null); i++)
        {
            string number = FormattableString.Invariant($" {i}");
            free = name[..Math.Min(name.Length, PersonStore.MostNameLength - number.Length)] + number;
        }

        return free;
    }

    private static string? Zone(string id) => TimeZoneInfo.TryFindSystemTimeZoneById(id, out _) ? id : null;
}
