using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Drawing.Plates;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Figures;

/// <summary>One fly on a slack leader and on a taut one, to one scale.</summary>
internal sealed class SlackAndTaut : TeachingFigure
{
    public override string Kind => "slack and taut";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        SolvedFly fly = One(request);
        double width = Math.Max(new FallPlate(fly, options).NaturalWidthMm, new SidePlate(fly, options).NaturalWidthMm);
        return
        [
            new FigurePanel("slack: it falls", new FallPlate(fly, options, width).ToSvg()),
            new FigurePanel("taut: it is pulled", new SidePlate(fly, Second(options), width).ToSvg()),
        ];
    }
}

/// <summary>One fly falling on two knots, to one scale.</summary>
internal sealed class LoopAndCinched : TeachingFigure
{
    public override string Kind => "loop and cinched";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        SolvedFly loop = One(request).OnKnot(Knot.Loop), cinched = One(request).OnKnot(Knot.Cinched);
        double width = Math.Max(new FallPlate(loop, options).NaturalWidthMm, new FallPlate(cinched, options).NaturalWidthMm);
        return
        [
            new FigurePanel("on a loop knot", new FallPlate(loop, options, width).ToSvg()),
            new FigurePanel("on a cinched knot", new FallPlate(cinched, Second(options), width).ToSvg()),
        ];
    }
}
