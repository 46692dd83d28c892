using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>What a script gets that redraws the bench as it is edited.</summary>
public sealed class BenchLiveTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    [Fact]
    public async Task Live_AnEdit_SendsOnlyThePartsThatChange()
    {
        BenchPage bench = (await OpenAsync()).Slide("parts[0].size", "1.5");
        Sheet brief = await bench.Sheet.Browser.PostAsync("/bench",
            [.. bench.Fields(), KeyValuePair.Create("live", "brief"), KeyValuePair.Create("gesture", "parts[0].size")]);
        Assert.Contains("flips", brief.Text(".bench-verdict"), StringComparison.Ordinal);
        Assert.True(brief.Has("#bench-plate svg") && brief.Has("#bench-ledger svg") && !brief.Has("header") && !brief.Has("svg.fly-front"));
        Sheet whole = await bench.Sheet.Browser.PostAsync("/bench", [.. bench.Fields(), KeyValuePair.Create("live", "whole")]);
        Assert.True(whole.Has("svg.fly-front"));
    }

    [Fact]
    public async Task Live_DoubtOfTheRetrieve_ComesByItself_AndWithAPageAtOnce()
    {
        BenchPage bench = await OpenAsync();
        string onThePage = bench.Sheet.Text("#retrieve-doubt");
        Sheet whole = await bench.Sheet.Browser.PostAsync("/bench", [.. bench.Fields(), new("live", "whole")]);
        Sheet doubt = await bench.Sheet.Browser.PostAsync("/bench", [.. bench.Fields(), new("live", "doubt")]);

        Assert.NotEmpty(onThePage);
        Assert.Equal("", whole.Text("#retrieve-doubt"));
        Assert.True(whole.Find("#retrieve-doubt").HasAttribute("data-later"));
        Assert.Equal(onThePage, doubt.Text("#retrieve-doubt"));
        Assert.False(doubt.Find("#retrieve-doubt").HasAttribute("data-later") || doubt.Has("svg"));
    }

    [Fact]
    public async Task Live_OneDrag_IsOneStepOfUndo()
    {
        BenchPage bench = await OpenAsync();
        foreach (string size in (string[])["2.8", "2.2", "1.6"])
        {
            Sheet answer = await bench.Slide("parts[0].size", size).Sheet.Browser.PostAsync("/bench",
                [.. bench.Fields(), KeyValuePair.Create("live", "brief"), KeyValuePair.Create("gesture", "parts[0].size")]);
            ((AngleSharp.Html.Dom.IHtmlInputElement)bench.Sheet.Find("[name=h]")).Value = answer.Find("[name=h]").GetAttribute("value")!;
            bench.Fill("parts[0].size", $"{size} mm").WriteText(((AngleSharp.Html.Dom.IHtmlTextAreaElement)answer.Find("#text")).Value);
            ((AngleSharp.Html.Dom.IHtmlInputElement)bench.Sheet.Find("[name='v:parts[0].size']")).Value = size;
        }

        bench.Sheet.Find("button[value=undo]").RemoveAttribute("disabled");
        Assert.Equal("3 mm", (await bench.PressAsync("undo")).Field("parts[0].size"));
    }

    private Task<BenchPage> OpenAsync() => BenchPage.OpenAsync(room.NewBrowser());
}
