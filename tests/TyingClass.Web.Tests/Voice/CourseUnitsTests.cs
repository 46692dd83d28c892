using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Telling.Figures;
using TyingClass.Web.Editing;
using TyingClass.Web.Tests.Features;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Voice;

/// <summary>Everything the course says, for readers of both systems of units: names, captions and cards as well as sentences.</summary>
public sealed partial class CourseUnitsTests
{
    private static readonly Lazy<Course> OurCourse = new(() =>
    {
        using CourseFolder folder = new(Lessons);
        return folder.Current;
    });

    private static string Lessons => OneWayElsewhereTests.Repository("lessons");

    [Fact]
    public void Text_OfTheCourse_IsNeverMetricAloneForAReaderOfInches()
    {
        string[] alone = [.. Texts(OurCourse.Value).SelectMany(t => SaidFigures.MetricAlone(WrittenFigures.Beside(t, UnitSystem.Imperial))).Distinct()];

        Assert.True(alone.Length == 0, string.Join("\n", alone));
        Assert.True(Texts(OurCourse.Value).Count() > 2000);
    }

    [Fact]
    public void Text_OfTheCourse_IsNeverImperialAloneForAMetricReader()
    {
        string[] alone = [.. Texts(OurCourse.Value).SelectMany(SaidFigures.ImperialAlone).Distinct()];

        Assert.True(alone.Length == 0, string.Join("\n", alone));
    }

