using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Doubting;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Balance.Tests.Doubting;

/// <summary>
/// Pulled along in steps too fine to see, a slider of the bench may not make a figure jump by more than the model itself leaves open of it. A verdict may:
/// that is what an edge is.
/// </summary>
public sealed class SliderTests
{
    private const int Steps = 60;

    // A step that took up all the room would pass for doubt where nothing was doubted: a tenth of it is already much for a step nobody can see.
    private const double Share = 0.1;

    // Where one way to sink ends, the fly falls over into another: an edge, as of a verdict. There it may take up all the room that doubt leaves, no more.
    private const double OtherWayDeg = 10;

    // Of a whole slider one step is 1/400: no hand pulls finer.
    private const double Finest = 1.0 / 400;

    public static TheoryData<string, string, string> Sliders =>
        [.. All().Take(50).Select(s => new TheoryDataRow<string, string, string>(s.File, s.Part, s.Key))];

    [Fact]
    public void Sliders_OfTheCourse_AreFifty() => Assert.Equal(50, Sliders.Count);

    [Theory]
    [MemberData(nameof(Sliders))]
    public void Report_SliderPulledFinely_JumpsByNoMoreThanDoubtAllows(string file, string part, string key)
    {
        Recipe recipe = Read(file);
        int index = FlyBuilder.Names(recipe.Parts).IndexOf(part);
        Dial dial = Dials(recipe, index).Single(d => d.Key == key);
        double low = Math.Max(dial.LowSi, dial.ValueSi - Steps / 2 * Finest * (dial.HighSi - dial.LowSi));
        DoubtReport doubt = Doubt.Of(recipe, FlyBuilder.Build(recipe));
        TowReport? last = null;
        SinkReport? lastSink = null;
        for (int i = 0; i <= Steps; i++)
        {
            double si = low + i * Finest * (dial.HighSi - dial.LowSi);
            BuiltFly fly = FlyBuilder.Build(recipe with { Parts = recipe.Parts.SetItem(index, With(recipe.Parts[index], key, si)) });
            TowReport tow = PartialReports.Tow(fly.Body, fly.Conditions, WetState.Soaked);
            SinkReport? sink = PartialReports.Sink(fly.Body, fly.Conditions, WetState.Soaked);
            if (last is not null)
            {
                Within(last.KeelHeightMm.For(recipe.Intent), tow.KeelHeightMm.For(recipe.Intent), doubt.KeelHeightMm, $"keel height of {file} at {key} {si}");
                Within(last.SymmetricPitchDeg, tow.SymmetricPitchDeg, doubt.PitchDeg, $"pitch of {file} at {key} {si}");
                bool otherWay = lastSink is { } a && sink is { } b && Math.Abs(a.PitchDeg - b.PitchDeg) > OtherWayDeg;
                Within(lastSink?.RateMS, sink?.RateMS, doubt.SinkRateMS, $"sink rate of {file} at {key} {si}", otherWay ? 1 : Share);
            }

            (last, lastSink) = (tow, sink);
        }
    }

    private static void Within(double? before, double? after, Interval? open, string what, double share = Share)
    {
        if (before is not { } a || after is not { } b || open is not { } range) return;
        Assert.True(Math.Abs(b - a) <= share * (range.High - range.Low), $"{what} jumps from {a} to {b}; doubt leaves {range} open.");
    }

    private static PartSpec With(PartSpec part, string key, double si) => key switch
    {
        "size" => part with { SizeM = si, Said = part.Said.Without("size") },
        "at" => part with { AtM = si, ToM = part.ToM + (si - part.AtM), Said = part.Said.Without("at") },
        "diameter" => part with { DiameterM = si },
        "mass" => part with { MassKg = si },
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "No such slider."),
    };

    private static IEnumerable<Dial> Dials(Recipe recipe, int index) =>
        KindsOfPart.Of(recipe.Parts[index]).Dials(recipe.Parts[index], HookScale.Resolve(recipe.Hook));

    // Turns come whole, so they cannot be pulled finely.
    private static IEnumerable<(string File, string Part, string Key)> All() =>
        from path in Directory.EnumerateFiles(Path.Combine(Root(), "lessons", "recipes"), "*.fly.yaml").Order(StringComparer.Ordinal)
        let recipe = Read(Path.GetFileName(path))
        let names = FlyBuilder.Names(recipe.Parts)
        from i in Enumerable.Range(0, recipe.Parts.Length)
        from dial in Dials(recipe, i)
        where dial.Key != "turns" && dial.HighSi > dial.LowSi
        select (Path.GetFileName(path), names[i], dial.Key);

    private static Recipe Read(string file) => RecipeParser.Parse(File.ReadAllText(Path.Combine(Root(), "lessons", "recipes", file))).Value!;

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TyingClass.sln"))) folder = folder.Parent;
        return folder!.FullName;
    }
}
