using System.Globalization;
using System.Text.RegularExpressions;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// The tables of docs/trade-facts.md are computed. To bring them up to date after a change of physics, run the tests of this folder once with the environment
/// variable TRADE_FACTS_WRITE set to 1, and read the text around them again.
/// </summary>
public sealed partial class TradeFactsDocumentTests
{
    private static readonly Dictionary<string, Func<string>> Tables = new()
    {
        ["shares"] = () => Figures.Table(
            "fact | what is counted | obey | share, %",
            Shares().Select(s => $"{s.Fact} | {s.What} | {s.Share} | {100.0 * s.Share.Obey / s.Share.Count:F1}")),
        ["1"] = () => HungFromTheEyeTests.Table,
        ["2"] = () => DownEyeTests.Table,
        ["3"] = () => JigStreamerTests.Table,
        ["4"] = () => JigBeadTests.Table,
        ["5 verdicts"] = () => NarrowGapeTests.VerdictTable,
        ["5 cures"] = () => NarrowGapeTests.Table,
        ["5 gape"] = () => NarrowGapeTests.GapeTable,
        ["6 eyes"] = () => DumbbellEyesTests.Table,
        ["6 steps"] = () => DumbbellEyesTests.StepTable,
        ["7"] = () => PointSideHairTests.SmallTable,
        ["8"] = () => PointSideHairTests.WrappedTable,
        ["9"] = () => DenseLowBuoyantHighTests.Table,
        ["10"] = () => PoisedFliesTests.Table,
        ["11"] = () => LoopKnotTests.Table,
        ["12"] = () => PlaningTests.Table,
        ["12 jig"] = () => PlaningTests.JigTable,
    };

    public static TheoryData<string> Names => [.. Tables.Keys];

    private static (int Fact, string What, Share Share)[] Shares() =>
    [
        (1, "mass center plumb under the eye", HungFromTheEyeTests.Share),
        (2, "down eye tows nose up, straight eye less, up eye less still", DownEyeTests.Share),
        (3, "point up, nose steeply down on a slack line", JigStreamerTests.Share),
        (4, "glass bead not reliable, tungsten bead reliable", JigBeadTests.Share),
        (5, "not reliably point down", NarrowGapeTests.Unreliable),
        (5, "lighter cone raises the keel height", NarrowGapeTests.ByLighterCone),
        (5, "straight eye raises it", NarrowGapeTests.ByStraightEye),
        (5, "wider gape raises it", NarrowGapeTests.ByWiderGape),
        (5, "wider gape raises it, lesser cone alone", NarrowGapeTests.ByWiderGapeUnderLesserCone),
        (6, "heavier hook needs heavier eyes", DumbbellEyesTests.Share),
        (7, "light eyes suffice", PointSideHairTests.SmallShare),
        (8, "point up with no dumbbell eyes", PointSideHairTests.WrappedShare),
        (9, "dense lower or buoyant higher raises the keel height", DenseLowBuoyantHighTests.Share),
        (10, "poised, fewer than three in four ride as intended", PoisedFliesTests.Share),
        (11, "loop drops the nose more, the more the thicker the leader: slack line", LoopKnotTests.SlackShare),
        (11, "the same on a tight line", LoopKnotTests.TightShare),
        (12, "nose lowered, less lead for the same depth", PlaningTests.ByAny),
        (12, "by balance alone", PlaningTests.ByBalance),
        (12, "by the eye alone", PlaningTests.ByHook),
        (12, "by both", PlaningTests.ByBoth),
        (12, "by a steeper jig eye", PlaningTests.ByJigEye),
        (12, "of these, pushed down outright", PlaningTests.PushedDown),
    ];

    private static string DocumentPath
    {
        get
        {
            DirectoryInfo? folder = new(AppContext.BaseDirectory);
            while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TyingClass.sln"))) folder = folder.Parent;
            return Path.Combine(folder?.FullName ?? throw new InvalidOperationException("TyingClass.sln is in no folder above the tests."), "docs",
                "trade-facts.md");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Document_Table_AgreesWithWhatIsComputed(string name)
    {
        string document = File.ReadAllText(DocumentPath), computed = Tables[name]();
        Match block = Assert.Single(Block().Matches(document), m => m.Groups["name"].Value == name);
        if (Environment.GetEnvironmentVariable("TRADE_FACTS_WRITE") == "1")
        {
            Group table = block.Groups["table"];
            File.WriteAllText(DocumentPath, string.Concat(document.AsSpan(0, table.Index), computed, "\n", document.AsSpan(table.Index + table.Length)));
            return;
        }

        AssertAgree(computed, block.Groups["table"].Value.TrimEnd());
    }

    [Fact]
    public void Document_Blocks_AreAllKnown() =>
        Assert.Equal(Tables.Keys.Order(StringComparer.Ordinal),
        Block().Matches(File.ReadAllText(DocumentPath)).Select(m => m.Groups["name"].Value).Order(StringComparer.Ordinal));

    // The words quote the shares too.
    [Fact]
    public void Document_Words_QuoteEveryShareAsComputed()
    {
        string words = Block().Replace(File.ReadAllText(DocumentPath), "");
        Assert.All(Shares(), s => Assert.Contains(s.Share.ToString(), words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a 12 b", "a 13 b")]
    [InlineData("a 1.20 b", "a 1.22 b")]
    [InlineData("a 1.20 b", "c 1.20 b")]
    [InlineData("a 1.20", "a 1.20 2")]
    public void AssertAgree_Different_Throws(string computed, string written) => Assert.ThrowsAny<Exception>(() => AssertAgree(computed, written));

    // Words and counts to the letter; a decimal may differ by one in its last place, since processors do not all round alike.
    private static void AssertAgree(string computed, string written)
    {
        Assert.Equal(Decimal().Replace(computed, "#"), Decimal().Replace(written, "#"));
        Assert.All(Decimal().Matches(computed).Zip(Decimal().Matches(written)), pair =>
        {
            int places = pair.First.Value.Length - 1 - pair.First.Value.IndexOf('.', StringComparison.Ordinal);
            Assert.Equal(Parse(pair.First.Value), Parse(pair.Second.Value), 1.01 * Math.Pow(10, -places));
        });
    }

    private static double Parse(string number) => double.Parse(number, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"<!-- figures: (?<name>[^>]+?) -->\n(?<table>.*?)<!-- end of figures -->", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"-?\d+\.\d+")]
    private static partial Regex Decimal();
}
