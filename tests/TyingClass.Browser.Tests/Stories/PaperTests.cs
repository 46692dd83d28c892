using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Text;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Bench;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>What is printed: as many sheets as were promised, on A4 and on Letter, and nothing wider than the paper.</summary>
[Collection(BrowserCollection.Name)]
public sealed partial class PaperTests(RunningApp app, Chromium browser)
{
    // Between margins of 14 mm: A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 in (ANSI Y14.1); 96 px to the inch.
    private const double UprightPx = (210 - 28) / 25.4 * 96, SidewaysPx = (11 * 25.4 - 28) / 25.4 * 96;

    private static readonly string[] Formats = ["A4", "Letter"];

    // Nine parts, with every caution there is for them: as long as a card gets.
    private const string Long = """
        recipe: Paper Loach
        intent: point up
        hook:
          size: 2
          shank: 4XL
        parts:
          - part: bead
            material: tungsten
            size: 4 mm
          - part: dumbbell eyes
            material: lead
            size: 4.8 mm
            at: 6 mm
            side: top
          - part: wraps
            material: lead
            diameter: 0.5 mm
            turns: 14
            at: 9 mm
          - part: tail
            material: marabou
            length: 30 mm
            mass: 0.04 g
          - part: body
            material: fur dubbing
            mass: 0.05 g
            diameter: 4 mm
            at: 9 mm
            to: 24 mm
          - part: rib
            material: copper
            diameter: 0.2 mm
            turns: 8
            at: 9 mm
            to: 24 mm
          - part: hackle
            material: feather
            diameter: 14 mm
            mass: 0.02 g
            at: 7 mm
            to: 9 mm
          - part: wing
            material: bucktail
            length: 45 mm
            mass: 0.1 g
            at: 8 mm
            side: under
          - part: resin
            mass: 0.02 g
            diameter: 4 mm
            at: 4 mm
            to: 6 mm
        fishing:
          leader: 0.28 mm
          knot: loop
          speed: 0.5 m/s

        """;

    private const string Short = """
        recipe: Paper Midge
        intent: point down
        hook:
          size: 10
        parts:
          - part: bead
            material: brass
            size: 3 mm

        """;

    [Fact]
    public async Task Paper_OfAClass_FitsItsSheets()
    {
        Assert.True(RecipeParser.Parse(Long).Success, string.Join(' ', RecipeParser.Parse(Long).Errors.Select(e => e.Text)));
        StoryClass story = StoryClass.Make(app, browser, "Paper Dipper", [.. Enumerable.Range(1, 30).Select(i => $"Paper Wren {i}")]);
        Person mentor = story.AddMentor("Paper Otter"), student = story.Students[0];
        Exercise repair = app.Course.Exercises.First(e => e.Kind.Word == "repair" && e.WrongAnswers.Length > 0);
        foreach (Person person in story.Students.Take(5)) story.Miss(person, repair, repair.WrongAnswers[0].Answer);
        (Pattern pattern, Review review) = story.Ask(student, "Paper Loach", Long, string.Join(' ', Enumerable.Repeat("Does it keel?", 12)));
        app.Store.Reviews.AddComment(review.Id, mentor.Id, CommentSubject.Part, "wing", string.Join(' ', Enumerable.Repeat("Look at the wing.", 12)));
        for (int i = 0; i < 4; i++) Drop(story, student, pattern);
        // With their tying steps: the flies of the course that have most to say.
        string[] longest =
            [.. app.Course.Evenings.SelectMany(e => e.Flies).Select(f => f.RecipeText).Distinct().OrderByDescending(t => t.Length).Take(3)];
        foreach ((Person person, string recipe) in story.Students.Skip(1).Zip([Long, Long, longest[0], longest[1]]))
        {
            (_, Review other) = story.Ask(person, "Paper Loach", recipe, "And mine?");
            app.Store.Reviews.Decide(other.Id, mentor.Id, other.Version, new ReviewDecision(true, "Well tied.", null, "It shows what many parts do."));
        }

        IPage page = await story.EnterAsync("Paper Dipper");
        int sheets = await SheetsAsync(page, "/class/register?evening=all&sheets=true", SidewaysPx, ".register-frame");
        Assert.True(sheets > 4, $"{sheets} sheets of the register");
        await PrintAsync(page, "/class/register?evening=all&sheets=true", pages => pages == sheets, SidewaysPx);
        await PrintAsync(page, "/class/register?evening=all", pages => pages == 1, SidewaysPx);
        await PrintAsync(page, $"/reviews/{review.Id}", pages => pages == 1, UprightPx);
        await PrintAsync(page, "/pattern-book/cards", pages => pages == 4, UprightPx);
        await PrintAsync(page, $"/patterns/{pattern.Id}/card", pages => pages == 1, UprightPx);
        foreach (string recipe in longest) await PrintAsync(page, "/bench/card?r=" + Packed.Pack(recipe), pages => pages == 1, UprightPx);
        // Four flies, a cover and a list are six pages: two sheets folded, both sides of each.
        await PrintAsync(page, "/pattern-book/booklet", pages => pages == 4, SidewaysPx);
        await PrintAsync(page, "/pattern-book/labels?each=6", pages => pages == 1, UprightPx);
        await PrintAsync(page, "/handouts/bench-test", pages => pages == 1, UprightPx);
        foreach (int evening in app.Course.Lessons.Select(l => l.Evening).OfType<int>().Distinct())
            await PrintAsync(page, string.Create(CultureInfo.InvariantCulture, $"/class/evenings/{evening}/handout"), pages => pages <= 4, UprightPx);
    }

