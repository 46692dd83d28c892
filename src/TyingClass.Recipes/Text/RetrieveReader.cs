using System.Globalization;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>The keys of the fishing that say how the fly is retrieved.</summary>
internal static class RetrieveReader
{
    public static readonly string[] Keys =
        ["retrieve", "repeat", "count down", "line", "line out", "leader length", "rod tip", "water depth", "current", "wetted"];

    private const int MostRounds = 200;

    private static readonly Limit CountDown = new(Dimension.Duration, "0 s", "300 s", "5 s");
    private static readonly Limit Sink = new(Dimension.Speed, "1 cm/s", "30 cm/s", "5 cm/s");
    private static readonly Limit LineOut = new(Dimension.Length, "1.5 m", "40 m", "12 m");
    private static readonly Limit LeaderLength = new(Dimension.Length, "0.3 m", "10 m", "2.7 m");
    private static readonly Limit RodTip = new(Dimension.Length, "-2 m", "4 m", "10 cm");
    private static readonly Limit WaterDepth = new(Dimension.Length, "0.1 m", "50 m", "3 m");
    private static readonly Limit Current = new(Dimension.Speed, "-2 m/s", "2 m/s", "0.3 m/s");
    private static readonly Limit Wetted = new(Dimension.Duration, "0 s", "3600 s", "60 s");

    public static RetrieveSpec Read(MapReader map)
    {
        RetrieveSpec retrieve = new()
        {
            Repeat = Rounds(map),
            CountDownS = map.Quantity("count down", CountDown),
            LineSinkMS = Line(map),
            LineOutM = map.Quantity("line out", LineOut),
            LeaderLengthM = map.Quantity("leader length", LeaderLength),
            RodTipM = map.Quantity("rod tip", RodTip),
            WaterDepthM = map.Quantity("water depth", WaterDepth),
            CurrentMS = map.Quantity("current", Current),
            WettedS = map.Quantity("wetted", Wetted),
        };
        if (retrieve.LeaderLengthM is { } leaderM && leaderM >= (retrieve.LineOutM ?? Catalogue.RetrieveScale.LineOut.Value))
            map.Complain("leader length", "The leader is as long as all the line that is out. Make it shorter, or “line out” longer.");
        if (map.Map.Find("retrieve") is YamlList list) return retrieve with { Round = RetrieveText.Read(list, map) };
        if (map.Text("retrieve", RetrieveText.Forms) is { } text && RetrieveText.TryRead(text, ref retrieve) is { } error) map.Complain("retrieve", error);
        return retrieve;
    }

    private static int? Rounds(MapReader map)
    {
        if (map.Text("repeat", "“8”") is not { } text) return null;
        if (int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int rounds) && rounds is >= 1 and <= MostRounds) return rounds;
        map.Complain("repeat", $"{WordList.Quote(text)} is not how often the round is made. Write a whole number, 1 to {MostRounds}.");
        return null;
    }

    private static double? Line(MapReader map)
    {
        if (map.Text("line", "“floating”") is not { } text) return null;
        string plain = WordList.Plain(text);
        if (plain is "floating" or "floats") return 0;
        double sinkMS = 0;
        string? error = plain.StartsWith("sinks ", StringComparison.Ordinal)
            ? Sink.TryRead(plain["sinks ".Length..], out sinkMS)
            : $"{WordList.Quote(text)} does not say whether the line floats. Write “floating”, or how fast it sinks: “sinks 5 cm/s”.";
        if (error is null) return sinkMS;
        map.Complain("line", error);
        return null;
    }
}
