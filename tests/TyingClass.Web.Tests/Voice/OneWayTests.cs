using System.Diagnostics;
using AngleSharp.Html.Dom;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Drawing.ContactSheets;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using TyingClass.Web.Tests.Features;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Voice;

/// <summary>
/// Two flies, one that rides and one undecided, drawn through pages, verbs and pictures in both systems of units: each named figure is said one way.
/// </summary>
public sealed class OneWayTests
{
    public static TheoryData<VerdictKind, UnitSystem> Flies => new()
    {
        { VerdictKind.RidesAsIntended, UnitSystem.Metric },
        { VerdictKind.RidesAsIntended, UnitSystem.Imperial },
        { VerdictKind.Undecided, UnitSystem.Metric },
        { VerdictKind.Undecided, UnitSystem.Imperial },
    };

    [Theory]
    [MemberData(nameof(Flies))]
    public async Task Fly_OnEveryPage_HasEachFigureSaidOneWay(VerdictKind verdict, UnitSystem units)
    {
        SolvedFly fly = Fly(verdict);
        string recipe = RecipeWriter.Write(fly.Recipe);
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await ChooseAsync(wren, units);
        BenchPage bench = await (await BenchPage.OpenAsync(wren)).WriteText(recipe).PressAsync("draw");
        Check("bench", Read(bench.Sheet), fly, units, 6);
        PatternPage pattern = await PatternPage.SaveNewAsync(wren, recipe);
        Check("pattern", Read(await wren.OpenAsync($"/patterns/{pattern.Id}")), fly, units, 3);
        Check("card", Read(await wren.OpenAsync($"/patterns/{pattern.Id}/card")), fly, units, 3);
    }

    [Theory]
    [MemberData(nameof(Flies))]
    public void Fly_InEveryPicture_HasEachFigureSaidOneWay(VerdictKind verdict, UnitSystem units)
    {
        SolvedFly fly = Fly(verdict);
        string Text(WetState state)
        {
            DrawingOptions options = DrawingOptions.Default with { Units = units, State = state };
            string[] pictures =
            [
                FlyDrawing.Side(fly, options), FlyDrawing.Front(fly, options), FlyDrawing.Hang(fly, options), FlyDrawing.Vise(fly, options),
                FlyDrawing.Run(fly, options),
                Curves.PitchAgainstSpeed(fly, options), Curves.KeelHeightAgainstSpeed(fly, options), Curves.Righting(fly, options),
                Curves.DepthInPause(fly, options),
                Curves.LeanHistogram(fly, options), Curves.Ledger(fly, options), Curves.AgainstSoak(fly, SoakFigure.SinkRate, options),
            ];
            return string.Join(" \n", pictures.Select(p => System.Text.RegularExpressions.Regex.Replace(p, "<[^>]*>", " ")).Select(Sheet.Plain));
        }

        Check("pictures, soaked", Text(WetState.Soaked), fly, units, 5);
        Check("pictures, fresh", Text(WetState.Fresh), fly, units, 4);
    }

