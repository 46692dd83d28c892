using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Drawing.Plates;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Figures;

/// <summary>One kind of teaching figure: each has a file here.</summary>
internal abstract class TeachingFigure
{
    /// <summary>As a lesson writes it.</summary>
    public abstract string Kind { get; }

    public virtual bool NeedsCurves => false;

    /// <exception cref="ArgumentException">The figure cannot be drawn of these flies.</exception>
    public abstract ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options);

    protected static SolvedFly One(FigureRequest request) =>
        request.Flies is [{ Fly: var fly }, ..] ? fly : throw new ArgumentException($"A figure of the kind \"{request.Kind}\" needs a fly.");

    protected static double Number(FigureRequest request, string key, double usual) =>
        request.Values.TryGetValue(key, out string? text) ? double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) : usual;

    protected static ImmutableArray<FigurePanel> Alone(Plate plate) => [new FigurePanel("", plate.ToSvg())];

    protected static DrawingOptions Second(DrawingOptions options) => options with { IdPrefix = options.IdPrefix + "-b" };
}
