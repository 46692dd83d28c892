using System.Text.Json;
using Xunit;

namespace TyingClass.CommandLine.Tests;

public sealed class BalanceVerbTests : IDisposable
{
    private const string Rides = """
        recipe: Copper Loach
        intent: point up
        hook:
          size: 6
          shank: 4XL
          eye: down 25°
        parts:
          - part: cone
            material: brass
            size: 5.6 mm
            at: 0 mm
          - part: wraps
            material: lead
            diameter: 0.025 in
            turns: 18
            at: 6 mm
          - part: wing
            material: fur strip
            length: 45 mm
            mass: 0.25 g
            at: 5 mm
            side: under
        fishing:
          speed: 0.4 m/s
        """;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tyingclass");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Balance_FlyThatRides_ExitsZeroAndSaysSo()
    {
        CommandRun run = CommandRun.Of(_folder, "balance", Write(Rides));

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("it rides point up as you meant it", run.Output, StringComparison.Ordinal);
        Assert.Empty(run.Errors);
    }

    [Fact]
    public void Balance_InImperialUnits_SaysNoFigureInMetricOnes()
    {
        CommandRun run = CommandRun.Of(_folder, "balance", Write(Rides), "--units", "imperial");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains(" ft/s", run.Output, StringComparison.Ordinal);
        Assert.Contains("hook wire: 0.0", run.Output, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"[0-9] (mm|g|m|m/s|g·mm|mN|kg/m³|°C)(?![\w·/³²])", run.Output);
    }

    [Theory]
    [InlineData("imperial", "Are millimeters meant? Then write “7 mm”.")]
    [InlineData("metric", "for example 7 mm.")]
    public void Balance_NumberWithoutAUnit_IsRefusedInTheReadersUnits(string units, string said)
    {
        string bare = System.Text.RegularExpressions.Regex.Replace(Rides, "(length|to|diameter): [0-9.]+ mm", "$1: 7");
        Assert.NotEqual(Rides, bare);
        CommandRun run = CommandRun.Of(_folder, "balance", Write(bare), "--units", units);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Balance_SameFlyMeantTheOtherWay_ExitsOne()
    {
        CommandRun run = CommandRun.Of(_folder, "balance", Write(Rides.Replace("point up", "point down", StringComparison.Ordinal)));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("flip", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Balance_Json_TellsTheDoubt()
    {
        using JsonDocument report = JsonDocument.Parse(CommandRun.Of(_folder, "balance", Write(Rides), "--json").Output);
        JsonElement doubt = report.RootElement.GetProperty("doubt");

        // Of 200, those that could be worked out; intervals are told from nine in ten on.
        Assert.InRange(doubt.GetProperty("draws").GetInt32(), 180, 200);
        Assert.InRange(doubt.GetProperty("sameVerdict").GetDouble(), 0, 1);
        foreach ((string name, double figure) in new[]
        {
            ("keelHeightMm", Of("keelHeightMm").GetProperty("pointUp").GetDouble()), ("pitchDeg", Of("pitchDeg").GetDouble()),
        })
        {
            (double low, double high) = (doubt.GetProperty(name).GetProperty("low").GetDouble(), doubt.GetProperty(name).GetProperty("high").GetDouble());
            Assert.True(low < high, name);
            // The fly of the table lies among those drawn about it.
            Assert.InRange(figure, low, high);
        }

        Assert.True(doubt.GetProperty("sinkRateMS").GetProperty("low").GetDouble() > 0);
        Assert.NotEmpty(doubt.GetProperty("mostlyBy").GetString()!);

        JsonElement Of(string name) => report.RootElement.GetProperty("states")[1].GetProperty("atFishingSpeed").GetProperty(name);
    }

    [Fact]
    public void Balance_BadRecipe_ExitsTwoWithFileLineAndColumnOfEveryMistake()
    {
        string file = Write(Rides.Replace("5.6 mm", "90 mm", StringComparison.Ordinal).Replace("lead", "leed", StringComparison.Ordinal));

        CommandRun run = CommandRun.Of(_folder, "balance", file);

        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        Assert.Contains("fly.fly.yaml:10:11: ", run.Errors, StringComparison.Ordinal);
        Assert.Contains("fly.fly.yaml:13:15: ", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("balance", "missing.fly.yaml")]
    [InlineData("balance")]
    [InlineData("balanc", "fly.fly.yaml")]
    public void Balance_UsageOrFileMistake_ExitsTwoAndSaysWhy(params string[] arguments)
    {
        CommandRun run = CommandRun.Of(_folder, arguments);

        Assert.Equal(2, run.ExitCode);
        Assert.NotEmpty(run.Errors);
    }

    // The names are the interface other programs read: docs/command-line.md.
    [Fact]
    public void BalanceJson_AnyFly_HasEveryDocumentedField()
    {
        CommandRun run = CommandRun.Of(_folder, "balance", Write(Rides), "--json");

        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement root = json.RootElement;
        AssertFields(root,
            "recipe intent massG heldWaterG displacedMm3 wetWeightG massCenterMm centerOfBuoyancyMm balancePointMm towPointMm levelLineKeelMm hang states "
                + "verdict findings assumed");
        AssertFields(root.GetProperty("massCenterMm"), "x y z");
        AssertFields(root.GetProperty("levelLineKeelMm"), "pointDown pointUp");
        AssertFields(root.GetProperty("hang"), "shankFromPlumbDeg");
        Assert.Equal(["fresh", "soaked"], root.GetProperty("states").EnumerateArray().Select(s => s.GetProperty("state").GetString()));
        foreach (JsonElement state in root.GetProperty("states").EnumerateArray())
        {
            AssertFields(state, "state tow attitudes sink ledger tolerance");
            AssertFields(state.GetProperty("tow")[0], "speedMS pitchDeg leanDeg keelHeightMm dragMN liftMN lineAngleDeg verdict");
            AssertFields(state.GetProperty("attitudes")[0], "pitchDeg leanDeg share");
            AssertFields(state.GetProperty("sink"), "rateMS pitchDeg depthAfter5sM");
            AssertFields(state.GetProperty("ledger")[0], "part keelMomentGmm");
            AssertFields(state.GetProperty("tolerance"), "accuracy flies asIntended asIntendedLow asIntendedHigh leaning flipped");
        }

        AssertFields(root.GetProperty("assumed")[0], "what value why");
        Assert.Equal("Copper Loach", root.GetProperty("recipe").GetString());
        Assert.Equal("point up", root.GetProperty("intent").GetString());
    }

    private static void AssertFields(JsonElement element, string names) =>
        Assert.All(names.Split(' '), name => Assert.True(element.TryGetProperty(name, out _), $"{name} is missing"));

    private string Write(string recipe)
    {
        string file = Path.Combine(_folder.FullName, "fly.fly.yaml");
        File.WriteAllText(file, recipe);
        return file;
    }
}
