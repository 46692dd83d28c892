using System.Collections.Immutable;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Html;
using Microsoft.Extensions.Caching.Memory;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;
using TyingClass.Web.Figures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Pictures;

/// <summary>Pictures of recipes for one page. A picture is drawn once and kept: the same recipe always gives the same one.</summary>
public sealed class FlyPictures(SolvedFlies flies, FlyCalled called, IMemoryCache cache, IHttpContextAccessor accessor)
{
    /// <summary>Of all pictures and comparisons kept at a time: some thousand of ordinary flies, some hundred of the largest.</summary>
    public const int MostKeptKB = 48 * 1024;

    // As wide as a plate stands on most pages: letters are set for it, and must stay readable on a phone.
    private const int PlateWidthPx = 520;

    // Stands in a kept picture for the prefix of its ids, which each place on a page has of its own.
    private const string KeptIds = "ids-of-this-picture";

    // Stretched over a wall a narrow picture has the larger letters.
    private const int WallWidthPx = 300;

    private int _onThisPage;
    private bool _isWall;
    private string _ids = "fly";

    /// <summary>What the ids of pictures drawn from now on begin with: a page is put together from pieces that were made for others.</summary>
    public void NameIds(string beginning) => (_ids, _onThisPage) = (beginning, 0);

    /// <summary>From now on for a wall, read from the back row: larger letters, and no line of words below, for the slide's title says it.</summary>
    public void ForTheWall() => _isWall = true;

    /// <summary>The picture as SVG, or null when the recipe cannot be read or has no such view.</summary>
    /// <param name="view">"side" or the name of a curve.</param>
    /// <param name="fresh">Fresh from the cast instead of soaked.</param>
    public IHtmlContent? Draw(string recipeText, string view = "side", bool fresh = false) =>
        Keep((recipeText, view), fresh, options => Plates.Find(view) is { } plate && Solved(recipeText, view) is { } fly ? plate(fly, options) : null);

    /// <summary>What a lesson draws at one place; null for a block that is no drawing, and where it cannot be drawn.</summary>
    public IHtmlContent? Draw(LessonBlock block) => block switch
    {
        FlyBlock fly => Draw(fly.RecipeText, fly.View, fly.Arguments.GetValueOrDefault("state") == "fresh"),
        FigureBlock figure => Figure(figure),
        _ => null,
    };

    /// <summary>Two flies from the side to one scale, the first above the second; null when either cannot be drawn.</summary>
    public IHtmlContent? Pair(string beforeText, string afterText) =>
        Keep((beforeText, afterText), false, options =>
            Attitude(beforeText) is { } before && Attitude(afterText) is { } after ? FlyDrawing.BeforeAfter(before, after, options) : null);

