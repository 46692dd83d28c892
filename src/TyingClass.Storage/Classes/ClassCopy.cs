using LiteDB;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Classes;

/// <summary>
/// Makes a class of another one, all within one transaction: plans and demonstrations of its evenings, their dates and those of the lessons,
/// moved on; the questions once put to its room, to be asked again; packet sizes and time zone. Of its people nothing: no account, no answer,
/// no deputy, no count of who sat there.
/// </summary>
internal sealed class ClassCopy(OpenData db, TimeProvider time, ClassRoom from)
{
    public ClassRoom Run(string instructorId, string? name, int days)
    {
        ClassRoom made = ClassRoomStore.CreateIn(db, time, instructorId, name ?? from.Name, from.TimeZoneId) with { Packets = from.Packets };
        ClassRoomStore.Overwrite(db, made);
        foreach (EveningPlan plan in EveningStore.OfClassIn(db, from.Id))
            EveningStore.Keep(db, plan with { ClassId = made.Id, StartsLocal = Later(plan.StartsLocal, days), Students = null, Version = 1 });
        CopyDates(made, days);
        foreach (RoomQuestion question in RoomQuestionStore.OfClassIn(db, from.Id).DistinctBy(q => (q.ExerciseId, q.RecipeText, q.Ask)))
            RoomQuestionStore.Keep(db, question with { Id = RandomId.New(), ClassId = made.Id, Answer = null, ClosedAt = null, IsPrepared = true });
        return made;
    }

    private void CopyDates(ClassRoom made, int days)
    {
        ClassDates dates = ClassDatesStore.OfIn(db, from.Id);
        if (dates.Rows.IsEmpty) return;
        ClassDatesStore.Keep(db,
            new ClassDates(made.Id, [.. dates.Rows.Select(r => r with { OpensLocal = Later(r.OpensLocal, days), DueLocal = Later(r.DueLocal, days) })],
            Version: 1));
    }

    private static DateTime? Later(DateTime? local, int days) => local?.AddDays(days);
}
