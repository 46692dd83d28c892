using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Catalogue;

/// <summary>A part's outline with every dimension known. Which apply depends on the kind; the others are 0.</summary>
/// <param name="SizeM">Widest diameter: of a bead or cone, of one eye, of a body, hackle, foam or resin; the wire's own for wraps.</param>
/// <param name="LengthM">Of a strand from its tie-in; of anything else, along the shank.</param>
/// <param name="Turns">Of wire only.</param>
internal sealed record PartDimensions(double FrontM, double RearM, double SizeM, double LengthM, int Turns)
{
    public static PartDimensions Of(PartSpec part, ResolvedHook hook, AssumptionLog? log = null) => KindsOfPart.Of(part).Measure(part, hook, log);
}
