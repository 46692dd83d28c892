using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Plates;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Figures;

/// <summary>The hook's own words beside the places they mean.</summary>
internal sealed class HookFigure : TeachingFigure
{
    public override string Kind => "hook";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options) =>
        Alone(new NamedPlate(One(request), request.Labels.IsEmpty ? [.. HookPlaces.Names.Select(n => (n, n))] : request.Labels, options));
}

/// <summary>The fly's parts, named as the recipe names them.</summary>
internal sealed class FlyFigure : TeachingFigure
{
    public override string Kind => "fly";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        SolvedFly fly = One(request);
        ImmutableArray<(string, string)> usual = [.. FlyBuilder.Names(fly.Recipe.Parts).Select(n => (n, n)), ("ring", "ring"), ("point", "point")];
        return Alone(new NamedPlate(fly, request.Labels.IsEmpty ? usual : request.Labels, options));
    }
}

/// <summary>Where the places of a hook are that have a word of their own.</summary>
internal static class HookPlaces
{
    public const string Gape = "gape";

    public static ImmutableArray<string> Names { get; } = ["ring", "shank", "bend", "point", "barb", Gape];

    /// <summary>In the hook frame, mm; null for what is no place of a hook.</summary>
    public static Vector3D? Find(string name, ResolvedHook hook)
    {
        double shank = 1e3 * hook.ShankM, gape = 1e3 * hook.GapeM, spear = 1e3 * hook.SpearM, wire = 1e3 * hook.WireM;
        return name switch
        {
            "ring" => 1e3 * hook.TowPointM,
            "shank" => new Vector3D(0.45 * shank, 0, 0.5 * wire),
            "bend" => new Vector3D(shank + 1e3 * hook.BendDepthM, 0, -gape / 2),
            "point" => 1e3 * hook.PointM,
            "barb" => new Vector3D(shank - spear + Math.Min(0.4 * spear, 5.2 * wire), 0, -gape + wire),
            Gape => new Vector3D(shank - spear, 0, -gape / 2),
            _ => null,
        };
    }
}

/// <summary>A fly or a bare hook in the vise, with words that point at its parts.</summary>
internal sealed class NamedPlate : FlyPlate
{
    private readonly View _view;
    private readonly ImmutableArray<(string Place, string Words)> _labels;

    public NamedPlate(SolvedFly fly, ImmutableArray<(string Place, string Words)> labels, DrawingOptions options)
        : base(fly, options with { Marks = MarkSet.ScaleBar, Caption = false })
    {
        _labels = labels;
        _view = new View(Pose.Vise, Report.TowPointMm, Facing.Side);
        Scene = new Scene(new Anatomy(fly, _view, Vector3D.UnitX));
        Content = Scene.Frame;
        Compose(Math.Max(NaturalWidthMm, 1.35 * Content.Width));
    }

    public override string Kind => "named";

    public override string Title => $"{Fly.Recipe.Name}: its parts by name";

    public override string Description =>
        $"In the vise, eye to the left, the shank level and the point below. The shank is "
        + $"{Magnitudes.Place.Say(Si.Mm(1e3 * Fly.Built.Hook.ShankM), Options.Units)} "
        + $"long, the gape {Magnitudes.Place.Say(Si.Mm(1e3 * Fly.Built.Hook.GapeM), Options.Units)}. Named are: {Grammar.And(_labels.Select(l => l.Words))}.";

    protected override string CaptionWords => "";

    private double GapeMm => 1e3 * Fly.Built.Hook.GapeM;

    private HeightLine Gape => new(HookPlaces.Gape, _view.At(HookPlaces.Find("point", Fly.Built.Hook)!.Value), GapeMm,
        _view.At(HookPlaces.Find("point", Fly.Built.Hook)!.Value).X - 0.7 * LetterMm);

    private bool HasGape => _labels.Any(l => l.Place == HookPlaces.Gape);

    protected override void DrawBehind(Ink ink)
    {
    }

    protected override void DrawOver(Ink ink)
    {
        if (HasGape) Gape.Draw(ink, LetterMm);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        foreach ((string place, string words) in _labels)
        {
            Point anchor = place == HookPlaces.Gape ? new Point(Gape.ColumnX, Gape.Box.Center.Y)
                : HookPlaces.Find(place, Fly.Built.Hook) is { } at ? _view.At(at)
                : Middle(place) ?? throw new ArgumentException($"{Fly.Recipe.Name} has nothing called \"{place}\" to point at.");
            wishes.Add(new LabelWish(words, place, anchor, 0.12 * LetterMm));
        }

        if (HasGape) kept.AddRange(Enumerable.Range(0, 7).Select(i =>
            Box.Around(new Point(Gape.ColumnX, Gape.TopY + GapeMm * i / 6), LetterMm / 2, LetterMm / 2)));
    }

    // The middle of the largest piece drawn of a part: a pair of eyes has two, a wing a hundred.
    private Point? Middle(string part)
    {
        Point[] all = [.. Scene.Pieces.Where(p => p.Part == part).SelectMany(p => p.Outline)];
        return all.Length == 0 ? null : all.Aggregate(new Point(0, 0), (sum, p) => sum + p) * (1.0 / all.Length);
    }
}