    [Theory]
    [InlineData(VerdictKind.RidesAsIntended)]
    [InlineData(VerdictKind.Undecided)]
    public void Fly_ByEveryVerb_HasEachFigureSaidOneWay(VerdictKind verdict)
    {
        SolvedFly fly = Fly(verdict);
        DirectoryInfo folder = Directory.CreateTempSubdirectory("tyingclass-voice");
        try
        {
            string file = Path.Combine(folder.FullName, "fly.fly.yaml");
            File.WriteAllText(file, RecipeWriter.Write(fly.Recipe));
            string text = string.Join('\n', Verb("balance", file).Split('\n').Select(Sheet.Plain)), json = Verb("balance", file, "--json");
            // The text of a verdict and of a finding; the other fields are values.
            string said = string.Join(' ',
                System.Text.RegularExpressions.Regex.Matches(json, "\"(?:text|cause)\": \"(?<said>[^\"]*)\"").Select(m => m.Groups["said"].Value));
            Check("balance", text, fly, UnitSystem.Metric, 4);
            Check("balance --json", said, fly, UnitSystem.Metric, 1);
            string retrieved = string.Join('\n', Verb("retrieve", file).Split('\n').Select(Sheet.Plain));
            CheckFreely("retrieve", retrieved, UnitSystem.Metric);
            // What the page of the bench says of the same retrieve, sentence by sentence.
            Assert.All(RetrieveSentence.Of(fly.Retrieve, UnitSystem.Metric), s => Assert.Contains(Sheet.Plain(s), retrieved, StringComparison.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Imperial)]
    public async Task Answer_Graded_HasEachFigureSaidOneWay(UnitSystem units)
    {
        using ClassRoom room = new();
        Browser browser = room.NewBrowser();
        await ChooseAsync(browser, units);
        ExercisePage page = await Answers.FailRepairAsync(browser);
        SolvedFly fly = SolvedFly.Solve(RecipeParser.Parse(room.Store.Attempts.Of(room.Store.People.All().Single().Id, "first-03").Last().AnswerText).Value!);
        Check("graded answer", Read(page.Sheet), fly, units, 2, SolvedFly.Solve(Given(fly.Recipe)));
    }

    // The darter as the exercise gives it: the answer changed the size of its eyes.
    private static Recipe Given(Recipe answered) => answered with
    {
        Parts = answered.Parts.SetItem(0, RecipeParser.Parse(
            File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Course", "recipes", "reed-darter.fly.yaml"))).Value!.Parts[0]),
    };

    internal static SolvedFly Fly(VerdictKind verdict) => Kept.GetOrAdd(verdict, wanted =>
        Candidates().Select(r => SolvedFly.Solve(r)).First(f => f.Report.Verdict.Kind == wanted && f.Report.Soaked.Sink is not null));

    // With ever more turns of wire near its head the nymph comes to the edge.
    private static IEnumerable<Recipe> Candidates()
    {
        Recipe nymph = SheetFlies.All.Single(r => r.Name == "Peat Nymph");
        return SheetFlies.All.Concat(Enumerable.Range(15, 15).Select(turns =>
            nymph with { Parts = nymph.Parts.SetItem(0, nymph.Parts[0] with { Turns = turns }) }));
    }

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<VerdictKind, SolvedFly> Kept = new();

    /// <param name="before">A fly that the text speaks of too: the one given, beside the one answered.</param>
    internal static void Check(string where, string text, SolvedFly fly, UnitSystem units, int atLeast, SolvedFly? before = null)
    {
        ILookup<string, string> expected = new[] { fly, before }.OfType<SolvedFly>()
            .SelectMany(f => SaidFigures.Expected(f.Report, units).SelectMany(name => name.Select(said => (name.Key, Said: said))))
            .ToLookup(s => s.Key, s => s.Said);
        (string Name, string Said)[] said = [.. SaidFigures.In(text)];
        string[] otherwise =
            [.. said.Where(s => !expected[s.Name].Contains(s.Said)).Select(s => $"{s.Name} {s.Said}, not {string.Join(" or ", expected[s.Name])}").Distinct()];

        Assert.True(otherwise.Length == 0, $"{where}, {fly.Recipe.Name}: {string.Join("; ", otherwise)}");
        Assert.True(said.Length >= atLeast, $"{where}: only {said.Length} named figures found in {text}");
        CheckFreely(where, text, units);
    }

    // Figures of any fly: each is written with the digits that its quantity has, and none is metric alone for a reader of inches.
    internal static void CheckFreely(string where, string text, UnitSystem units)
    {
        string[] odd = [.. SaidFigures.OddlyWritten(text, units)];
        Assert.True(odd.Length == 0, $"{where}: {string.Join("; ", odd)}");
        if (units != UnitSystem.Imperial) return;
        string[] alone = [.. SaidFigures.MetricAlone(text)];
        Assert.True(alone.Length == 0, $"{where}, for an imperial reader: {string.Join("; ", alone)}");
    }

    // Without what the reader typed: a form's fields and the recipe's own text.
    internal static string Read(Sheet sheet) => Read((IHtmlDocument)sheet.Document.Clone(true));

    internal static string Read(IHtmlDocument page)
    {
        foreach (AngleSharp.Dom.IElement typed in page.QuerySelectorAll("textarea, pre, code, datalist, script, head, form .fold summary, .help, footer, nav")
            .ToArray()) typed.Remove();
        foreach (AngleSharp.Dom.IElement element in page.QuerySelectorAll("td, th, p, li, dd, dt, title, desc, text").ToArray())
            element.AppendChild(page.CreateTextNode(" "));
        return Sheet.Plain(page.Body!.TextContent);
    }

    internal static async Task ChooseAsync(Browser browser, UnitSystem units)
    {
        Sheet sheet = await browser.OpenAsync("/preferences");
        foreach (IHtmlInputElement radio in sheet.All("input[type=radio]").Cast<IHtmlInputElement>())
            radio.IsChecked = radio.Id == "auto" || radio.Id == (units == UnitSystem.Imperial ? "imperial" : "metric");
        await browser.SendAsync(sheet, sheet.Form("main form"), sheet.Find("main form button"));
    }

    internal static string Verb(params string[] arguments)
    {
        ProcessStartInfo start =
            new("dotnet") { RedirectStandardOutput = true, ArgumentList = { Path.Combine(AppContext.BaseDirectory, "TyingClass.CommandLine.dll") } };
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.NotEmpty(output);
        return output;
    }
}
