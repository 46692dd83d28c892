using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Quantities;
using Xunit;
using static TyingClass.Lessons.Tests.Kinds.Predict.ReasonFlies;

namespace TyingClass.Lessons.Tests.Kinds.Predict;

/// <summary>
/// The reason that each prediction of the course marks as the one that holds, put to the engine: the fly is solved anew without what the reason names, or the
/// figure that the reason speaks of is looked at. A reason that a lesson words otherwise wants its claim looked at again.
/// </summary>
public sealed class ReasonsHoldTests
{
    private static readonly Lazy<Course> Lessons = new(() =>
    {
        using CourseFolder folder = new(Repo.Lessons);
        return folder.Current;
    });

    private static readonly Dictionary<string, Func<ReasonFlies, bool>> Claims = new()
    {
        // Dry it is about 2 g, and the water makes it more.
        ["safe-08"] = f => f.A("mass") <= 2.3e-3 && f.A("mass with held water") > 2.3e-3,
        // Less mass, and as much for the water to hold back.
        ["safe-01"] = f => f.D("mass of dumbbell eyes") < 0 && Same(f.D("displaced volume"), f.A("displaced volume"), 0.01),
        // The mass center lies behind the push point: with the wire in front it goes down by the nose.
        ["mass-07"] = f => f.Gap("mass center, x", "center of buoyancy, x") > MM
            && f.Set("pitch while sinking", ("parts[0].at", "1 mm"), ("parts[1].at", "12 mm"), ("parts[1].to", "22 mm")) < f.A("pitch while sinking") - 20,
        ["mass-01"] = f => f.Gap("center, x of bead", "mass center, x") < -MM && f.D("mass of bead") > 0,
        ["mass-04"] = f => f.Gap("mass center, x", "center of buoyancy, x") < -MM,
        // The jig eye lifts the ring: on a straight eye the same metal hangs less far below it.
        ["tow-09"] = f => f.A("level-line keel") > f.Set("level-line keel", ("hook.eye", "straight")) + 0.5 * MM
            && f.A("keel height") > 0 && f.Set("keel height", ("hook.eye", "straight")) < f.A("keel height"),
        ["tow-02"] = f => RingMoves(f.Gap("tow point, z", "mass center, z") - f.Set("tow point, z", ("hook.eye", "straight"))
            + f.Set("mass center, z", ("hook.eye", "straight")), f.A("mass center, z") - f.Set("mass center, z", ("hook.eye", "straight"))),
        ["tow-03"] = f => RingMoves(f.D("tow point, z"), f.D("mass center, z")),
        // The new steel is in the bend: the ring stays, and the weight goes to the side of the bend.
        ["hook-10"] = SteelIsInTheBend,
        // Along the shank: as much moment of the bend, and more grams that share it.
        ["hook-03"] = f => f.D("mass of hook") > 0
            && Same(f.B("mass") * f.B("mass center, z") - f.A("mass") * f.A("mass center, z"), f.A("mass") * f.A("mass center, z"), 0.05),
        ["hook-04"] = SteelIsInTheBend,
        ["hook-11"] = f => f.D("mass of bead") < 0 && f.Gap("center, x of bead", "mass center, x") < -MM,
        ["keel-09"] = f => f.Ranked("keel height").More is var more && Of(more, "keel moment of dumbbell eyes") > 0 && Of(more, "keel moment of bend") > 0,
        ["keel-03"] = f => f.A("keel moment of dumbbell eyes") > 0 && f.B("keel moment of dumbbell eyes") < 0
            && Same(f.D("mass"), f.A("mass"), 0.01),
        // The line it rolls about lies above the weight, and higher above it than the line of the shank through the ring.
        ["keel-04"] = f => f.A("keel height") > 0 && f.A("keel height") > f.A("level-line keel"),
        ["keel-10"] = f => RingMoves(f.D("tow point, z"), f.D("mass center, z")),
        // The eyes gain, though they hang no lower below the ring.
        ["eyes-04"] = f => f.D("keel moment of dumbbell eyes") > 0 && f.D("level-line keel") < 0.3 * f.D("keel height"),
        // Could the water not take hold of the hair, the fly would ride as it is meant.
        ["eyes-05"] = f => f.A("keel height") < 0 && Ungripped(f.First, "wing", "keel height") > 0,
        ["eyes-06"] = f => f.A("lean") > 15 && f.Set("lean", ("parts[0].clocked", null)) < 10,
        ["eyes-10"] = SteelIsInTheBend,
        ["bead-01"] = f => f.A("keel moment of cone") < 0 && f.D("keel moment of cone") > 0,
        ["bead-04"] = f => Between(WetMassKg(f.First, "bead") / WetMassKg(f.First, "bend"), 0.35, 0.65)
            && f.A("keel moment of bend") < 0 && -f.A("keel moment of bend") > f.A("keel moment of bead"),
        // The same weight, one of them on end.
        ["wrap-10"] = f => f.Ranked("sink rate") is var (more, less) && Same(f.D("wet weight"), f.A("wet weight"), 0.05)
            && Math.Abs(Of(more, "pitch while sinking")) > Math.Abs(Of(less, "pitch while sinking")) + 20,
        ["wrap-03"] = f => f.A("keel moment of wraps") < 0 && f.D("keel moment of wraps") < 0,
        ["wrap-02"] = f => f.A("keel moment of wraps") > 0 && f.B("keel moment of wraps") > 0,
        // With no air from the first it would be fresh what it is soaked.
        ["soak-09"] = AirDecides,
        ["soak-01"] = f => f.Ranked("wet weight") is var (more, less)
            && Same(Airless(less, "wet weight") - Of(more, "wet weight"), f.D("wet weight"), 0.3),
        // Without its air, and could the water not take hold of it, the hair would do far less harm.
        ["soak-05"] = f => Airless(f.Second, "keel height") > f.B("keel height")
            && Ungripped(f.Second, "wing", "keel height") + Airless(f.Second, "keel height") - 2 * f.B("keel height") > -0.3 * f.D("keel height"),
        ["soak-10"] = f => f.D("pitch") > 0 && f.D("mass center, behind eye") > MM,
        ["low-10"] = f => f.Ranked("keel height") is var (more, less) && Of(more, $"keel moment of {Metal(more)}") > 0
            && Of(less, $"keel moment of {Metal(less)}") < 0,
        // Lower weight and yet less keel: the line it rolls about went further down; without the water's grip on the belly it would not.
        ["low-03"] = f => f.D("level-line keel") > 0 && f.D("keel height") < f.D("level-line keel")
            && Ungripped(f.Second, "resin", "keel height") > f.B("keel height"),
        ["low-05"] = f => f.A("keel height") > 0 && f.A($"keel moment of {Metal(f.First)}") > 0,
        ["low-11"] = f => Same(Airless(f.First, "wet weight") - f.B("wet weight"), f.D("wet weight"), 0.3),
        ["pitch-01"] = f => f.D("pitch") > 0 && f.Gap("center, x of bead", "tow point, x") > MM,
        ["pitch-02"] = f => f.A("drag") > 2 * f.A("drag at 0.4 m/s") && Math.Abs(f.A("pitch")) < Math.Abs(f.A("pitch at 0.4 m/s")),
        ["sink-02"] = f => Same(f.D("wet weight"), f.A("wet weight"), 0.05) && Ungripped(f.Second, "hackle", "sink rate") > f.B("sink rate") + 0.05,
        // Of so little weight in the water a little denser water takes a good share.
        ["sink-06"] = f => f.D("wet weight") < -0.1 * f.A("wet weight"),
        // Four times the viscosity, hardly a change.
        ["sink-09"] = f => Same(f.D("sink rate"), f.A("sink rate"), 0.1),
        ["knot-01"] = f => f.Set("pitch while sinking", ("fishing.knot", "loop")) < f.A("pitch while sinking") - 20
            && f.Set("pitch while sinking", ("fishing.leader", "0.12 mm")) < f.A("pitch while sinking") - 10,
        ["knot-03"] = f => Math.Abs(f.B("pitch while sinking")) < Math.Abs(f.A("pitch while sinking")) - 5,
        // Of a stout leader the knot would matter.
        ["knot-04"] = f => f.Set("pitch", ("fishing.leader", "0.60 mm nylon"), ("fishing.knot", "cinched"))
            - f.Set("pitch", ("fishing.leader", "0.60 mm nylon")) is var stout && Math.Abs(stout) > Math.Abs(f.D("pitch")) && Math.Abs(f.A("pitch")) < 25,
        ["knot-10"] = f => f.D("wet weight") > 0 && Same(f.D("displaced volume"), f.A("displaced volume"), 0.01),
        ["hands-08"] = f => Math.Abs(f.A("tow point, z")) < 0.1 * MM && Math.Abs(CenterZ(f.First, Metal(f.First))) < 0.1 * MM,
        ["hands-02"] = f => RingMoves(f.D("tow point, z"), f.D("mass center, z")),
        ["cast-02"] = f => f.D("held water") > -f.D("mass"),
        ["cast-03"] = f => f.A("held water") > 0.05e-3,
        ["retrieve-01"] = f => f.A("pitch in the pause") > 20 && f.A("pitch while sinking") < 0,
        // The hollow wing holds the tail up: without its air the nose comes up toward the other one's.
        ["retrieve-02"] = f => f.Ranked("pitch in the pause").Less is var kite
            && Math.Max(Airless(kite, "pitch in the pause"), Without(kite, "wing", "pitch in the pause")) > Of(kite, "pitch in the pause") + 10,
        ["retrieve-03"] = f => f.D("hop") < 0 && f.A("hop") <= 0.45 && f.B("hop") <= 0.10,
        // Lengthen the leader and it does fish deeper.
        ["retrieve-07"] = f => Math.Abs(f.D("deepest")) < 0.1
            && f.Set("deepest", ("fishing.leader length", "4 m")) > f.Set("deepest", ("fishing.leader length", "2.5 m")) + Math.Abs(f.D("deepest")),
        ["clinic-04"] = AirDecides,
        ["rig-01"] = f => f.Ranked("keel height") is var (more, less) && (more.Body.Parts.Any(p => p.Name == "weed guard") ? more : less) is var guarded
            && (guarded == more ? less : more) is var bare && Ungripped(guarded, "weed guard", "keel height") is var free
            && Math.Abs(free - Of(bare, "keel height")) < 0.6 * Math.Abs(f.D("keel height")),
        ["rig-02"] = f => Between(f.ForOverAgainst(), 1, 1.5),
        ["rig-07"] = f => f.ForOverAgainst() > 1.5 && f.A("keel moment of dumbbell eyes") > -f.A("keel moment of bend")
            && f.Set("keel moment of dumbbell eyes", ("hook.size", "2")) < -f.Set("keel moment of bend", ("hook.size", "2")),
        ["rig-03"] = f => f.A("keel moment of putty") < 0 && f.Set("keel height", ("parts[0].side", "top")) > 0 && f.A("keel height") < 0,
        ["rig-04"] = f => f.D("mass of rattle") < 0 && f.D("keel moment of rattle") > 0,
    };

