using TyingClass.Drawing.ContactSheets;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class VisePlateTests
{
    private const string Crooked = "Lopsided Loach";

    public static TheoryData<string> Names => Samples.Names;

    public static TheoryData<string> Straight => [.. SheetFlies.All.Select(r => r.Name).Where(name => name != Crooked)];

    // A student who has not answered yet must not read the answer off the picture.
    [Theory, MemberData(nameof(Names))]
    public void Vise_EveryFly_TellsNothingOfHowItSwims(string name)
    {
        SolvedFly fly = Samples.Named(name);

        Picture picture = new(FlyDrawing.Vise(fly, DrawingOptions.Default));

        string words = string.Join(' ', picture.Root.Descendants().Where(e => !e.HasElements).Select(e => e.Value)) + picture.Description;
        Assert.Contains(name, words, StringComparison.Ordinal);
        foreach (string told in (string[])["point up", "point down", "keel height", "balance point", "mass center", "flow", "line of pull", "hinge line",
            "nose", "lean", "flipped"])
            Assert.DoesNotContain(told, words.Replace(name, "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
    }

    [Theory, MemberData(nameof(Straight))]
    public void Vise_FlyTiedStraight_ShankIsLevelEyeToTheLeft(string name)
    {
        Picture picture = new(FlyDrawing.Vise(Samples.Named(name), DrawingOptions.Default));

        IReadOnlyList<(double X, double Y)> shank = picture.HookWires().Single(w => w.Count == 4);
        Assert.Equal(shank[2].Y, shank[3].Y, 0.01);
        Assert.True(shank[2].X < shank[3].X);
        Assert.False(picture.Has("middle line"));
    }

    // From the side a pair that has slipped hides its own fault.
    [Theory]
    [InlineData("side offset: 2 mm")]
    [InlineData("clocked: 60°")]
    public void Vise_FlyTiedCrooked_StandsFromAheadBesideItsMiddleLine(string fault)
    {
        string recipe = $"recipe: Slipped\nintent: point down\nhook:\n  size: 4\n  eye: straight\nparts:\n  - part: dumbbell eyes\n    material: brass\n"
            + $"    size: 3.2 mm\n    at: 4 mm\n    side: under\n    {fault}\nfishing:\n  knot: loop\n  speed: 0.5 m/s\n";
        Picture picture = new(FlyDrawing.Vise(SolvedFly.Solve(RecipeParser.Parse(recipe).Value!), DrawingOptions.Default));

        (double x1, _, double x2, _) = Picture.Line(picture.Marked("middle line"));
        Assert.Equal(0, x1, 0.01);
        Assert.Equal(0, x2, 0.01);
        double[] across =
        [
            .. picture.Root.Descendants().Where(e => (string?)e.Attribute("data-part") == "dumbbell eyes").SelectMany(e => e.Descendants())
                .Select(e => (string?)e.Attribute("d")).OfType<string>().SelectMany(Picture.Path).Select(p => p.X),
        ];
        Assert.True(Math.Abs(across.Max() + across.Min()) > 1, $"from {across.Min()} to {across.Max()} mm");
        Assert.Contains("from ahead", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.Labels, l => l.Contains("from ahead", StringComparison.Ordinal));
    }
}
