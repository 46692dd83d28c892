using LiteDB;
using TyingClass.Recipes.Supplies;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Classes;

public sealed class ClassGoesOnTests : IDisposable
{
    private readonly TempStore temp = new();
    private readonly ClassRoom last;

    public ClassGoesOnTests() => last = temp.Store.Classes.Create("teacher", "Winter", "Europe/Berlin");

    private ClassRoomStore Classes => temp.Store.Classes;

    [Fact]
    public void Copy_OfAClass_BringsPlansDatesQuestionsAndPacketsAndNobody()
    {
        DateTime first = new(2026, 1, 14, 19, 0, 0);
        Person wren = temp.Store.Accounts.Add(last.Id, Role.Student, "Wren", "hash").Person!;
        temp.Store.Evenings.Save(new EveningPlan(last.Id, 1) { StartsLocal = first, Plan = "Tub first.", Students = 9,
            Flies = [new FlyCount("Slate Minnow", 1, 2)] });
        temp.Store.Evenings.Save(new EveningPlan(last.Id, 2) { Plan = "No date." });
        temp.Store.Dates.Save(last.Id, [new DateRow(DateTargets.Lesson("first"), first.AddDays(-7), null)], 0);
        RoomQuestion asked = temp.Store.RoomQuestions.Put(new RoomQuestion("", last.Id, "Which way up?", ["up", "down"], default) { ExerciseId = "first-03" });
        temp.Store.RoomQuestions.Answer(asked.Id, wren.Id, 1);
        temp.Store.RoomQuestions.Put(new RoomQuestion("", last.Id, "Which way up?", ["up", "down"], default) { ExerciseId = "first-03" });
        Classes.KeepPackets(last.Id, Packets.Usual with { Hooks = 100 });
        Classes.SetDeputy(last.Id, new Deputy(wren.Id, true, []));

        ClassRoom made = Classes.Copy(last.Id, "teacher", "Next winter", 364)!;
        temp.Reopen();
        made = Classes.Find(made.Id)!;

        Assert.Equal(("Next winter", "Europe/Berlin", 100), (made.Name, made.TimeZoneId, made.Packets!.Hooks));
        Assert.NotEqual(last.Code, made.Code);
        EveningPlan evening = temp.Store.Evenings.Find(made.Id, 1);
        Assert.Equal((new DateTime(2027, 1, 13, 19, 0, 0), "Tub first.", (int?)null), (evening.StartsLocal, evening.Plan, evening.Students));
        Assert.Null(temp.Store.Evenings.Find(made.Id, 2).StartsLocal);
        Assert.Equal(new DateTime(2027, 1, 6, 19, 0, 0), temp.Store.Dates.Of(made.Id).Of("lesson:first")!.OpensLocal);
        Assert.Equal("Which way up?", Assert.Single(temp.Store.RoomQuestions.Prepared(made.Id)).Title);
        Assert.Equal(0, temp.Store.RoomQuestions.Tally(temp.Store.RoomQuestions.Prepared(made.Id)[0].Id).Total);
        Assert.Null(temp.Store.RoomQuestions.Current(made.Id));
        Assert.Empty(temp.Store.RoomQuestions.OfClass(made.Id));
        Assert.Empty(temp.Store.Accounts.OfClass(made.Id));
        Assert.Empty(made.Deputies);
    }

    [Fact]
    public void Prepared_PutToTheRoom_StaysOnTheListUntilForgotten()
    {
        temp.Store.RoomQuestions.Put(new RoomQuestion("", last.Id, "Nose?", ["up", "down"], default) { ExerciseId = "first-03" });
        ClassRoom made = Classes.Copy(last.Id, "teacher", null, 7)!;
        RoomQuestion kept = temp.Store.RoomQuestions.Prepared(made.Id)[0];
        Assert.False(temp.Store.RoomQuestions.Answer(kept.Id, "anyone", 0));
        temp.Store.RoomQuestions.Put(kept);
        Assert.True(temp.Store.RoomQuestions.Current(made.Id)!.TakesAnswers);
        Assert.True(temp.Store.RoomQuestions.Forget(kept.Id));
        Assert.Empty(temp.Store.RoomQuestions.Prepared(made.Id));
        Assert.False(temp.Store.RoomQuestions.Forget(temp.Store.RoomQuestions.Current(made.Id)!.Id));
    }

