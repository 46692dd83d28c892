using System.CommandLine;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Reports;
using TyingClass.Telling.Sentences;

namespace TyingClass.CommandLine;

/// <summary>retrieve FILE [--json] [--units metric|imperial]: the fly stripped and let fall.</summary>
internal static class RetrieveVerb
{
    private const double RowS = 0.5;

    public static Command Command() => new FlyVerb("retrieve", "How deep a retrieve fishes, how far a strip lifts the fly, where its nose points in the pause.")
    {
        FileHelp = "A recipe, *.fly.yaml. What its fishing does not say of the retrieve is assumed.",
        JsonHelp = "Print one JSON object, the whole path with it, instead of text.",
        Solve = recipe => SolvedFly.Solve(recipe, Balance.Reports.ReportOptions.AttitudeOnly),
        Json = fly => RetrieveJson.Write(fly),
        Text = WriteText,
        IsWell = fly => fly.Retrieve.HasFigures,
    }.Command();

    private static void WriteText(SolvedFly fly, UnitSystem units, TextWriter output)
    {
        RetrieveReport r = fly.Retrieve;
        output.WriteLine(fly.Recipe.Name);
        foreach (string sentence in RetrieveSentence.Of(r, units)) output.WriteLine(sentence);
        if (r.HasFigures)
        {
            if (RetrieveSentence.Doubt(fly.RetrieveDoubt, units) is { } doubt) output.WriteLine(doubt);
            output.WriteLine();
            output.WriteLine($"{"time",8}{"nearer",9}{"depth",9}{"pitch",8}{"lean",7}{"pull",10}");
            int every = Math.Max(1, (int)Math.Round(RowS / (r.Path[1].TimeS - r.Path[0].TimeS)));
            foreach (RetrievePoint p in r.Path.Where((_, i) => i % every == 0))
            {
                string time = Magnitudes.PointDownTime.Say(p.TimeS, units), near = Magnitudes.Depth.Say(p.AlongM, units);
                string depth = Magnitudes.Depth.Say(p.DepthM, units), pull = p.IsSlack ? "slack" : Magnitudes.Tension.Say(Si.MN(p.TensionMN), units);
                output.WriteLine($"{time,8}{near,9}{depth,9}{FlyWords.Degrees(p.PitchDeg),8}{FlyWords.Degrees(p.LeanDeg),7}{pull,10}");
            }
        }

        output.WriteLine();
        string assumed = string.Join(", ", RetrieveBuilder.Assumed(fly.Recipe.Fishing.Retrieve));
        output.WriteLine(assumed.Length == 0 ? "Everything is as the recipe says." : $"Assumed, because the recipe does not say: {assumed}.");
    }
}
