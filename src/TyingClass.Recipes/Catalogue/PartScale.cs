using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Catalogue;

/// <summary>What a part of each kind looks like when the recipe does not say: estimates all, in proportion to the hook or to the part itself.</summary>
public static class PartScale
{
    public static readonly Figure BeadSizeGapes = new(0.62, "× gape", Figure.Estimate);
    public static readonly Figure ConeSizeGapes = new(0.6, "× gape", Figure.Estimate);
    public static readonly Figure EyeSizeGapes = new(0.5, "× gape", Figure.Estimate);

    /// <summary>Bore of a bead or cone, share of its size.</summary>
    public static readonly Figure BoreShare = new(0.35, "× size", Figure.Estimate);

    public static readonly Figure ConeLengthShare = new(0.9, "× size", Figure.Estimate);
    public static readonly Figure ConeNoseShare = new(0.5, "× size", Figure.Estimate);

    /// <summary>Each eye of a dumbbell is a barrel this long across the shank, share of its diameter.</summary>
    public static readonly Figure EyeBarrelShare = new(0.36, "× size", Figure.Estimate);

    /// <summary>From the middle of the dumbbell to the middle of each barrel, share of an eye's diameter.</summary>
    public static readonly Figure EyeReachShare = new(0.6, "× size", Figure.Estimate);

    public static readonly Figure EyeWaistShare = new(0.35, "× size", Figure.Estimate);

    public static readonly Figure WrapTurns = new(12, "turns", Figure.Estimate);
    public static readonly Figure BodyDiameterWires = new(4, "× wire", Figure.Estimate);
    public static readonly Figure FoamDiameterGapes = new(0.6, "× gape", Figure.Estimate);
    public static readonly Figure HackleDiameterGapes = new(1.8, "× gape", Figure.Estimate);
    public static readonly Figure CollarWires = new(3, "× wire", Figure.Estimate);
    public static readonly Figure WingLengthShanks = new(1.5, "× shank", Figure.Estimate);
    public static readonly Figure TailLengthShanks = new(1, "× shank", Figure.Estimate);
    public static readonly Figure LegLengthShanks = new(0.8, "× shank", Figure.Estimate);

    /// <summary>How steeply a wing leaves the shank, and how far legs splay to each side.</summary>
    public static readonly Figure WingAngleDeg = new(10, "°", Figure.Estimate);

    public static readonly Figure LegAngleDeg = new(45, "°", Figure.Estimate);

    /// <summary>Hackle: fibers standing on each mm of shank, and the thickness of one.</summary>
    public static readonly Figure HackleFibersPerMm = new(30, "1/mm", Figure.Estimate);

    public static readonly Figure HackleFiberMm = new(0.05, "mm", Figure.Estimate);

    /// <summary>Drag coefficient of a stiff hackle fiber among its neighbors, on its side view.</summary>
    public static readonly Figure HackleFiberDrag = new(1, "1", Figure.Estimate);

    /// <summary>However much wire lies under a body, at least this share of its outline is the body itself.</summary>
    public static readonly Figure LeastSkinShare = new(0.1, "× outline", Figure.Estimate);

    /// <summary>The eyes of a dumbbell shelter each other from a flow across the fly: together they show it one blunt face.</summary>
    public static readonly Figure EyeFaceBluntness = new(0.5, "1", Figure.Estimate);

    /// <summary>What a kind is usually made of.</summary>
    public static string UsualMaterial(PartKind kind) => kind switch
    {
        PartKind.Bead or PartKind.Cone => "brass",
        PartKind.DumbbellEyes or PartKind.Wraps => "lead",
        PartKind.Body => "fur dubbing",
        PartKind.Hackle => "feather",
        PartKind.Wing => "bucktail",
        PartKind.Tail => "marabou",
        PartKind.Legs => "rubber",
        PartKind.Foam => "closed-cell foam",
        PartKind.Resin => "uv resin",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of part."),
    };

    /// <summary>Flat step 1, well-rounded nose near 0: how bluntly the front of a part meets the flow.</summary>
    public static Figure NoseBluntness(PartKind kind) => new(
        kind switch
        {
            PartKind.Cone => 0.4,
            PartKind.Wraps => 1,
            PartKind.Foam => 0.5,
            _ => 0.25,
        },
        "1",
        Figure.Estimate);
}
