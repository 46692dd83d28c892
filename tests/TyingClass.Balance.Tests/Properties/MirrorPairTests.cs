using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

/// <summary>
/// A fly tied wrong to the left swims as the same fly tied wrong to the right, seen in a mirror: in every figure that is told, not in its moments alone.
/// </summary>
public sealed class MirrorPairTests
{
    private static readonly ReportOptions Quick = new() { Flies = 30, SpeedsMS = [0.2, 0.8], SoakTimesS = [10] };

    [Fact]
    public void Report_MirrorPairs_AgreeInEveryFigure()
    {
        List<string> differ = [];
        for (int seed = 60_000; seed < 60_150; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            Compare(differ, $"body {seed}", body, conditions);
            BuiltFly built = FlyBuilder.Build(RandomRecipes.Fly(seed));
            Compare(differ, $"recipe {seed}", built.Body, built.Conditions);
        }

        Assert.True(differ.Count == 0, string.Join('\n', differ.Take(20)));
    }

    private static void Compare(List<string> differ, string name, FlyBody body, FishingConditions conditions)
    {
        BalanceReport left = BalanceEngine.Report(body, conditions, Quick), right = BalanceEngine.Report(body.Mirrored(), conditions, Quick);
        foreach ((StateReport a, StateReport b) in left.States.Zip(right.States))
        {
            string what = $"{name} {a.State}";
            if (a.Verdict.Kind != b.Verdict.Kind) differ.Add($"{what}: {a.Verdict.Kind} and {b.Verdict.Kind}");
            foreach ((TowReport s, TowReport t) in a.Tow.Append(a.AtFishingSpeed).Zip(b.Tow.Append(b.AtFishingSpeed)))
            {
                Same($"pitch at {s.SpeedMS}", s.PitchDeg, t.PitchDeg, 1e-3);
                Same($"lean at {s.SpeedMS}", s.LeanDeg, t.LeanDeg, 1e-2);
                Same($"drag at {s.SpeedMS}", s.DragMN, t.DragMN, 1e-4 * Math.Abs(s.DragMN));
                Same($"lift at {s.SpeedMS}", s.LiftMN, t.LiftMN, 1e-4 * Math.Abs(s.DragMN));
                Same($"line at {s.SpeedMS}", s.LineAngleDeg, t.LineAngleDeg, 1e-2);
                if (s.Verdict != t.Verdict) differ.Add($"{what}: {s.Verdict} and {t.Verdict} at {s.SpeedMS}");
                Same($"keel at {s.SpeedMS}", s.KeelHeightMm.For(body.Intent), t.KeelHeightMm.For(body.Intent), 1e-5);
            }

            Same("righting range", a.Roll.RangeDeg, b.Roll.RangeDeg, 1e-3);
            if (Mirror(a.Roll.Side) != b.Roll.Side) differ.Add($"{what}: comes back from less on the {a.Roll.Side} and on the {b.Roll.Side}");
            Same("level-line keel", a.LevelLineKeelMm?.For(body.Intent), b.LevelLineKeelMm?.For(body.Intent), 1e-6);
            Same("weight in water", a.WetWeightG, b.WetWeightG, 1e-9);
            Same("pitch on a loop", a.PitchOnALoopDeg, b.PitchOnALoopDeg, 1e-3);
            foreach ((RollPoint s, RollPoint t) in a.Roll.Points.Zip(b.Roll.Points)) Same($"righting at {s.HeelDeg}", s.RestoringGmm, t.RestoringGmm, 1e-5);
            Same("rate over the first meter", a.Sink?.FirstMeterMS, b.Sink?.FirstMeterMS, 1e-5);
            Same("depth", a.Sink?.DepthAfter5sM, b.Sink?.DepthAfter5sM, 1e-5);
            Same("sinking lean", a.Sink?.LeanDeg, b.Sink?.LeanDeg, 1e-2);
            Same("sink rate", a.Sink?.RateMS, b.Sink?.RateMS, 1e-5);
            Same("sinking pitch", a.Sink?.PitchDeg, b.Sink?.PitchDeg, 1e-2);
            Same("ways to sink", a.Sink?.Ways.Length, b.Sink?.Ways.Length, 0);
            Same("as intended", a.Tolerance.AsIntended, b.Tolerance.AsIntended, 1e-9);
            Same("flipped", a.Tolerance.Flipped, b.Tolerance.Flipped, 1e-9);
            Same("attitudes", a.Attitudes.Length, b.Attitudes.Length, 0);
            foreach ((StableAttitude s, StableAttitude t) in a.Attitudes.Zip(b.Attitudes)) Same("share of releases", s.Share, t.Share, 1e-9);
            foreach ((LedgerEntry s, LedgerEntry t) in a.Ledger.Zip(b.Ledger)) Same($"share of the {s.Part}", s.KeelMomentGmm, t.KeelMomentGmm, 1e-6);
            foreach ((HeelingEntry s, HeelingEntry t) in a.Heeling.Zip(b.Heeling)) Same($"heeling of the {s.Part}", s.HeelingGmm, -t.HeelingGmm, 1e-6);

            void Same(string figure, double? s, double? t, double within)
            {
                if (s.HasValue != t.HasValue || Math.Abs((s ?? 0) - (t ?? 0)) > within) differ.Add($"{what}, {figure}: {s} and {t}");
            }
        }
    }

    private static HeelSide Mirror(HeelSide side) => side switch { HeelSide.Left => HeelSide.Right, HeelSide.Right => HeelSide.Left, _ => side };
}
