using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Web.Demo;
using TyingClass.Web.Pictures;
using Xunit;

namespace TyingClass.Web.Tests.Pictures;

public sealed class PlatesTests
{
    public static TheoryData<string> Views => ["side", Plates.Vise, "front", "hang", "pitch", "keel height", "righting", "depth", "lean", "ledger"];

    [Theory]
    [MemberData(nameof(Views))]
    public void Find_SolvedOnlyAsFarAsNeeded_DrawsTheSamePicture(string view)
    {
        foreach (string name in new[] { "duckweed-newt", "bramble-smelt", "rush-frog", "quarry-gudgeon", "tallow-shrimp" })
        {
            var recipe = RecipeParser.Parse(DemoFlies.Text(name)).Value!;
            foreach (WetState state in Enum.GetValues<WetState>())
            {
                DrawingOptions options = new() { IdPrefix = "fly", State = state };
                ReportOptions needed = Plates.NeedsAttitudeOnly(view) ? ReportOptions.AttitudeOnly : ReportOptions.Default;
                Assert.Equal(Plates.Find(view)!(SolvedFly.Solve(recipe), options), Plates.Find(view)!(SolvedFly.Solve(recipe, needed), options));
            }
        }
    }

    [Fact]
    public void NeedsAttitudeOnly_ASideView_IsNoSampleOfFlies() => Assert.True(Plates.NeedsAttitudeOnly("side") && ReportOptions.AttitudeOnly.Flies == 1);
}
