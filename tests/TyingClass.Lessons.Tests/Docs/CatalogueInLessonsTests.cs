using TyingClass.Balance.Bodies;
using TyingClass.Balance.Casting;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Towing;
using TyingClass.Balance.Tying;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Docs;

/// <summary>
/// What the lessons quote from the engine's tables and laws, which is no figure of one fly and so stands in no lesson's <c>figures</c>: each sentence is made
/// from the engine's own number and looked for in the text.
/// </summary>
public sealed class CatalogueInLessonsTests
{
    private const double MPerInch = 0.0254;

    public static TheoryData<string, string> Sentences =>
    [
        .. Densities(), .. Hooks(), .. Weights(), .. Dressings(), .. Waters(), .. Leaders(), .. Hands(), .. Lines(),
    ];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Sentence_MadeFromTheEnginesNumber_StandsInTheLesson(string lesson, string sentence)
    {
        string file = Assert.Single(Directory.GetFiles(Repo.Lessons, lesson + "-*.md"));
        string text = string.Join(' ', File.ReadAllText(file).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(sentence, text, StringComparison.Ordinal);
    }

    private static IEnumerable<(string, string)> Densities()
    {
        double lead = KgM3("lead");
        yield return ("00", $"| tungsten (beads) | about {KgM3("tungsten") / 1000:0.0} | {KgM3("tungsten") / lead:0.00} |");
        yield return ("00", $"| lead | {lead / 1000:0.00} | 1.00 |");
        yield return ("00", $"| bismuth | {KgM3("bismuth") / 1000:0.00} | {KgM3("bismuth") / lead:0.00} |");
        yield return ("00", $"| brass | {KgM3("brass") / 1000:0.00} | {KgM3("brass") / lead:0.00} |");
        yield return ("00", $"| tin | {KgM3("tin") / 1000:0.00} | {KgM3("tin") / lead:0.00} |");
        yield return ("07", $"is {lead / 1000:0.00} g per cm³ for lead and {KgM3("lead-free wire") / 1000:0.00} for tin");
        foreach (double inch in (double[])[0.015, 0.020, 0.025, 0.030, 0.035])
        {
            double mm = 1000 * inch * MPerInch, area = Math.PI / 4 * mm * mm;
            yield return ("07", $"| {inch:0.000} in | {mm:0.00} mm | {area * lead / 1000:0.00} mg/mm | {area * KgM3("lead-free wire") / 1000:0.00} mg/mm |");
        }

        yield return ("09", $"| tungsten | {KgM3("tungsten") / 1000:0.0} | {Left("tungsten"):0.00} g |");
        yield return ("09", $"| lead | {lead / 1000:0.0} | {Left("lead"):0.00} g |");
        yield return ("09", $"| brass | {KgM3("brass") / 1000:0.0} | {Left("brass"):0.00} g |");
        yield return ("09", $"| steel (your hook) | {HookScale.WireDensity.Value / 1000:0.00} | {1 - 1000 / HookScale.WireDensity.Value:0.00} g |");
        yield return ("09", $"| tin, lead-free wire | {KgM3("tin") / 1000:0.0} | {Left("lead-free wire"):0.00} g |");
        yield return ("09", $"| glass | {KgM3("glass") / 1000:0.0} | {Left("glass"):0.00} g |");
        yield return ("09", $"| hair and fur, without air | {KgM3("bucktail") / 1000:0.00} | {Left("fur strip"):0.00} g |");
        yield return ("09", $"| resin | about {KgM3("uv resin") / 1000:0.00} | {Left("epoxy resin"):0.00} g |");
        yield return ("09", $"| closed-cell foam | about {KgM3("closed-cell foam") / 1000:0.00} | pulls **up** with {-Left("closed-cell foam"):0.0} g |");
    }

    // Sizes 1/0 and 4/0 are numbers 0 and −3 of the scale.
    private static IEnumerable<(string, string)> Hooks()
    {
        yield return ("03", $"{HookScale.WireDensity.Value * 1e-3:0.00} mg per mm³ × (0.7854 × 0.8 × 0.8) mm²");
        yield return ("03", $"The spear is {HookScale.SpearGapes.Value:0.00} × gape long");
        yield return ("03", $"plus {Math.PI / 2 + HookScale.SpearGapes.Value:0.00} × gape for bend and spear, plus about {EyeWires:0} × its own thickness");
        yield return ("03", $"| shank and ring | 20 mm + {EyeWires:0} × 0.8 mm | {20 + Math.Round(EyeWires) * 0.8:0.0} mm |");
        yield return ("05", $"| gape | {Gape(10)} | {Gape(2)} | {HookScale.GapeM(2) / HookScale.GapeM(10):0.00} |");
        yield return ("05", $"| wire | {Wire(10)} | {Wire(2)} | {HookScale.WireM(2) / HookScale.WireM(10):0.00} |");
        yield return ("05", $"| 8 | {Gape(8)} |");
        yield return ("05", $"| 4 | {Gape(4)} |");
        yield return ("05", $"| 1/0 | {Gape(0)} |");
        yield return ("05", $"| 4/0 | {Gape(-3)} |");
        yield return ("07", $"The Barge Hand's hook has wire of {Wire(4)}");
    }

    private static IEnumerable<(string, string)> Weights()
    {
        double bore = PartScale.BoreShare.Value;
        yield return ("06", $"a hole {bore:0.00} of the diameter wide");
        yield return ("06", $"leaves {Math.Pow(1 - bore * bore, 1.5):0.00} of the ball");
    }

    private static IEnumerable<(string, string)> Dressings()
    {
        Material fur = Materials.Find("fur strip"), bucktail = Materials.Find("bucktail"), deer = Materials.Find("deer hair"),
            marabou = Materials.Find("marabou");
        yield return ("00", $"For a fur strip we take {fur.HeldWater.Value:0}");
        yield return ("08", $"each milligram of fur holds {fur.CaughtAir.Value:0.0} mm³ of caught air and {fur.SealedAir.Value:0.0} mm³ of sealed air");
        yield return ("08", $"fur, without air | 100 mg ÷ {fur.DensityKgM3 / 1000:0.00} mg per mm³ | {100 / (fur.DensityKgM3 / 1000):0} mm³");
        yield return ("08",
            $"it is {fur.SoakTime.Value:0} s for a fur strip, {marabou.SoakTime.Value:0} s for loose marabou and {deer.SoakTime.Value:0} s for deer hair");
        yield return ("09",
            $"80 mg of it contain 80 ÷ {bucktail.DensityKgM3 / 1000:0.00} = {80 / (bucktail.DensityKgM3 / 1000):0} mm³ of hair and 80 "
                + $"× {bucktail.SealedAir.Value:0.00} = {80 * bucktail.SealedAir.Value:0} mm³ of sealed air");
    }

    private static IEnumerable<(string, string)> Waters()
    {
        double fresh = WaterProperties.At(15, 0).DensityKgM3, sea = WaterProperties.At(15, 1e-3 * FishingScale.SeaSalinity.Value).DensityKgM3;
        yield return ("11", $"{sea:0} against {fresh:0} kg in a cubic meter");
        yield return ("11", $"by about {sea - fresh:0} kg in a cubic meter");
        yield return ("11", $"{1e6 * WaterProperties.At(25, 0).ViscosityPaS:0} against {1e6 * WaterProperties.At(5, 0).ViscosityPaS:0} micropascal-seconds");
        yield return ("11", $"3 mm across, would drop at {FallMS(19300):0.00} m/s, and a ball of brass at {FallMS(KgM3("brass")):0.00} m/s");
    }

    private static IEnumerable<(string, string)> Leaders()
    {
        double stiffness = 1e6 * new Leader(0.30e-3, FishingScale.NylonModulus.Value * 1e9, FishingScale.NylonDensity.Value).BendingStiffnessNM2;
        yield return ("12", $"Nylon of 0.30 mm has a bending stiffness of about {stiffness:0.0} N·mm²");
        yield return ("12",
            "fluorocarbon, the engine takes it as "
                + $"somewhat {(FishingScale.FluorocarbonModulus.Value > FishingScale.NylonModulus.Value ? "stiffer" : "softer")} than nylon");

        LevelFall[] falls = [.. ((double[])[0.15, 0.30, 0.40]).Select(LevelFall.OfTheSentry)];
        yield return ("12", $"Its weight pulls {falls[1].AheadMm:0.0} mm ahead of the push point");
        yield return ("12", $"nose down: {falls[1].WetG:0.00} g × {falls[1].AheadMm:0.0} mm |"
            + string.Concat(falls.Select(f => $" {f.WetG * f.AheadMm:0.0} g·mm |")));
        yield return ("12", "nose up: the leader |" + string.Concat(falls.Select(f => $" {f.LeaderGmm:0.0} g·mm |")));
    }

    private static IEnumerable<(string, string)> Hands()
    {
        TyingSpread hand = TyingSpread.Of(TyingAccuracy.Practiced);
        yield return ("13",
            $"no larger than {1e3 * hand.SideM:0.0} mm to the side, {1e3 * hand.AlongM:0.0} mm along the shank, {hand.ClockRad * 180 / Math.PI:0}° about "
                + $"the shank, and {100 * hand.MassShare:0} % of the mass");
        foreach ((int hits, int of) in ((int, int)[])[(9, 10), (90, 100), (900, 1000)])
        {
            ShareInterval share = ShareInterval.Wilson(hits, of);
            yield return ("13", $"| {hits} of {(of < 1000 ? $"{of}" : Thousands(of))} | {100 * share.Low:0} % and {100 * share.High:0} % |");
        }

        yield return ("13", $"why the engine ties {(ReportOptions.Default.Flies == 1000 ? "a thousand" : $"{ReportOptions.Default.Flies}")}");
    }

    private static IEnumerable<(string, string)> Lines() =>
        FlyLine.All.Where(l => l.Number is >= 4 and <= 10).Select(l => ("14", $"| {l.Number} | {l.Grains:0} | {1000 * l.MassKg:0.0} |"));

    /// <summary>The Quay Sentry, cinched, held level as it sinks: its weight ahead of the push point, and what its slack leader turns it with.</summary>
    private sealed record LevelFall(double WetG, double AheadMm, double LeaderGmm)
    {
        public static LevelFall OfTheSentry(double leaderMm)
        {
            RecipeDraft draft = RecipeDraft.Parse(Repo.Recipe("recipes/quay-sentry.fly.yaml")!).Value!;
            BuiltFly fly = FlyBuilder.Build(RecipeParser.Parse(draft.With("fishing.leader", $"{leaderMm:0.00} mm nylon")).Value!);
            FishingConditions fished = fly.Conditions;
            MassMoments moments = MassMoments.Of(fly.Body.Parts, double.PositiveInfinity);
            double density = fished.Water.DensityKgM3, wetKg = moments.WetMassKg(density);
            Vector3D balance = moments.MassCenterM + moments.WetMomentKgM(density, moments.MassCenterM) / wetKg, up = new(0, 0, -1);
            DragField drag = new(fly.Body.Parts, fished.Water, balance);
            double speed = 0.3;
            Wrench leader = default;
            // Water on fly and leader together carries the weight.
            for (int i = 0; i < 60; i++)
            {
                double perLength = density / 2 * fished.Leader.DiameterM * speed * speed
                    * DragTable.Cylinder.At(speed * density * fished.Leader.DiameterM / fished.Water.ViscosityPaS);
                leader = SlackLeader.On(speed * up, perLength, fished.Leader.BendingStiffnessNM2);
                speed *= Math.Sqrt(wetKg * Standard.GravityMS2 / Vector3D.Dot(drag.At(speed * up).ForceN + leader.ForceN, up));
            }

            double push = PushPoint.BehindFrontM(fly.Body, fished, Intent.PointUp)!.Value;
            return new LevelFall(1e3 * wetKg, 1e3 * (push - balance.X), 1e6 / Standard.GravityMS2 * Math.Abs(leader.MomentNM.Y));
        }
    }

    private static double EyeWires => HookScale.EyeLegWires.Value + Math.PI * (HookScale.RingOuterWires.Value - 1);

    private static double KgM3(string material) => Materials.Find(material).DensityKgM3;

    /// <summary>Of each gram, in water taken as 1000 kg/m³.</summary>
    private static double Left(string material) => 1 - 1000 / KgM3(material);

    private static string Gape(double number) => $"{1e3 * HookScale.GapeM(number):0.0} mm";

    private static string Wire(double number) => $"{1e3 * HookScale.WireM(number):0.00} mm";

    private static string Thousands(double value) => value.ToString("#,0", System.Globalization.CultureInfo.InvariantCulture).Replace(',', ' ');

    /// <summary>
    /// Steady fall of a smooth ball of 3 mm in fresh water of 20 °C, m/s: weight less buoyancy against Brown and Lawler's drag, by repeated substitution.
    /// </summary>
    private static double FallMS(double ballKgM3)
    {
        const double d = 3e-3, g = 9.80665;
        Water water = WaterProperties.At(20, 0);
        double v = 1;
        for (int i = 0; i < 60; i++)
        {
            double drag = SphereDrag.BrownLawler(water.DensityKgM3 * v * d / water.ViscosityPaS);
            v = Math.Sqrt(4 * g * d * (ballKgM3 / water.DensityKgM3 - 1) / (3 * drag));
        }

        return v;
    }
}
