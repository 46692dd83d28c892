using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage.BenchLog;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.BenchLog;

/// <summary>Reads what was seen. Every mistake at once, by field.</summary>
internal static class LogReader
{
    public static readonly ImmutableArray<(string Value, string Words, SeenWay Way)> Ways =
    [
        ("point-down", "point down", SeenWay.PointDown),
        ("point-up", "point up", SeenWay.PointUp),
        ("on-its-side", "on its side", SeenWay.OnItsSide),
        ("no-clear-way", "now so, now so", SeenWay.NoClearWay),
    ];

    /// <returns>Null when there are errors.</returns>
    public static Seen? Read(LogPost post, Dictionary<string, string> errors)
    {
        Seen seen = new()
        {
            HangAngleRad = Number("hang", post.Hang, Dimension.Angle, 0, Math.PI, "0° and 180°"),
            Way = Way(post.Way),
            MassKg = Number("mass", post.Mass, Dimension.Mass, 1e-6, 0.05, "1 mg and 50 g"),
            SinkTimeS = Number("sink-time", post.SinkTime, Dimension.Duration, 0.05, 600, "0.05 s and 10 minutes"),
            SinkDepthM = Number("sink-depth", post.SinkDepth, Dimension.Length, 0.02, 10, "2 cm and 10 m"),
            HopM = Number("hop", post.Hop, Dimension.Length, 0, 2, "0 cm and 2 m"),
            NoseDownS = Number("nose-down", post.NoseDown, Dimension.Duration, 0, 60, "0 s and 60 s"),
            State = post.State == "fresh" ? WetState.Fresh : WetState.Soaked,
            WaterC = Number("water", post.Water, Dimension.Temperature, 0, 40, "0 °C and 40 °C"),
        };
        if (seen is { SinkTimeS: not null, SinkDepthM: null } && !errors.ContainsKey("sink-depth"))
            errors["sink-depth"] = "Over what depth did you time it? Give the distance between your two marks.";
        if (seen is { SinkDepthM: not null, SinkTimeS: null } && !errors.ContainsKey("sink-time"))
            errors["sink-time"] = "How long did it take over that depth?";
        if (errors.Count == 0 && seen is { HangAngleRad: null, Way: null, MassKg: null, SinkTimeS: null, HopM: null, NoseDownS: null })
            errors["hang"] = "Write down at least one thing you saw: the hang angle, which way up, the mass, a sink time, or a hop.";
        return errors.Count == 0 ? seen : null;

        double? Number(string field, string text, Dimension dimension, double low, double high, string range)
        {
            if (text.Length == 0) return null;
            if (!Units.TryParse(text, dimension, out double si, out string? error)) errors[field] = error;
            else if (!(si >= low && si <= high)) errors[field] = $"“{text}” is outside what can be taken here: between {range}.";
            else return si;
            return null;
        }
    }

    public static LogPost Write(LogEntry entry, UnitSystem units)
    {
        Seen seen = entry.Seen;
        return new LogPost(
            "", entry.Fly.RecipeText,
            TypingHelp.Again(seen.HangAngleRad, Dimension.Angle, units), seen.Way is { } way ? Ways.First(w => w.Way == way).Value : "",
            TypingHelp.Again(seen.MassKg, Dimension.Mass, units),
            TypingHelp.Again(seen.SinkTimeS, Dimension.Duration, units), TypingHelp.Again(seen.SinkDepthM, Dimension.Length, units),
            seen.State == WetState.Fresh ? "fresh" : "soaked", TypingHelp.Again(seen.WaterC, Dimension.Temperature, units), entry.Note)
        {
            Hop = TypingHelp.Again(seen.HopM, Dimension.Length, units),
            NoseDown = TypingHelp.Again(seen.NoseDownS, Dimension.Duration, units),
        };
    }

    public static string Words(SeenWay way) => Ways.First(w => w.Way == way).Words;

    private static SeenWay? Way(string value) => Ways.Where(w => w.Value == value).Select(w => (SeenWay?)w.Way).FirstOrDefault();
}