    // Titles stand in tables, menus and addresses, as they are.
    [Fact]
    public void Title_OfTheCourse_HasNoFigureWithAUnit()
    {
        Course course = OurCourse.Value;
        string titles = string.Join('\n',
            course.Lessons.Select(l => l.Title).Concat(course.Exercises.Select(e => e.Title)).Concat(course.Evenings.Select(e => e.Title)));

        Assert.Empty(SaidFigures.MetricAlone(titles).Concat(SaidFigures.ImperialAlone(titles)));
    }

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Imperial)]
    public async Task Page_OfTheCourse_HasNoFigureInTheOtherUnitsAlone(UnitSystem units)
    {
        using ClassRoom room = new();
        using WebApplicationFactory<Program> course = room.WithWebHostBuilder(host => host.UseSetting("lessons", Lessons));
        Browser heron = new(course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false }));
        string code = course.Services.GetRequiredService<ClassStore>().Instructors.NewCode();
        await (await SignInPage.OpenAsync(heron, withCode: true)).ClaimAsync(code, "Heron", "four quiet winter trout");
        await OneWayTests.ChooseAsync(heron, units);
        string[] pages =
        [
            "/lessons/wraps", "/lessons/leader-and-knot", "/lessons/nose-up-nose-down", "/class/evenings/6", "/class/evenings/6/handout",
            "/class/evenings/6/wall/2", "/glossary", "/first-wraps",
        ];
        foreach (string page in pages)
        {
            string text = Everything(await heron.OpenAsync(page));
            string[] alone = [.. units == UnitSystem.Imperial ? SaidFigures.MetricAlone(text) : SaidFigures.ImperialAlone(text)];
            Assert.True(alone.Length == 0, $"{page}: {string.Join("; ", alone.Distinct())}");
        }
    }

    // "Wraps at 7 mm" is a fly of the course as well.
    [Theory]
    [InlineData("Perch 5 g")]
    [InlineData("Wraps at 7 mm")]
    public async Task Name_OfAStudents_StaysAsItIs(string name)
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await OneWayTests.ChooseAsync(wren, UnitSystem.Imperial);
        string recipe = PatternPage.Recipe.Replace("recipe: Slate Minnow", $"recipe: {name}", StringComparison.Ordinal);
        PatternPage pattern = await PatternPage.SaveNewAsync(wren, recipe);
        Sheet card = await wren.OpenAsync($"/patterns/{pattern.Id}/card");

        Assert.Equal(name, card.Text("h1"));
        Assert.Equal(name, card.Text(".card-name"));
        Assert.Contains(name, card.Text("svg title"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Name_OfTheCourse_IsToldInInchesOnCardsChoicesAndDrawings()
    {
        using ClassRoom room = new();
        using WebApplicationFactory<Program> course = room.WithWebHostBuilder(host => host.UseSetting("lessons", Lessons));
        Browser guest = new(course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false }));
        await OneWayTests.ChooseAsync(guest, UnitSystem.Imperial);
        Sheet lesson = await guest.OpenAsync("/lessons/wraps");

        foreach (string place in (string[])[".card-name", "option"])
            Assert.Contains(lesson.All(place), at => at.TextContent.Contains("Wraps at 0.276 in (7 mm)", StringComparison.Ordinal));
        ExercisePage answered = await (await ExercisePage.OpenAsync(guest, "knot-01")).Choose("Nose up, held by the leader").SubmitAsync();
        Assert.Contains(answered.Sheet.All("svg title"), at => at.TextContent.Contains("Quay Sentry on 0.016 in (0.40 mm)", StringComparison.Ordinal));
    }

    private static string Everything(Sheet sheet)
    {
        IHtmlDocument page = (IHtmlDocument)sheet.Document.Clone(true);
        // "0.22 in and 5.6 mm are the same answer" is meant so.
        foreach (AngleSharp.Dom.IElement help in page.QuerySelectorAll("[id$=-help]").ToArray()) help.Remove();
        string said = string.Join('\n',
            page.All.SelectMany(e => new[] { "alt", "title", "aria-label", "placeholder" }.Select(e.GetAttribute)).OfType<string>());
        return OneWayTests.Read(page) + "\n" + Sheet.Plain(said);
    }

    private static IEnumerable<string> Texts(Course course) => course.Lessons.SelectMany(Texts)
        .Concat(course.Evenings.SelectMany(e => (string[])[e.Plan, e.Demonstrations, e.WatchFor, e.Home, .. e.Besides])).Concat(FlyNames.Of(course))
        .Select(t => Sheet.Plain(t));

    private static IEnumerable<string> Texts(Lesson lesson) =>
        lesson.Glossary.Select(g => g.Meaning).Append(lesson.Summary).Concat(lesson.Blocks.SelectMany(Texts));

    private static IEnumerable<string> Texts(LessonBlock block) => block switch
    {
        ProseBlock prose => [Plain(prose.Shown)],
        FlyBlock fly => [fly.Caption, .. Card(fly.RecipeText)],
        FigureBlock figure => [figure.Caption, .. figure.Labels.Select(l => l.Words), .. figure.Flies.Select(f => f.Called)],
        ExerciseBlock { Exercise: var exercise } => Texts(exercise),
        PracticeBlock practice => Texts(practice.Practice.Template),
        _ => [],
    };

    private static IEnumerable<string> Texts(Exercise e) =>
    [
        Plain(e.PromptHtml), .. e.Choices, .. e.Hints, .. e.Misreadings.Select(m => m.Say), e.Kind.AnswerIsRecipe ? "" : e.ModelAnswer ?? "",
        .. new[] { e.RecipeText, e.Task.ChangedRecipe }.Concat(e.Task.OtherRecipes).OfType<string>().SelectMany(Card),
    ];

    private static IEnumerable<string> Card(string recipe) => RecipeCard.Of(recipe) is { } card
        ? [card.Name, card.Hook, card.Fishing, .. card.Parts.Select(p => p.Said), .. card.Steps] : [];

    // The ends of cells and list items part what stands in them.
    private static string Plain(string html) =>
        WebUtility.HtmlDecode(Tags().Replace(html, m => m.Value is ['<', '/', 't', ..] or ['<', '/', 'l', ..] ? " | " : ""));

    [GeneratedRegex("<(code|pre|svg|math)\\b[\\s\\S]*?</\\1>|<[^>]*>")]
    private static partial Regex Tags();
}
