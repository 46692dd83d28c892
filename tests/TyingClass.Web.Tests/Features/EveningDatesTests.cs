using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Evenings;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class EveningDatesTests : IDisposable
{
    private static readonly DateTime FirstEvening = new(2026, 12, 10, 19, 0, 0);

    private readonly ClassRoom _room = new();

    private string ClassId => _room.Store.Classes.All()[0].Id;

    [Fact]
    public async Task Set_DatesLookedOver_SkipsHolidaysAndSaysWhatIsOverwritten()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Have(1, FirstEvening.AddDays(-30));
        Have(2, null);
        Have(3, null);

        Sheet look = await (await instructor.OpenAsync("/class/evenings")).FillAndSendAsync("#every-form", "button", ("first", "2026-12-10T19:00"),
            ("every", "7"), ("skip", "2026-12-17\n2026-12-24"));
        Assert.Equal(["2026-12-10T19:00", "2026-12-31T19:00", "2027-01-07T19:00"], look.All(".schedule input[type=datetime-local]").Select(i =>
            ((IHtmlInputElement)i).Value));
        Assert.Contains("One date that stands now would be overwritten", look.Text(".overwrites"), StringComparison.Ordinal);
        Assert.Equal(FirstEvening.AddDays(-30), Start(1));

        Sheet set = await look.FillAndSendAsync("#look", ".button", ("at-3", ""));
        Assert.Contains("The evenings are set", set.Text("[role=status]"), StringComparison.Ordinal);
        Assert.Equal((FirstEvening, FirstEvening.AddDays(21), (DateTime?)null), (Start(1), Start(2), Start(3)));
        Assert.Equal("2026-12-17\n2026-12-24", set.Text("#skip").Replace(' ', '\n'));
    }

    [Fact]
    public async Task DaysToSkipAndSteps_LookedAt_AreThereTheNextTimeAndMayBeEmptied()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Have(1, FirstEvening);
        await (await instructor.OpenAsync("/class/evenings")).FillAndSendAsync("#every-form", "button", ("every", "14"), ("skip", "2026-12-24"));
        Sheet again = await instructor.OpenAsync("/class/evenings");
        Assert.Equal(("14", "2026-12-24"), (((IHtmlInputElement)again.Find("#every")).Value, again.Text("#skip")));
        Sheet wrong = await again.FillAndSendAsync("#every-form", "button", ("every", "often"), ("skip", ""));
        Assert.Equal(("often", ""), (((IHtmlInputElement)wrong.Find("#every")).Value, wrong.Text("#skip")));
        await wrong.FillAndSendAsync("#every-form", "button", ("every", "7"));
        Assert.Equal("", (await instructor.OpenAsync("/class/evenings")).Text("#skip"));
    }

    [Theory]
    [InlineData("first", "soon")]
    [InlineData("every", "0")]
    [InlineData("skip", "Christmas")]
    public async Task Look_WhatCannotBe_SaysWhereAndKeepsTheRest(string field, string value)
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet told = await (await instructor.OpenAsync("/class/evenings")).FillAndSendAsync("#every-form", "button", ("first", "2026-12-10T19:00"),
            ("skip", "2026-12-24"), (field, value));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.True(told.Has($"#every-form [role=alert] a[href='#{field}']"));
        Assert.Equal("true", told.Find("#" + field).GetAttribute("aria-invalid"));
        Assert.EndsWith("#dates", told.Form("#every-form").GetAttribute("action"), StringComparison.Ordinal);
        Assert.True(told.Has("#dates #every-form"));
        if (field != "skip") Assert.Contains("2026-12-24", told.Text("#skip"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Set_SomeoneElseMovedOneMeanwhile_SetsNothingAndShowsBoth()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Have(1, FirstEvening);
        Have(2, FirstEvening.AddDays(7));
        Sheet look = await (await instructor.OpenAsync("/class/evenings")).FillAndSendAsync("#every-form", "button", ("first", "2027-01-10T19:00"));
        Have(2, FirstEvening.AddDays(8));
        Sheet told = await look.FillAndSendAsync("#look", ".button");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Contains("Fri, Dec 18, 2026", told.Text(".schedule"), StringComparison.Ordinal);
        Assert.Equal(FirstEvening, Start(1));
        await told.FillAndSendAsync("#look", ".button");
        Assert.Equal(new DateTime(2027, 1, 10, 19, 0, 0), Start(1));
    }

    [Fact]
    public async Task Evening_Moved_OffersToMoveThoseAfterIt()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Have(1, FirstEvening);
        Have(2, FirstEvening.AddDays(7));
        Have(3, null);
        Have(4, FirstEvening.AddDays(21));
        Sheet offer = await (await instructor.OpenAsync("/class/evenings/1")).FillAndSendAsync("#edit", ".send button", ("starts", "2026-12-11T18:00"));
        Assert.Contains("Move those after evening 1 too?", offer.Text("#look"), StringComparison.Ordinal);
        Assert.Equal("Evening 1 is saved.", offer.Text("#look [role=status]"));
        Assert.Equal(FirstEvening.AddHours(23), Start(1));
        Assert.Equal(FirstEvening.AddDays(7), Start(2));
        await offer.FillAndSendAsync("#look", ".button");
        Assert.Equal((FirstEvening.AddDays(7).AddHours(23), (DateTime?)null, FirstEvening.AddDays(21).AddHours(23)), (Start(2), Start(3), Start(4)));
    }

    [Fact]
    public async Task Evening_SavedWithoutMoving_OffersNothing()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Have(1, FirstEvening);
        Have(2, FirstEvening.AddDays(7));
        Sheet saved = await (await instructor.OpenAsync("/class/evenings/1")).FillAndSendAsync("#edit", ".send button", ("plan", "Mine."));
        Assert.StartsWith("/class/evenings/1", saved.Address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_OfAClassInAnotherZone_SaysEveryTimeOnItsClock()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Storage.Classes.ClassRoom kept = _room.Store.Classes.All()[0];
        _room.Store.Classes.Rename(kept.Id, null, kept.Version, "Asia/Tokyo");
        Browser wren = await _room.NewStudentAsync("Wren");
        await Answers.PassFirstAsync(wren);
        // 19:30 in UTC is 4:30 the next morning there.
        Assert.Contains("Jan 15, 04:30", (await wren.OpenAsync("/exercises/first-01")).Text(".attempts"), StringComparison.Ordinal);
        string id = _room.Store.Accounts.FindByName("Wren")!.Id;
        string seen = (await instructor.OpenAsync($"/class/students/{id}/first-01")).Text("main");
        Assert.Contains("04:30", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("19:30", seen, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_StepOverChangedClocks_KeepsTheTimeOnTheWall()
    {
        EveningLine[] lines = [.. Enumerable.Range(1, 3).Select(n => new EveningLine(n, new EveningPlan("c", n), []))];
        EveningSchedule schedule = EveningSchedule.Every(lines, new DateTime(2026, 3, 25, 19, 0, 0), 7, new HashSet<DateOnly>());
        Assert.All(schedule.Lines, l => Assert.Equal(19, l.Then!.Value.Hour));
        Assert.Equal(new DateTime(2026, 4, 8, 19, 0, 0), schedule.Lines[2].Then);
    }

    public void Dispose() => _room.Dispose();

    private void Have(int number, DateTime? starts)
    {
        EveningPlan now = _room.Store.Evenings.Find(ClassId, number);
        _room.Store.Evenings.Save(now with { StartsLocal = starts, Plan = "Some plan." });
    }

    private DateTime? Start(int number) => _room.Store.Evenings.Find(ClassId, number).StartsLocal;
}
