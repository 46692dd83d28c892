using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Storage.Reviews;
using TyingClass.Telling.Figures;
using TyingClass.Web.Tests.Features;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Voice;

/// <summary>
/// The same fly where others read it: a mentor's desk, the bench log, the handout, the adviser, two flies side by side, the verb that grades.
/// </summary>
public sealed class OneWayElsewhereTests
{
    private const UnitSystem Metric = UnitSystem.Metric, Imperial = UnitSystem.Imperial;

    private static readonly SolvedFly Fly = OneWayTests.Fly(VerdictKind.RidesAsIntended);
    private static readonly string Text = RecipeWriter.Write(Fly.Recipe);

    [Theory]
    [InlineData(Metric)]
    [InlineData(Imperial)]
    public async Task Review_OfAFly_HasEachFigureSaidOneWay(UnitSystem units)
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren"), otter = await two.AsAsync("Otter");
        await OneWayTests.ChooseAsync(otter, units);
        await (await PatternPage.SaveNewAsync(wren, Text)).Sheet.PressAsync("Ask for a review", ("question", "Why?"));
        Review waiting = two.Room.Store.Reviews.Queue(two.First.Id).Single();

        OneWayTests.Check("review", OneWayTests.Read(await otter.OpenAsync($"/reviews/{waiting.Id}")), Fly, units, 2);
    }

    [Theory]
    [InlineData(Metric)]
    [InlineData(Imperial)]
    public async Task BenchLog_OfAFly_HasEachFigureSaidOneWay(UnitSystem units)
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await OneWayTests.ChooseAsync(wren, units);
        Sheet entry = await (await wren.OpenAsync("/bench-log/new")).PressAsync("Keep it",
            ("recipe", Text), ("mass", "0.5 g"), ("hang", "40 deg"), ("sink-time", "2 s"), ("sink-depth", "1 ft"), ("way", "point-up"));
        string text = OneWayTests.Read(entry), table = entry.Text(".compared");

        OneWayTests.CheckFreely("bench log", text, units);
        BalanceReport report = Fly.Report;
        Assert.Contains(Magnitudes.Mass.Say(Si.G(report.MassG), units), table, StringComparison.Ordinal);
        Assert.Contains(Magnitudes.HangAngle.Say(Si.Deg(report.Hang.ShankFromPlumbDeg), units), table, StringComparison.Ordinal);
        Assert.Contains(Magnitudes.SinkRate.Say(report.Soaked.Sink!.RateMS, units), table, StringComparison.Ordinal);

        // What was typed wrong is answered in the reader's units, and stands as it was typed.
        Sheet refused = await (await wren.OpenAsync("/bench-log/new")).PressAsync("Keep it", ("recipe", Text), ("mass", "90 g"));
        Assert.Contains("“90 g” is outside", refused.Text("#mass-error"), StringComparison.Ordinal);
        if (units == Imperial) Assert.Contains("gr (1 mg)", refused.Text("#mass-error"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Metric)]
    [InlineData(Imperial)]
    public async Task TakeOver_OfTheHook_IsSaidInTheReadersUnits(UnitSystem units)
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await OneWayTests.ChooseAsync(wren, units);
        double more = 1.05 * Fly.Report.MassG;
        Sheet entry = await (await wren.OpenAsync("/bench-log/new")).PressAsync("Keep it",
            ("recipe", Text), ("mass", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{more:0.###} g")));
        await entry.PressAsync("Take over the hook mass");
        string said = two.Room.Store.Patterns.Revisions(two.Room.Store.Patterns.Of(two.Wren.Id).Single().Id)[0].Note;

        Assert.Matches(units == Imperial ? @"the fly weighed [0-9.]+ gr;.*put at [0-9.]+ gr" : @"the fly weighed [0-9.]+ g;.*put at [0-9.]+ g ", said);
    }

    [Theory]
    [InlineData(Metric)]
    [InlineData(Imperial)]
    public async Task AdviserAndComparison_OfTwoFlies_SayEachFigureOneWay(UnitSystem units)
    {
        using ClassRoom room = new();
        Browser browser = room.NewBrowser();
        await OneWayTests.ChooseAsync(browser, units);
        string flipping = PatternPage.Recipe.Replace("intent: point up", "intent: point down", StringComparison.Ordinal);
        BenchPage bench = await (await BenchPage.OpenAsync(browser)).WriteText(flipping).PressAsync("draw");
        BenchPage advised = await bench.PressAsync("advise");
        Assert.Contains("What would mend it?", advised.Sheet.Text(), StringComparison.Ordinal);
        Assert.NotEmpty(advised.Sheet.All("button[value^='take:']"));
        OneWayTests.CheckFreely("adviser", OneWayTests.Read(advised.Sheet), units);

        BenchPage kept = await bench.PressAsync("keep");
        BenchPage compared = await kept.Fill("parts[0].size", "4 mm").PressAsync("draw");
        Assert.True(compared.Sheet.Has("#compare"));
        OneWayTests.CheckFreely("comparison", OneWayTests.Read(compared.Sheet), units);
    }

    [Theory]
    [InlineData(Metric)]
    [InlineData(Imperial)]
    public async Task HandoutAndMaterials_OfAnEvening_AreInTheReadersUnits(UnitSystem units)
    {
        using ClassRoom room = new();
        // The course itself: there flies are tied.
        using WebApplicationFactory<Program> course = room.WithWebHostBuilder(host => host.UseSetting("lessons", Repository("lessons")));
        Browser heron = new(course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false }));
        string code = course.Services.GetRequiredService<ClassStore>().Instructors.NewCode();
        await (await SignInPage.OpenAsync(heron, withCode: true)).ClaimAsync(code, "Heron", "four quiet winter trout");
        await OneWayTests.ChooseAsync(heron, units);
        Sheet handout = await heron.OpenAsync("/class/evenings/2/handout"), evening = await heron.OpenAsync("/class/evenings/2");

        OneWayTests.CheckFreely("handout", OneWayTests.Read(handout), units);
        OneWayTests.CheckFreely("materials", Sheet.Plain(string.Join('\n', evening.All(".materials tr").Select(r => r.TextContent))), units);
        Assert.Equal(units == Imperial, evening.Has("input[name=wireFt]"));
        Assert.Contains(units == Imperial ? "mass, dry, gr" : "mass, dry, g", handout.Text(), StringComparison.Ordinal);
        string sheet = (await heron.OpenAsync("/handouts/bench-test")).Text();
        Assert.Contains(units == Imperial ? "____ gr" : "____ g", sheet, StringComparison.Ordinal);
        Assert.Equal(units == Imperial, sheet.Contains("in (20 cm)", StringComparison.Ordinal));
    }

    // Told in feet and ounces, kept and counted as what they are.
    [Fact]
    public async Task Packets_InFeetAndOunces_AreCountedWith()
    {
        using ClassRoom room = new();
        Browser heron = await room.NewInstructorAsync();
        await OneWayTests.ChooseAsync(heron, Imperial);
        Sheet evening = await heron.OpenAsync("/class/evenings/1?wireFt=10&dressingOz=0.1");

        Assert.Equal("10", evening.Find("#p-wire").GetAttribute("value"));
        Assert.Equal("0.1", evening.Find("#p-dressing").GetAttribute("value"));
        Assert.Equal("3.048", evening.Find("input[type=hidden][name=wireM]").GetAttribute("value"));
    }

    [Theory]
    [InlineData(Metric)]
    [InlineData(Imperial)]
    public void GradeVerb_OfAFly_HasEachFigureSaidOneWay(UnitSystem units)
    {
        // As it was given it would be no attempt.
        string given = File.ReadAllText(Path.Combine(Repository("lessons"), "recipes", "drowsy-dace.fly.yaml"));
        string changed = given.Replace("material: aluminum", "material: brass", StringComparison.Ordinal);
        Assert.NotEqual(given, changed);
        SolvedFly before = SolvedFly.Solve(RecipeParser.Parse(given).Value!), dace = SolvedFly.Solve(RecipeParser.Parse(changed).Value!);
        string file = Path.GetTempFileName();
        File.WriteAllText(file, changed);
        string text = string.Join('\n',
            OneWayTests.Verb("grade", "keel-06", file, "--lessons", Repository("lessons"), "--units", $"{units}").Split('\n').Select(Sheet.Plain));

        File.Delete(file);
        OneWayTests.Check("grade", text, dace, units, 1, before);
    }

    internal static string Repository(string folder)
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "TyingClass.sln"))) at = at.Parent;
        return Path.Combine(at!.FullName, folder);
    }
}
