using LiteDB;
using TyingClass.Recipes.Supplies;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Classes;

public sealed class ClassGoesOnTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly ClassRoom _last;

    public ClassGoesOnTests() => _last = _temp.Store.Classes.Create("teacher", "Winter", "Europe/Berlin");

    private ClassRoomStore Classes => _temp.Store.Classes;

    [Fact]
    public void Copy_OfAClass_BringsPlansDatesQuestionsAndPacketsAndNobody()
    {
        DateTime first = new(2026, 1, 14, 19, 0, 0);
        Person wren = _temp.Store.Accounts.Add(_last.Id, Role.Student, "Wren", "hash").Person!;
        _temp.Store.Evenings.Save(new EveningPlan(_last.Id, 1)
        {
            StartsLocal = first,
            Plan = "Tub first.",
            Students = 9,
            Flies = [new FlyCount("Slate Minnow", 1, 2)]
        });
        _temp.Store.Evenings.Save(new EveningPlan(_last.Id, 2) { Plan = "No date." });
        _temp.Store.Dates.Save(_last.Id, [new DateRow(DateTargets.Lesson("first"), first.AddDays(-7), null)], 0);
        RoomQuestion asked =
            _temp.Store.RoomQuestions.Put(new RoomQuestion("", _last.Id, "Which way up?", ["up", "down"], default) { ExerciseId = "first-03" });
        _temp.Store.RoomQuestions.Answer(asked.Id, wren.Id, 1);
        _temp.Store.RoomQuestions.Put(new RoomQuestion("", _last.Id, "Which way up?", ["up", "down"], default) { ExerciseId = "first-03" });
        Classes.KeepPackets(_last.Id, Packets.Usual with { Hooks = 100 });
        Classes.SetDeputy(_last.Id, new Deputy(wren.Id, true, []));

        ClassRoom made = Classes.Copy(_last.Id, "teacher", "Next winter", 364)!;
        _temp.Reopen();
        made = Classes.Find(made.Id)!;

        Assert.Equal(("Next winter", "Europe/Berlin", 100), (made.Name, made.TimeZoneId, made.Packets!.Hooks));
        Assert.NotEqual(_last.Code, made.Code);
        EveningPlan evening = _temp.Store.Evenings.Find(made.Id, 1);
        Assert.Equal((new DateTime(2027, 1, 13, 19, 0, 0), "Tub first.", (int?)null), (evening.StartsLocal, evening.Plan, evening.Students));
        Assert.Null(_temp.Store.Evenings.Find(made.Id, 2).StartsLocal);
        Assert.Equal(new DateTime(2027, 1, 6, 19, 0, 0), _temp.Store.Dates.Of(made.Id).Of("lesson:first")!.OpensLocal);
        Assert.Equal("Which way up?", Assert.Single(_temp.Store.RoomQuestions.Prepared(made.Id)).Title);
        Assert.Equal(0, _temp.Store.RoomQuestions.Tally(_temp.Store.RoomQuestions.Prepared(made.Id)[0].Id).Total);
        Assert.Null(_temp.Store.RoomQuestions.Current(made.Id));
        Assert.Empty(_temp.Store.RoomQuestions.OfClass(made.Id));
        Assert.Empty(_temp.Store.Accounts.OfClass(made.Id));
        Assert.Empty(made.Deputies);
    }

    [Fact]
    public void Prepared_PutToTheRoom_StaysOnTheListUntilForgotten()
    {
        _temp.Store.RoomQuestions.Put(new RoomQuestion("", _last.Id, "Nose?", ["up", "down"], default) { ExerciseId = "first-03" });
        ClassRoom made = Classes.Copy(_last.Id, "teacher", null, 7)!;
        RoomQuestion kept = _temp.Store.RoomQuestions.Prepared(made.Id)[0];
        Assert.False(_temp.Store.RoomQuestions.Answer(kept.Id, "anyone", 0));
        _temp.Store.RoomQuestions.Put(kept);
        Assert.True(_temp.Store.RoomQuestions.Current(made.Id)!.TakesAnswers);
        Assert.True(_temp.Store.RoomQuestions.Forget(kept.Id));
        Assert.Empty(_temp.Store.RoomQuestions.Prepared(made.Id));
        Assert.False(_temp.Store.RoomQuestions.Forget(_temp.Store.RoomQuestions.Current(made.Id)!.Id));
    }

    [Fact]
    public void SetArchived_Class_LetsNobodyJoinUntilItIsTakenBack()
    {
        Classes.SetArchived(_last.Id, true);
        Assert.Equal(JoinProblem.NoSuchClass, _temp.Store.Accounts.Join(_last.Code, "Wren", "hash").Problem);
        Classes.SetArchived(_last.Id, false);
        Assert.Equal(JoinProblem.None, _temp.Store.Accounts.Join(_last.Code, "Wren", "hash").Problem);
    }

    [Fact]
    public void SetDeputy_OfTheClass_IsKeptAndTakenBackAndGoesWithThePerson()
    {
        Person wren = _temp.Store.Accounts.Add(_last.Id, Role.Student, "Wren", "hash").Person!;
        Assert.Null(Classes.SetDeputy(_last.Id, new Deputy("stranger", true, [])));
        Classes.SetDeputy(_last.Id, new Deputy(wren.Id, false, [2, 3]));
        _temp.Reopen();
        Assert.True(Classes.Find(_last.Id)!.DeputyOf(wren.Id)!.MayRun(3));
        Assert.False(Classes.Find(_last.Id)!.DeputyOf(wren.Id)!.MayRun(1));
        Classes.SetDeputy(_last.Id, new Deputy(wren.Id, false, []));
        Assert.Empty(Classes.Find(_last.Id)!.Deputies);

        Classes.SetDeputy(_last.Id, new Deputy(wren.Id, true, []));
        _temp.Store.Trash.Remove(wren.Id);
        _temp.Clock.Advance(TimeSpan.FromDays(PersonStore.DaysInTrash + 1));
        _temp.Store.Trash.Empty();
        Assert.Empty(Classes.Find(_last.Id)!.Deputies);
    }

    [Fact]
    public void Find_ClassFromBeforeThereWereDeputies_ReadsWithNone()
    {
        _temp.Store.Dispose();
        using (LiteDatabase db = new(_temp.Folder.DatabasePath))
        {
            ILiteCollection<BsonDocument> classes = db.GetCollection("classes");
            BsonDocument old = classes.FindById(_last.Id);
            foreach (string added in new[] { "archivedTicks", "deputies", "packets" }) Assert.True(old.Remove(added));
            classes.Update(Checksum.Put("classes", old));
        }

        _temp.Reopen();
        ClassRoom read = Classes.Find(_last.Id)!;
        Assert.Equal((_last.Name, (DateTimeOffset?)null, (Packets?)null), (read.Name, read.ArchivedAt, read.Packets));
        Assert.Empty(read.Deputies);
    }

    [Fact]
    public void SetStarts_OneChangedMeanwhile_SetsNone()
    {
        EveningStore evenings = _temp.Store.Evenings;
        DateTime day = new(2026, 1, 14, 19, 0, 0);
        Assert.True(evenings.SetStarts(_last.Id, [new EveningStart(1, day, 0), new EveningStart(2, day.AddDays(7), 0)]));
        Assert.False(evenings.SetStarts(_last.Id, [new EveningStart(1, null, 1), new EveningStart(2, null, 0)]));
        Assert.Equal(day, evenings.Find(_last.Id, 1).StartsLocal);
        Assert.True(evenings.SetStarts(_last.Id, [new EveningStart(1, null, 1), new EveningStart(2, day.AddDays(7), 1)]));
        Assert.Equal(((DateTime?)null, 2, 1), (evenings.Find(_last.Id, 1).StartsLocal, evenings.Find(_last.Id, 1).Version, evenings.Find(_last.Id, 2).Version));
    }

    public void Dispose() => _temp.Dispose();
}
