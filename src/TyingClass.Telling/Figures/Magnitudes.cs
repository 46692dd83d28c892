using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>Every quantity the programs tell of.</summary>
public static class Magnitudes
{
    public static readonly Magnitude Mass = new("mass", Dimension.Mass, Precision.FlyMass, "mass of the dry fly in air") { Label = "Mass, dry" };

    public static readonly Magnitude HeldWater =
        new("held water", Dimension.Mass, Precision.FlyMass, "water the soaked dressing carries when cast") { Label = "Water it carries" };

    public static readonly Magnitude MassWithHeldWater =
        new("mass with held water", Dimension.Mass, Precision.FlyMass, "what the rod has to cast") { Label = "Mass to cast, wet" };

    public static readonly Magnitude WetWeight =
        new("wet weight", Dimension.Mass, Precision.FlyMass, "weight in water, as the mass that would weigh the same in air") { Label = "Weight in water" };

    public static readonly Magnitude AddedMass =
        new("added mass", Dimension.Mass, Precision.FlyMass, "what the change adds to the dry fly; negative makes it lighter");

    public static readonly Magnitude PartMass = new("mass of", Dimension.Mass, Precision.FlyMass, "mass of one part");

    public static readonly Magnitude DisplacedVolume = new("displaced volume", Dimension.Volume, Precision.Volume, "volume of water the fly pushes aside");

    /// <summary>Any place along, beside or above the shank.</summary>
    public static readonly Magnitude Place = new("place", Dimension.Length, Precision.Place, "how far from the front of the shank");

    public static readonly ImmutableArray<Magnitude> Places =
    [
        .. Placed("mass center", "where the weight of the dry fly acts"),
        .. Placed("center of buoyancy", "where the lift of the water acts"),
        .. Placed("balance point", "where the weight that is left in water acts"),
        .. Placed("tow point", "where the leader pulls"),
        new("mass center, behind eye", Dimension.Length, Precision.Place, "how far behind the center of the eye the mass center lies, along the shank")
        {
            Phrase = "distance of the mass center behind the eye",
        },
        new("mass center, below eye", Dimension.Length, Precision.Place, "how far toward the point side of the eye the mass center lies")
        {
            Phrase = "distance of the mass center below the eye",
        },
        new("center, x of", Dimension.Length, Precision.Place, "where the weight of one part acts: how far behind the front of the shank"),
    ];

    public static readonly Magnitude HangAngle =
        new("hang angle", Dimension.Angle, Precision.Angle, "angle between the shank and the plumb line when the fly hangs from its eye in air")
        {
            Label = "Hung dry, shank from plumb",
        };

    public static readonly Magnitude LevelLineKeel =
        new("level-line keel", Dimension.Length, Precision.Place, "how far the balance point lies on the keel side of a level line through the eye");

    public static readonly Magnitude KeelHeight =
        new("keel height", Dimension.Length, Precision.Place,
            "how far its weight hangs below the hinge line it rolls about: positive it returns, negative it flips");

    public static readonly Magnitude Pitch =
        new("pitch", Dimension.Angle, Precision.Angle, "how far the nose points up when towed; negative is nose down") { Label = "Pitch, nose up positive" };

    public static readonly Magnitude Lean =
        new("lean", Dimension.Angle, Precision.Angle,
        "how far it rolls from the way it was meant to ride; 180° is flipped")
        { Label = "Lean from as intended" };

    public static readonly Magnitude Drag = new("drag", Dimension.Force, Precision.SmallForce, "pull of the water along the flow");

    public static readonly Magnitude Lift = new("lift", Dimension.Force, Precision.SmallForce, "push of the water upward; negative planes down");

    public static readonly Magnitude LineAngle =
        new("line angle", Dimension.Angle, Precision.Angle, "how far above the horizontal the leader leaves the eye") { Label = "Line above the horizontal" };

    public static readonly Magnitude FishingSpeed = new("speed", Dimension.Speed, Precision.TowSpeed, "how fast the water passes it");

    public static readonly Magnitude SinkRate =
        new("sink rate", Dimension.Speed, Precision.SinkRate, "steady speed downward on a slack line, before the leader slows it")
        { Label = "Sink rate on a slack line" };

    public static readonly Magnitude FirstMeterRate =
        new("rate over the first meter", Dimension.Speed, Precision.SinkRate,
            "mean speed downward over the first meter of a pause, the leader drawn down behind it")
        {
            Label = "Over the first meter",
        };

    public static readonly Magnitude PitchSinking =
        new("pitch while sinking", Dimension.Angle, Precision.Angle, "how far the nose points up on a slack line; negative is nose down");

    public static readonly Magnitude LeanSinking =
        new("lean while sinking", Dimension.Angle, Precision.Angle, "how far it rolls on a slack line from the way it was meant to ride");

    public static readonly Magnitude Depth =
        new("depth", Dimension.Length, Precision.Depth, "depth reached in a pause from rest, 5 s unless said") { Label = "Depth after a pause of 5 s" };

    public static readonly Magnitude RidesAsIntended =
        new("rides as intended", Dimension.Share, Precision.Share, "share of flies tied like it that ride within 30° of the way they were meant to")
        {
            Phrase = "share of flies tied like it that ride as intended",
            Label = "Of flies tied like it, ride as intended",
        };