    /// <summary>The picture that shows what was asked; null when a fly of it cannot be drawn.</summary>
    /// <param name="otherText">The fly after a change, or the second of two.</param>
    /// <param name="names">What stands over each of a pair.</param>
    /// <param name="goal">A depth asked for: where the picture rules depths, it is drawn.</param>
    public IHtmlContent? Asked(
        AskedPicture asked, string recipeText, string? otherText = null, (string First, string Second)? names = null, DepthAsked? goal = null)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (names is { } given) names = (called.Say(given.First), called.Say(given.Second));
        return Keep((recipeText, $"{asked}\n{names}\n{goal}\n{otherText}"), false, options =>
        {
            DrawingOptions ringed = options with
            {
                TurnsOn = asked is { Part: { } part, Words: { } words } ? new TurnsOn(part, words) : null,
                DepthGoal = goal is null ? null : new DepthGoal(goal.DepthM, goal.Say(options.Units)),
            };
            return asked.Pair == FlyPair.Ways
                ? Whole(recipeText) is not { } either ? null
                    : FlyDrawing.BothWays(either, ringed) is { } ways ? Halves(ways, ("one way", "the other")) : FlyDrawing.Side(either, ringed)
                : Attitude(recipeText) is { } fly ? Draw(asked, fly, otherText, names, ringed) : null;
        });
    }

    /// <summary>Several flies to one scale, in the order given; null when one of them cannot be drawn.</summary>
    public IHtmlContent? Row(AskedPicture asked, IReadOnlyList<string> texts)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return Keep((string.Join('\n', texts), $"{asked}"), false, options =>
        {
            SolvedFly[] solved = [.. texts.Select(Attitude).OfType<SolvedFly>()];
            if (solved.Length < texts.Count) return null;
            IEnumerable<string> drawn = FlyDrawing.Row(asked.View, solved, options).Select((svg, i) => Half(svg, solved[i].Recipe.Name));
            return $"<div class=\"fly-halves\">{string.Concat(drawn)}</div>";
        });
    }

    private HtmlString? Figure(FigureBlock figure)
    {
        string rest = string.Join('\n', figure.Values.OrderBy(v => v.Key, StringComparer.Ordinal).Select(v => $"{v.Key}={v.Value}")
            .Concat(figure.Labels.Select(l => $"{l.Place}: {l.Words}")));
        return Keep((string.Join('\n', figure.Flies.Select(f => $"{f.Called}\n{f.Text}")), $"{figure.Kind}\n{rest}"), false, options =>
        {
            // An author's words: their figures are the reader's too.
            string Said(string words) => WrittenFigures.Beside(words, options.Units);
            ImmutableArray<FigureFly> solved = [.. figure.Flies.Select(f => (Called: Said(f.Called), Fly: TeachingFigures.NeedsCurves(figure.Kind)
                ? Whole(f.Text) : Attitude(f.Text))).Where(f => f.Fly is not null).Select(f => new FigureFly(f.Called, f.Fly!))];
            ImmutableArray<(string, string)> labels = [.. figure.Labels.Select(l => (l.Place, Said(l.Words)))];
            if (solved.Length < figure.Flies.Length) return null;
            try
            {
                ImmutableArray<FigurePanel> panels = TeachingFigures.Draw(new FigureRequest(figure.Kind, solved, figure.Values, labels), options);
                return panels is [{ Svg: var alone }] ? alone : $"<div class=\"fly-halves\">{string.Concat(panels.Select(p => Half(p.Svg, p.Name)))}</div>";
            }
            catch (ArgumentException)
            {
                // A fly of which the figure cannot be drawn: check-lessons says why.
                return null;
            }
        });
    }

    private string? Draw(
        AskedPicture asked, SolvedFly fly, string? otherText, (string First, string Second)? names, DrawingOptions options) => asked.Pair switch
        {
            FlyPair.Soak => Halves(
                FlyDrawing.Pair(asked.View, (fly, options with { State = WetState.Fresh }), (fly, options)), ("fresh from the cast", "soaked")),
            FlyPair.Knot => Halves(
                FlyDrawing.Pair(asked.View, (fly.OnKnot(Knot.Loop), options), (fly.OnKnot(Knot.Cinched), options)), ("on a loop", "cinched")),
            FlyPair.Speeds when asked.Speeds is (var slow, var fast) => Halves(
                FlyDrawing.Pair(asked.View, (fly.AtSpeed(slow), options), (fly.AtSpeed(fast), options)),
                (FigureSentence.At(slow, options.Units).Trim(), FigureSentence.At(fast, options.Units).Trim())),
            FlyPair.Change when otherText is not null => Attitude(otherText) is { } other
                ? Halves(FlyDrawing.Pair(asked.View, (fly, options), (other, options)), names ?? ("before", "after"))
                : null,
            _ => FlyDrawing.Seen(asked.SpeedMS is { } speed ? fly.AtSpeed(speed) : fly, asked.View, options),
        };

    // Side by side where there is room, one above the other on a phone.
    private static string Halves((string First, string Second) svgs, (string First, string Second) names) =>
        $"<div class=\"fly-halves\">{Half(svgs.First, names.First)}{Half(svgs.Second, names.Second)}</div>";

    private static string Half(string svg, string name) => $"<div><p class=\"half-name\">{HtmlEncoder.Default.Encode(name)}</p>{svg}</div>";

    private SolvedFly? Attitude(string recipeText) => flies.Attitude(recipeText) is { } fly ? called.Named(fly) : null;

    private SolvedFly? Whole(string recipeText) => flies.Whole(recipeText) is { } fly ? called.Named(fly) : null;

    private SolvedFly? Solved(string recipeText, string view) => Plates.NeedsAttitudeOnly(view) ? Attitude(recipeText) : Whole(recipeText);

    private HtmlString? Keep((string, string) what, bool fresh, Func<DrawingOptions, string?> draw)
    {
        Look look = accessor.HttpContext is { } http ? Look.Of(http.Request) : default;
        DrawingOptions options = new()
        {
            Units = look.Units,
            WidthPx = _isWall ? WallWidthPx : PlateWidthPx,
            Caption = !_isWall,
            IdPrefix = KeptIds,
            State = fresh ? WetState.Fresh : WetState.Soaked,
        };
        string? svg = cache.GetOrCreate((what, options, called.AreTheirs), entry =>
        {
            string? drawn = draw(options);
            entry.Size = 1 + (drawn?.Length ?? 0) * sizeof(char) / 1024;
            return drawn;
        });
        // Ids inside a picture must be the page's only ones.
        return svg is null ? null : new HtmlString(svg.Replace(KeptIds, $"{_ids}{++_onThisPage}", StringComparison.Ordinal));
    }
}
