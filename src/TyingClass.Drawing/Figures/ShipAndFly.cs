using System.Collections.Immutable;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Figures;

/// <summary>A ship and a fly, both heeled alike, with the lever that rolls them back.</summary>
internal sealed class ShipAndFly : TeachingFigure
{
    private const double UsualHeelDeg = 20;

    public override string Kind => "ship and fly";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        SolvedFly fly = One(request);
        double heel = Number(request, "heel", UsualHeelDeg);
        return
        [
            new FigurePanel("a ship, seen from ahead", new ShipPlate(heel, options).ToSvg()),
            new FigurePanel($"{fly.Recipe.Name}, seen from ahead", new HeeledPlate(fly, heel, Second(options)).ToSvg()),
        ];
    }
}