    public static readonly Magnitude Leans = new("leans", Dimension.Share, Precision.Share, "share of flies tied like it that lean 30° to 120°")
    {
        Phrase = "share of flies tied like it that lean",
    };

    public static readonly Magnitude Flips = new("flips", Dimension.Share, Precision.Share, "share of flies tied like it that lean over 120°")
    {
        Phrase = "share of flies tied like it that flip",
    };

    /// <summary>An end of the 95 % interval of a share.</summary>
    public static readonly Magnitude ShareInterval = new("95 % interval", Dimension.Share, Precision.Interval, "where the share lies, from so many flies");

    public static readonly Magnitude RightingRange =
        new("righting range", Dimension.Angle, Precision.Angle,
        "how far the fly can be knocked over and still come back")
        { Label = "Comes back when tipped by up to" };

    public static readonly Magnitude KeelMoment =
        new("keel moment of", Dimension.Moment, Precision.KeelMoment, "one part's say in which way up the fly rides: positive helps");

    public static readonly Magnitude MassMoment =
        new("mass moment of", Dimension.Moment, Precision.KeelMoment, "mass of one part times its distance behind the front of the shank");

    public static readonly Magnitude SoakTime = new("soak", Dimension.Duration, Precision.Time, "how long it has been in the water");

    public static readonly Magnitude Hop =
        new("hop", Dimension.Length, Precision.Hop, "how far a strip lifts the fly once the retrieve repeats itself") { Label = "A strip lifts it by" };

    public static readonly Magnitude Deepest =
        new("deepest", Dimension.Length, Precision.Depth, "how deep the fly gets in the last round of the retrieve")
        {
            Phrase = "greatest depth of the retrieve",
            Label = "Deepest",
        };

    public static readonly Magnitude Shallowest =
        new("shallowest", Dimension.Length, Precision.Depth, "how near the surface it comes in the last round of the retrieve")
        {
            Phrase = "least depth of the retrieve",
            Label = "Shallowest",
        };

    public static readonly Magnitude DivePitch =
        new("pitch in the pause", Dimension.Angle, Precision.Angle,
            "where the nose points when it points most steeply down in the pause; negative is nose down")
        {
            Label = "Nose in the pause, up positive",
        };

    public static readonly Magnitude UprightShare =
        new("upright share", Dimension.Share, Precision.Share,
            "share of the time, from the first strip on, that it rides within 30° of the way it was meant to")
        {
            Phrase = "share of the time it rides as intended",
            Label = "Of the time, rides as intended",
        };

    public static readonly Magnitude PointDownTime =
        new("time to point down", Dimension.Duration, Precision.Beat, "how long a pause must be until the nose points 20° down")
        {
            Label = "Pause until the nose points down",
        };

    public static readonly Magnitude CountDepth =
        new("depth after a count", Dimension.Length, Precision.Depth, "depth reached on the count, before the first strip, on the line of the retrieve")
        {
            Label = "Depth when the count is over",
        };

    public static readonly Magnitude Tension =
        new("pull of the leader", Dimension.Force, Precision.SmallForce, "what the leader pulls the eye with");

    public static readonly Magnitude MassCenterX = Places[0], MassCenterZ = Places[2];

    public static ImmutableArray<Magnitude> All { get; } =
    [
        Mass, HeldWater, MassWithHeldWater, WetWeight, AddedMass, PartMass, DisplacedVolume, .. Places, HangAngle, LevelLineKeel, KeelHeight, Pitch, Lean, Drag,
        Lift,
        LineAngle, FishingSpeed, SinkRate, FirstMeterRate, PitchSinking, LeanSinking, Depth,
        RidesAsIntended, Leans, Flips, ShareInterval, RightingRange, KeelMoment,
        MassMoment, SoakTime, Hop, Deepest, Shallowest, DivePitch, UprightShare, PointDownTime, CountDepth, Tension,
    ];

    private static readonly FrozenDictionary<string, Magnitude> ByName = All.ToFrozenDictionary(m => m.Name, StringComparer.OrdinalIgnoreCase);

    public static Magnitude? Find(string name) => ByName.GetValueOrDefault(name);

    private static IEnumerable<Magnitude> Placed(string name, string meaning) =>
    [
        new($"{name}, x", Dimension.Length, Precision.Place, $"{meaning}: how far behind the front of the shank")
        {
            Phrase = $"distance from the front of the shank to the {name}",
            Label = $"{Grammar.Capital(name)} behind the front of the shank",
        },
        new($"{name}, y", Dimension.Length, Precision.Place, $"{meaning}: how far to the side, toward the tyer's right looking forward along the shank")
        {
            Phrase = $"distance of the {name} to the side",
            Label = $"{Grammar.Capital(name)} to the side",
        },
        new($"{name}, z", Dimension.Length, Precision.Place, $"{meaning}: how far above the shank's line in the vise; negative is toward the point")
        {
            Phrase = $"height of the {name} above the shank",
            Label = $"{Grammar.Capital(name)} above the shank’s line",
        },
    ];
}