    public static TheoryData<string> Ids => [.. Lessons.Value.Exercises.Where(e => e.Task is PredictTask { Reasons.IsEmpty: false }).Select(e => e.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void RightReason_OfTheCourse_HoldsWhenTheFlyIsSolvedAgain(string id)
    {
        Assert.True(Claims.ContainsKey(id), $"The marked reason of {id} is not put to the engine yet: write its claim above.");
        Exercise exercise = Lessons.Value.Exercises.First(e => e.Id == id);
        PredictTask task = (PredictTask)exercise.Task;

        ReasonFlies flies = new(exercise);

        Assert.True(Claims[id](flies), $"The engine does not confirm: “{task.Reasons[task.RightReason - 1]}” ({flies.Ledgers()})");
    }

    private static bool Same(double difference, double of, double share) => Math.Abs(difference) <= share * Math.Abs(of);

    private static bool Between(double value, double low, double high) => value >= low && value <= high;

    private static bool RingMoves(double ringM, double weightM) => Math.Abs(ringM) > 5 * Math.Abs(weightM);

    private static bool SteelIsInTheBend(ReasonFlies f) => f.D("mass of hook") > 0 && f.D("mass center, z") < 0 && Math.Abs(f.D("tow point, z")) < 0.1 * MM;

    private static bool AirDecides(ReasonFlies f) => f.A("keel height when fresh") - f.A("keel height") is var lost && lost > 0.2 * MM
        && Same(Airless(f.First, "keel height when fresh") - f.A("keel height"), lost, 0.3);

    private static double CenterZ(FlyFigures fly, string part) =>
        fly.Body.Parts.First(p => p.Name == part).Masses is var masses ? masses.Sum(m => m.MassKg * m.PositionM.Z) / masses.Sum(m => m.MassKg) : 0;
}
