using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class VisePlateTests
{
    public static TheoryData<string> Names => Samples.Names;

    // A student who has not answered yet must not read the answer off the picture.
    [Theory, MemberData(nameof(Names))]
    public void Vise_EveryFly_TellsNothingOfHowItSwims(string name)
    {
        SolvedFly fly = Samples.Named(name);

        Picture picture = new(FlyDrawing.Vise(fly, DrawingOptions.Default));

        string words = string.Join(' ', picture.Root.Descendants().Where(e => !e.HasElements).Select(e => e.Value)) + picture.Description;
        Assert.Contains(name, words, StringComparison.Ordinal);
        foreach (string told in (string[])["point up", "point down", "keel height", "balance point", "mass center", "flow", "line of pull", "nose", "lean",
            "flipped"])
            Assert.DoesNotContain(told, words.Replace(name, "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
    }

    [Theory, MemberData(nameof(Names))]
    public void Vise_EveryFly_ShankIsLevelEyeToTheLeft(string name)
    {
        Picture picture = new(FlyDrawing.Vise(Samples.Named(name), DrawingOptions.Default));

        IReadOnlyList<(double X, double Y)> shank = picture.HookWires().Single(w => w.Count == 4);
        Assert.Equal(shank[2].Y, shank[3].Y, 0.01);
        Assert.True(shank[2].X < shank[3].X);
    }
}
