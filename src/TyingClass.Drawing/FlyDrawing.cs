using TyingClass.Balance.Reports;
using TyingClass.Drawing.Plates;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Reasons;

namespace TyingClass.Drawing;

/// <summary>
/// Pictures of a solved fly as SVG, to scale: the viewBox is in millimeters with the tow point at its origin. Nothing is computed here that the report could
/// say.
/// </summary>
public static class FlyDrawing
{
    // Two attitudes as near as this are drawn as one.
    private const double SameDeg = 3;

    /// <summary>From the side, in the attitude it settles in when towed.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Side(SolvedFly fly, DrawingOptions options) => new SidePlate(fly, options).ToSvg();

    /// <summary>From ahead along the shank, at the lean it settles in.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Front(SolvedFly fly, DrawingOptions options) => new FrontPlate(fly, options).ToSvg();

    /// <summary>Hung dry from its eye against a plumb line.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Hang(SolvedFly fly, DrawingOptions options) => new HangPlate(fly, options).ToSvg();

    /// <summary>
    /// Seen along the hinge line, from ahead, with a dial of heel round it. The fly stands in a group of its own (class <c>fly-tipping</c>): turned about the
    /// origin by the heel, it shows the fly tipped, exactly. Below, the same fly at a few heels, one after another.
    /// </summary>
    /// <param name="heelsDeg">What is shown below, in order; 0 to 180.</param>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Tip(SolvedFly fly, IReadOnlyList<double> heelsDeg, DrawingOptions options) => new TipPlate(fly, heelsDeg, options).ToSvg();

    /// <summary>
    /// The fly from the side in every attitude it takes over the solved speeds, one upon the other, each in a group of class <c>fly-pose</c>; the figures of
    /// the run stand in data attributes. A script shows one at a time and turns it by the little that its pitch differs.
    /// </summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Run(SolvedFly fly, DrawingOptions options) => new RunPlate(fly, options).ToSvg();

    /// <summary>
    /// The last round of its retrieve as a film strip, at true spacing along its path. For a script that moves it when asked, the whole round stands in data
    /// attributes of the group <c>fly-film-moving</c>.
    /// </summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Film(SolvedFly fly, DrawingOptions options) => new FilmPlate(fly, options).ToSvg();

    /// <summary>Two flies, or one fly retrieved in two ways, as film strips to one scale and one ruler of depth.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static (string First, string Second) Films(SolvedFly first, SolvedFly second, DrawingOptions options)
    {
        IReadOnlyList<FilmScale?> scales = FilmPlate.Common([first, second], options);
        return (new FilmPlate(first, options, scales[0]).ToSvg(), new FilmPlate(second, Second(options), scales[1]).ToSvg());
    }

    /// <summary>As it sits in the vise, shank level, without any mark of how it swims.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Vise(SolvedFly fly, DrawingOptions options) => new VisePlate(fly, options).ToSvg();

    /// <summary>Two side views to one scale, the first above the second.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string BeforeAfter(SolvedFly before, SolvedFly after, DrawingOptions options) => new PairPlate(before, after, options).ToSvg();

    /// <summary>One fly as a question looks at it.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Seen(SolvedFly fly, FlyView view, DrawingOptions options) =>
        IsFilm(view) ? Film(fly, Marked(options, view)) : Plate(fly, view, options, null).ToSvg();

    /// <summary>Two flies, or one fly twice, to one scale: two pictures, to stand side by side or one above the other.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static (string First, string Second) Pair(
        FlyView view, (SolvedFly Fly, DrawingOptions Options) first, (SolvedFly Fly, DrawingOptions Options) second) =>
        IsFilm(view) ? Films(first.Fly, second.Fly, Marked(first.Options, view))
            : Pair(width => Plate(first.Fly, view, first.Options, width), width => Plate(second.Fly, view, Second(second.Options), width));

    /// <summary>Several flies to one scale, one picture each.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static IReadOnlyList<string> Row(FlyView view, IReadOnlyList<SolvedFly> flies, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(flies);
        if (IsFilm(view))
        {
            DrawingOptions marked = Marked(options, view);
            IReadOnlyList<FilmScale?> scales = FilmPlate.Common(flies, marked);
            return [.. flies.Select((f, i) => new FilmPlate(f, marked with { IdPrefix = $"{options.IdPrefix}-{i}" }, scales[i]).ToSvg())];
        }

        double width = flies.Max(f => Plate(f, view, options, null).NaturalWidthMm);
        return [.. flies.Select((f, i) => Plate(f, view, options with { IdPrefix = $"{options.IdPrefix}-{i}" }, width).ToSvg())];
    }

    /// <summary>
    /// A fly in the two commonest ways it can ride at its own speed; null where there is but one. Leaning as far to the left as to the right is one way.
    /// </summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static (string First, string Second)? BothWays(SolvedFly fly, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(fly);
        StableAttitude[] ways = [.. Apart(fly.Report.State(options.State).Attitudes).OrderByDescending(a => a.Share).Take(2)];
        return ways.Length < 2 ? null
            : Pair(width => new SidePlate(fly, options, width, ways[0]), width => new SidePlate(fly, Second(options), width, ways[1]));
    }

    private static List<StableAttitude> Apart(IEnumerable<StableAttitude> attitudes)
    {
        List<StableAttitude> apart = [];
        foreach (StableAttitude attitude in attitudes)
        {
            int same = apart.FindIndex(a => Math.Abs(a.LeanDeg - attitude.LeanDeg) < SameDeg && Math.Abs(a.PitchDeg - attitude.PitchDeg) < SameDeg);
            if (same < 0) apart.Add(attitude);
            else apart[same] = apart[same] with { Share = apart[same].Share + attitude.Share };
        }

        return apart;
    }

    private static (string First, string Second) Pair(Func<double?, FlyPlate> first, Func<double?, FlyPlate> second)
    {
        double width = Math.Max(first(null).NaturalWidthMm, second(null).NaturalWidthMm);
        return (first(width).ToSvg(), second(width).ToSvg());
    }

    private static bool IsFilm(FlyView view) => view is FlyView.Retrieved or FlyView.NoseInPause;

    private static DrawingOptions Marked(DrawingOptions options, FlyView view) =>
        options with { FilmMark = view == FlyView.NoseInPause ? FilmMarkKind.Nose : FilmMarkKind.Deepest };

    private static DrawingOptions Second(DrawingOptions options) => options with { IdPrefix = options.IdPrefix + "-b" };

    private static FlyPlate Plate(SolvedFly fly, FlyView view, DrawingOptions options, double? widthMm) => view switch
    {
        FlyView.Falling => new FallPlate(fly, options, widthMm),
        FlyView.Hanging => new HangPlate(fly, options, widthMm),
        FlyView.Ahead => new FrontPlate(fly, options, widthMm),
        FlyView.Level => new LevelPlate(fly, options, widthMm),
        FlyView.Meant => new SidePlate(fly, options, widthMm, held: true),
        FlyView.Pulled => new PulledPlate(fly, options, widthMm),
        FlyView.Vise => new VisePlate(fly, options, widthMm),
        FlyView.Weighed => new WeighedPlate(fly, options, widthMm),
        FlyView.Placed => new PlacedPlate(fly, options, widthMm),
        _ => new SidePlate(fly, options, widthMm),
    };
}
