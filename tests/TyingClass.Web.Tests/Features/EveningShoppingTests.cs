using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Web.Evenings;
using TyingClass.Web.Tests.Pages;
using TyingClass.Web.Tests.Voice;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>The page of each evening, its handout and the brief count what the plan of the course lists, for a class of two neighbors.</summary>
public sealed partial class EveningShoppingTests
{
    private static readonly Packets NothingSpare = new() { SparePieces = 0, Waste = 0 };

    private static readonly string PlanText =
        File.ReadAllText(Path.Combine(OneWayElsewhereTests.Repository("docs"), "course-plan.md")).ReplaceLineEndings("\n");

    private static readonly ImmutableArray<PlannedFly> Planned =
    [
        .. Row().Matches(PlanText).Select(m =>
            new PlannedFly(Number(m, "evening"), RecipeOf(m.Groups["file"].Value), Number(m, "two"), Number(m, "show"))),
    ];

    private static readonly ImmutableArray<PlannedFly> Spares =
    [
        .. SpareRow().Matches(PlanText).Select(m => new PlannedFly(Number(m, "evening"), SpareOf(m), Number(m, "two"), Number(m, "show"))),
    ];

    [Fact]
    public async Task Shopping_OfEveryEvening_IsThatOfThePlanOnPageHandoutAndBrief()
    {
        using ClassRoom room = new();
        using WebApplicationFactory<Program> course = room.WithWebHostBuilder(host => host.UseSetting("lessons", OneWayElsewhereTests.Repository("lessons")));
        Browser heron = NewBrowser(course);
        ClassStore store = course.Services.GetRequiredService<ClassStore>();
        await (await SignInPage.OpenAsync(heron, withCode: true)).ClaimAsync(store.Instructors.NewCode(), "Heron", "four quiet winter trout");
        foreach (string name in new[] { "Wren", "Teal" }) await (await JoinPage.OpenAsync(NewBrowser(course))).JoinAsync(store.Classes.All()[0].Code, name);

        Assert.Equal(Enumerable.Range(1, 8), Planned.Select(f => f.Evening).Distinct());
        Assert.NotEmpty(Spares);
        foreach (IGrouping<int, PlannedFly> evening in Planned.GroupBy(f => f.Evening))
        {
            Sheet page = await heron.OpenAsync($"/class/evenings/{evening.Key}?sparePercent=0&wastePercent=0");
            Assert.Equal(Lines(evening, Spares.Where(s => s.Evening == evening.Key)),
                [.. page.All("section[aria-labelledby=materials-title] .materials tbody tr").Select(LineOf)]);
            Assert.Equal(evening.Where(f => f.ForTwo > 0).Select(f => f.Recipe.Name), page.All(".tied li").Select(li => li.TextContent.Split(": ")[0].Trim()));

            Assert.Contains("First these", page.Text(".evening-notes"), StringComparison.Ordinal);
            Assert.Contains("Then, if time:", page.Text(".evening-notes"), StringComparison.Ordinal);

            Sheet handout = await heron.OpenAsync($"/class/evenings/{evening.Key}/handout");
            Assert.Equal(evening.Where(f => f.ForTwo > 0).Select(f => $"To tie: {f.Recipe.Name}{(f.ForTwo == 1 ? ", one for two neighbors" : "")}"),
                handout.All("h2").Select(h => h.TextContent).Where(h => h.StartsWith("To tie: ", StringComparison.Ordinal)));
        }

        Sheet brief = await heron.OpenAsync("/class");
        Assert.Contains("First these: What you really cast", Sheet.Plain(brief.Text(".next-evening")), StringComparison.Ordinal);
        Assert.Equal(Lines(Planned, Spares, spare: true), [.. brief.All(".next-evening details .materials tbody tr").Select(LineOf)]);
    }

    [Fact]
    public async Task Shopping_OfAnEvening_SaysWhatToAskForAndNamesNoLead()
    {
        using ClassRoom room = new();
        using WebApplicationFactory<Program> course = room.WithWebHostBuilder(host => host.UseSetting("lessons", OneWayElsewhereTests.Repository("lessons")));
        Browser heron = NewBrowser(course);
        await (await SignInPage.OpenAsync(heron, withCode: true))
            .ClaimAsync(course.Services.GetRequiredService<ClassStore>().Instructors.NewCode(), "Heron", "four quiet winter trout");

        for (int evening = 1; evening <= 8; evening++)
        {
            Sheet page = await heron.OpenAsync($"/class/evenings/{evening}");
            IElement[] rows = [.. page.All(".materials tbody tr")];
            Assert.DoesNotContain(rows, r => r.QuerySelector("th")!.FirstChild!.TextContent.Contains(", lead,", StringComparison.Ordinal));
            Assert.All(rows.Where(r => r.TextContent.Contains("hook,", StringComparison.Ordinal)),
                r => Assert.NotEmpty(r.QuerySelector(".ask")!.TextContent.Trim()));
        }
    }

    private static Browser NewBrowser(WebApplicationFactory<Program> course) =>
        new(course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false }));

    // What stands on a line: the item, and how much of it.
    private static string LineOf(IElement row) =>
        $"{Sheet.Plain(row.QuerySelector("th")!.FirstChild!.TextContent)}: {Sheet.Plain(row.QuerySelector("td")!.TextContent)}";

    private static ImmutableArray<string> Lines(IEnumerable<PlannedFly> flies, IEnumerable<PlannedFly> parts, bool spare = false)
    {
        ImmutableArray<Supply> supplies =
            SupplyList.For(flies.Select(f => (f.Recipe, f.ForTwo + f.Show)), parts.Select(p => (p.Recipe, p.ForTwo + p.Show)));
        return [.. MaterialsView.Of(supplies, spare ? Packets.Usual : NothingSpare, UnitSystem.Metric).Select(l => $"{l.Item}: {(spare ? l.Bring : l.Need)}")];
    }

    private static Recipe RecipeOf(string file) => RecipeParser.Parse(File.ReadAllText(Path.Combine(OneWayElsewhereTests.Repository("lessons"), file))).Value!;

    private static Recipe SpareOf(Match row) => RecipeParser.Parse("recipe: Spares\nintent: point up\nhook:\n  size: 2\nparts:\n"
        + $"  - part: {row.Groups["part"].Value}\n    material: {row.Groups["material"].Value}\n    size: {row.Groups["size"].Value}\n").Value!;

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^\| (?<evening>[1-8]) \| [^|]+ \| `(?<file>recipes/[a-z0-9-]+\.fly\.yaml)` \| (?<two>[0-9]+) \| (?<show>[0-9]+) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(
        @"^\| (?<evening>[1-8]) \| (?<part>[^|,]+), (?<material>[^|,]+), (?<size>[^|,]+) \| (?<two>[0-9]+) \| (?<show>[0-9]+) \|$", RegexOptions.Multiline)]
    private static partial Regex SpareRow();

    private sealed record PlannedFly(int Evening, Recipe Recipe, int ForTwo, int Show);
}
