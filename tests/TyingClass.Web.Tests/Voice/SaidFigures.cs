using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Tests.Voice;

/// <summary>The named quantities of a text, with what is said of each.</summary>
internal static partial class SaidFigures
{
    private const string Figure = @"(?<figure>[−-]?[0-9]+(?:\.[0-9]+)?)";
    private const string Length = Figure + @"[ \u00A0](?<unit>mm|in)\b";
    private const string Speed = Figure + @"[ \u00A0](?<unit>m/s|ft/s)";
    private const string Mass = Figure + @"[ \u00A0](?<unit>g|gr|oz|grains)\b";

    private static readonly ImmutableArray<(string Name, Regex Pattern)> Patterns =
    [
        ("keel height", new Regex($@"[Kk]eel height(?: point (?:up|down))?(?:, (?:soaked|fresh|as intended))?(?: is)?[:,]? ?{Length}")),
        ("sink rate", new Regex($@"(?:[Ss]ink rate(?: on a slack line)?|[Ss]inks(?: at)?)[:,]? ?{Speed}")),
        ("mass", new Regex($@"(?:Mass, dry|It weighs(?! less)|(?<=\n)mass) ?{Mass}(?! less)")),
        ("hang angle", new Regex($@"(?:Hung dry, shank from plumb|The shank stands|hangs shank) ?{Figure}(?<unit>°)")),
        ("depth", new Regex(
            $@"(?:Depth after a pause of 5 s|(?<!Counted down for [0-9.]+ s )it is) ?{Figure}[ \u00A0](?<unit>m|ft|mm|in)\b(?: down after 5 s)?")),
        ("rides as intended", new Regex($@"(?:ride as intended|fly\):|as intended) ?{Figure}[ \u00A0](?<unit>%)")),
    ];

    public static IEnumerable<(string Name, string Said)> In(string text) =>
        Patterns.SelectMany(
        p => p.Pattern.Matches(text)
            .Select(m => (p.Name, m.Groups["unit"].Value == "°" ? m.Groups["figure"].Value + "°" : $"{m.Groups["figure"].Value} {m.Groups["unit"].Value}")));

    /// <summary>Figures that are not in the reader's unit, or have more or fewer digits than their quantity is told with.</summary>
    public static IEnumerable<string> OddlyWritten(string text, UnitSystem units)
    {
        foreach ((string name, string said) in In(text).Distinct())
        {
            Magnitude what = Magnitudes.Find(name)!;
            string again = Units.TryParse(said, what.Dimension, out double si, out string? error) ? what.Say(si, units) : error;
            if (again != said) yield return $"{name} {said}, not {again}";
        }
    }

    /// <summary>What may be said of each, fresh and soaked.</summary>
    public static ILookup<string, string> Expected(BalanceReport report, UnitSystem units) => report.States
        .SelectMany(s => new (string Name, string Said)[]
        {
            ("keel height", Magnitudes.KeelHeight.Say(Si.Mm(s.AtFishingSpeed.KeelHeightMm.For(report.Intent)), units)),
            // A flipped fly is drawn with the keel height of the way it rides.
            ("keel height", Magnitudes.KeelHeight.Say(Si.Mm(s.AtFishingSpeed.KeelHeightMm.For(FlyWords.Other(report.Intent))), units)),
            ("sink rate", Magnitudes.SinkRate.Say(s.Sink?.RateMS, units)),
            ("mass", Magnitudes.Mass.Say(Si.G(report.MassG), units)),
            ("hang angle", Magnitudes.HangAngle.Say(Si.Deg(report.Hang.ShankFromPlumbDeg), units)),
            ("depth", Magnitudes.Depth.Say(s.Sink?.DepthAfter5sM, units)),
            ("rides as intended", Magnitudes.RidesAsIntended.Say(s.Tolerance.AsIntended, units)),
        })
        .Distinct()
        .ToLookup(x => x.Name, x => x.Said);

    /// <summary>Figures in metric units that stand alone: not in parentheses behind a reader's own.</summary>
    public static IEnumerable<string> MetricAlone(string text) =>
        Metric().Matches(text).Select(m => text[Math.Max(0, m.Index - 30)..Math.Min(text.Length, m.Index + m.Length + 10)]);

    /// <summary>
    /// Figures in imperial units that stand alone, and are not what a shop or the trade calls a thing in every country: a fraction of an inch or an ounce, a
    /// wire or leader in thousandths of an inch, a leader's strength in pounds, the first 30 feet of a fly line.
    /// </summary>
    public static IEnumerable<string> ImperialAlone(string text) =>
        Imperial().Matches(text).Select(m => text[Math.Max(0, m.Index - 30)..Math.Min(text.Length, m.Index + m.Length + 10)]);

    [GeneratedRegex(@"(?<!\((?:about )?)(?<![−0-9./])(?!0?\.0[0-9]+\s(?:in|inch)\b)(?!30\sfeet)[−-]?[0-9]+(?:\.[0-9]+)?\s"
        + @"(?:in(?!\s[0-9a-z])|inch|inches|gr|grains?|oz|ounces?|ft|ft/s|feet|gr·in|in³|lb/ft³|°F)(?![\w·/)³²])")]
    private static partial Regex Imperial();

    [GeneratedRegex(@"(?<!\()(?<![−0-9.])[−-]?[0-9]+(?:\.[0-9]+)?\s(?:mm|cm|mm³|cm³|mg|g|m/s|g·mm|m|mN|kg/m³|°C)"
        + @"(?![\w·/)³²]|\sper|\s\([0-9./\s]+(?:in|grains?)\))")]
    private static partial Regex Metric();
}