    [Fact]
    public void SetArchived_Class_LetsNobodyJoinUntilItIsTakenBack()
    {
        Classes.SetArchived(last.Id, true);
        Assert.Equal(JoinProblem.NoSuchClass, temp.Store.Accounts.Join(last.Code, "Wren", "hash").Problem);
        Classes.SetArchived(last.Id, false);
        Assert.Equal(JoinProblem.None, temp.Store.Accounts.Join(last.Code, "Wren", "hash").Problem);
    }

    [Fact]
    public void SetDeputy_OfTheClass_IsKeptAndTakenBackAndGoesWithThePerson()
    {
        Person wren = temp.Store.Accounts.Add(last.Id, Role.Student, "Wren", "hash").Person!;
        Assert.Null(Classes.SetDeputy(last.Id, new Deputy("stranger", true, [])));
        Classes.SetDeputy(last.Id, new Deputy(wren.Id, false, [2, 3]));
        temp.Reopen();
        Assert.True(Classes.Find(last.Id)!.DeputyOf(wren.Id)!.MayRun(3));
        Assert.False(Classes.Find(last.Id)!.DeputyOf(wren.Id)!.MayRun(1));
        Classes.SetDeputy(last.Id, new Deputy(wren.Id, false, []));
        Assert.Empty(Classes.Find(last.Id)!.Deputies);

        Classes.SetDeputy(last.Id, new Deputy(wren.Id, true, []));
        temp.Store.Trash.Remove(wren.Id);
        temp.Clock.Advance(TimeSpan.FromDays(PersonStore.DaysInTrash + 1));
        temp.Store.Trash.Empty();
        Assert.Empty(Classes.Find(last.Id)!.Deputies);
    }

    [Fact]
    public void Find_ClassFromBeforeThereWereDeputies_ReadsWithNone()
    {
        temp.Store.Dispose();
        using (LiteDatabase db = new(temp.Folder.DatabasePath))
        {
            ILiteCollection<BsonDocument> classes = db.GetCollection("classes");
            BsonDocument old = classes.FindById(last.Id);
            foreach (string added in new[] { "archivedTicks", "deputies", "packets" }) Assert.True(old.Remove(added));
            classes.Update(old);
        }

        temp.Reopen();
        ClassRoom read = Classes.Find(last.Id)!;
        Assert.Equal((last.Name, (DateTimeOffset?)null, (Packets?)null), (read.Name, read.ArchivedAt, read.Packets));
        Assert.Empty(read.Deputies);
    }

    [Fact]
    public void SetStarts_OneChangedMeanwhile_SetsNone()
    {
        EveningStore evenings = temp.Store.Evenings;
        DateTime day = new(2026, 1, 14, 19, 0, 0);
        Assert.True(evenings.SetStarts(last.Id, [new EveningStart(1, day, 0), new EveningStart(2, day.AddDays(7), 0)]));
        Assert.False(evenings.SetStarts(last.Id, [new EveningStart(1, null, 1), new EveningStart(2, null, 0)]));
        Assert.Equal(day, evenings.Find(last.Id, 1).StartsLocal);
        Assert.True(evenings.SetStarts(last.Id, [new EveningStart(1, null, 1), new EveningStart(2, day.AddDays(7), 1)]));
        Assert.Equal(((DateTime?)null, 2, 1), (evenings.Find(last.Id, 1).StartsLocal, evenings.Find(last.Id, 1).Version, evenings.Find(last.Id, 2).Version));
    }

    public void Dispose() => temp.Dispose();
}
