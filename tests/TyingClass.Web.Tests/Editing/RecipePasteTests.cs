using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Web.Bench;
using TyingClass.Web.Editing;
using Xunit;

namespace TyingClass.Web.Tests.Editing;

public sealed class RecipePasteTests
{
    public static TheoryData<string> Flies =>
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Course", "recipes")).Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Flies))]
    public void Read_TheTextOfACard_IsTheSameFly(string file)
    {
        string recipe = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Course", "recipes", file));
        RecipeCard card = RecipeCard.Of(recipe)!;
        // As a browser copies the list of a card: a heading, then what belongs to it, each on a line of its own.
        string[] lines =
        [
            card.Name, $"meant to ride {card.Ride}", "hook", card.Hook, .. card.Parts.SelectMany(p => new[] { p.Kind, p.Said }),
            .. card.Fishing.Length > 0 ? new[] { "fishing", card.Fishing } : [], .. card.Steps.Length > 0 ? card.Steps.Prepend("steps") : [],
        ];

        string read = RecipePaste.Read(string.Join("\r\n", lines));

        Recipe there = RecipeParser.Parse(recipe).Value!, here = RecipeParser.Parse(read).Value!;
        Assert.Equal(RecipeWriter.Write(there), RecipeWriter.Write(here));
    }

    [Theory]
    [InlineData("http://10.0.0.7:5000/bench?r={0}")]
    [InlineData("Look at /bench?soak=20&r={0} and tell me")]
    [InlineData("https://club.example/bench/card?r={0}#top")]
    public void Read_TheAddressOfABench_IsTheRecipeOnIt(string pasted)
    {
        string recipe = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Course", "recipes", "slate-minnow.fly.yaml"));
        Assert.Equal(recipe, RecipePaste.Read(string.Format(System.Globalization.CultureInfo.InvariantCulture, pasted, Packed.Pack(recipe))));
    }

    [Theory]
    [InlineData("recipe: A fly\r\nintent: point down", "recipe: A fly\nintent: point down")]
    [InlineData("/bench?r=not-packed-here", "/bench?r=not-packed-here")]
    [InlineData("meant to ride point down", "meant to ride point down")]
    [InlineData(null, "")]
    public void Read_AnythingElse_StaysAsItWasTyped(string? typed, string read) => Assert.Equal(read, RecipePaste.Read(typed));

    // What is wrong is the word in the field, not the layout of a card.
    [Fact]
    public void Read_ACardWithAWrongWord_IsRefusedForThatWordAndToldTheWaysToSayIt()
    {
        const string card = "Mill Loach\nmeant to ride point up\nhook\nsize 4\n"
            + "dumbbell eyes\nbrass, size middle, at just there, side top\nwraps\ndiameter 15, turns 8";

        string[] refused = [.. RecipeParser.Parse(RecipePaste.Read(card)).Errors.Select(e => e.Text)];

        Assert.Equal(3, refused.Length);
        Assert.Contains("medium", refused[0], StringComparison.Ordinal);
        Assert.Contains("behind the", refused[1], StringComparison.Ordinal);
        Assert.Contains(".015", refused[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ACardWithARetrieve_KeepsItsRoundWhole()
    {
        const string card = "Mill Loach\nmeant to ride point up\nhook\nsize 4\n"
            + "fishing\nretrieve strip 11.8 in (30 cm) in 0.5 s, pause 1.5 s, repeat 6, line out 32.8 ft (10 m)";

        string read = RecipePaste.Read(card);

        Assert.Contains("retrieve: strip 30 cm in 0.5 s, pause 1.5 s", read, StringComparison.Ordinal);
        Assert.Contains("line out: 10 m", read, StringComparison.Ordinal);
        Assert.True(RecipeParser.Parse(read).Success);
    }

    [Fact]
    public void Read_AWholePrintedCard_IsItsFly()
    {
        const string Page = """
            Pattern book
            Print this page from your browser: it fits one sheet.

            Rush Frog

            Meant to ride point up. By Rowan, revision 2.

            keel height point down 1.7 mm
            hinge line
            Rush Frog
            soaked, point down, nose up 29°, flipped

            Soaked and pulled at 0.3 m/s on a loop knot, it does not stay point up. Expect it to flip and ride point down.

            In tying order
            hook
            size 2, eye straight
            foam
            closed-cell foam, diameter 4 mm, at 4 mm, to 14 mm, side under
            legs
            rubber, length 35 mm, mass 0.10 g, at 15 mm
            fishing
            leader 0.30 mm, knot loop, water fresh 14 °C, speed 0.3 m/s
            Figures, soaked
            Mass, dry	0.45 g
            Lean from as intended	180°
            Take care
            Hooks are sharp: wear wrap-around eye protection when you tie and when you cast.
            """;
        Recipe read = RecipeParser.Parse(RecipePaste.Read(Page)).Value!;
        Assert.Equal(("Rush Frog", 2), (read.Name, read.Parts.Length));
        Assert.Equal(0.0001, read.Parts[1].MassKg!.Value, 7);
    }

    [Fact]
    public void Read_ACardInInches_TakesTheRecipesOwnFigures()
    {
        string card = "Mill Loach\nmeant to ride point up\nhook\nsize 4\ndumbbell eyes\nbrass, size 0.118 in (3 mm), at 0.118 in (3 mm), side top";
        Recipe read = RecipeParser.Parse(RecipePaste.Read(card)).Value!;
        Assert.Equal(0.003, read.Parts[0].SizeM!.Value, 6);
    }
}