    [Fact]
    public async Task PatternBook_OfManyFlies_FillsItsSheetsAndCutsNone()
    {
        const int flies = 40;
        StoryClass story = StoryClass.Make(app, browser, "Paper Bunting", "Paper Teal");
        Person mentor = story.AddMentor("Paper Heron");
        for (int i = 1; i <= flies; i++)
        {
            (_, Review asked) = story.Ask(story.Students[0], string.Create(CultureInfo.InvariantCulture, $"Paper Midge {i}"), Short, "");
            app.Store.Reviews.Decide(asked.Id, mentor.Id, asked.Version, new ReviewDecision(true, "Well tied.", null, null));
        }

        IPage page = await story.EnterAsync("Paper Bunting");
        // With cover and list 42 pages, four to a sheet: eleven sheets, both sides of each.
        await PrintAsync(page, "/pattern-book/booklet", pages => pages == 22, SidewaysPx);
        await PrintAsync(page, "/pattern-book/labels?each=1", pages => pages == 2, UprightPx);
    }

    private void Drop(StoryClass story, Person student, Pattern pattern)
    {
        FlyForecast forecast = FlyForecast.Of(RecipeParser.Parse(Long).Value!, WetState.Soaked, 12);
        Seen seen = new() { MassKg = forecast.MassKg, HangAngleRad = 0.3, Way = SeenWay.PointUp, SinkDepthM = 0.6, SinkTimeS = 2, WaterC = 12 };
        app.Store.BenchLog.Add(student.Id, story.Room.Id, new TiedFly(pattern.Name, Long, FlySource.Pattern, pattern.Id, 1), seen, new Foreseen(
            forecast.HangAngleRad, forecast.Way, forecast.MassKg, forecast.SinkRateMS, BalanceEngine.Version), "In the kitchen sink, five drops.");
    }

    private static async Task<int> SheetsAsync(IPage page, string address, double widthPx, string each)
    {
        await page.SetViewportSizeAsync((int)widthPx, 900);
        await page.GotoAsync(address);
        return await page.Locator(each).CountAsync();
    }

    private static async Task PrintAsync(IPage page, string address, Func<int, bool> isRight, double widthPx)
    {
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.SetViewportSizeAsync((int)widthPx, 900);
        await page.GotoAsync(address);
        // Past the edge of the paper, or past the box it stands in; what is hidden for those who listen does not count.
        string[] cut = await page.EvaluateAsync<string[]>(
            """
            width => [...document.querySelectorAll('main *')].filter(e => {
              const box = e.getBoundingClientRect();
              if (box.width < 2 || e.closest('.unseen, i, svg')) return false;
              const folded = e.matches('.booklet-side, .booklet-page') && e.scrollHeight > e.clientHeight + 1;
              return box.right > width + 1 || folded;
            }).map(e => `${e.tagName}.${e.className} ${Math.round(e.getBoundingClientRect().right)} ${e.scrollHeight}/${e.clientHeight}`).slice(0, 5)
            """, widthPx);
        Assert.True(cut.Length == 0, $"{address} is cut: {string.Join("; ", cut)}");
        foreach (string format in Formats)
        {
            byte[] paper = await page.PdfAsync(new() { Format = format, PreferCSSPageSize = true });
            int pages = PageOfPdf().Count(System.Text.Encoding.Latin1.GetString(paper));
            Assert.True(isRight(pages), $"{address} takes {pages} pages of {format}");
        }

        await page.EmulateMediaAsync(new() { Media = Media.Screen });
    }

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex PageOfPdf();
}
