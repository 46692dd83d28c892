using TyingClass.Balance.Reports;

namespace TyingClass.Drawing;

/// <summary>What is marked on a drawing beside the fly itself.</summary>
[Flags]
public enum MarkSet
{
    None = 0,
    TowPoint = 1,
    MassCenter = 2,
    CenterOfBuoyancy = 4,
    BalancePoint = 8,
    LineOfPull = 16,
    KeelHeight = 32,
    Flow = 64,
    ScaleBar = 128,
    All = TowPoint | MassCenter | CenterOfBuoyancy | BalancePoint | LineOfPull | KeelHeight | Flow | ScaleBar,
}

/// <summary>How a picture is drawn. The defaults draw everything, soaked, at the recipe's own speed.</summary>
public sealed record DrawingOptions
{
    public static readonly DrawingOptions Default = new();

    public WetState State { get; init; } = WetState.Soaked;

    /// <summary>Draw the fly as towed at the solved speed nearest this one, m/s; null for the speed it is fished at.</summary>
    public double? SpeedMS { get; init; }

    /// <summary>Nominal width, px; sets the stated scale (px per mm). A page may still squeeze the picture.</summary>
    public int WidthPx { get; init; } = 720;

    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    public MarkSet Marks { get; init; } = MarkSet.All;

    /// <summary>Starts every id in the picture, so that two pictures share a page: a letter, then letters, digits, - or _.</summary>
    public string IdPrefix { get; init; } = "fly";

    /// <summary>The line of words under the picture.</summary>
    public bool Caption { get; init; } = true;

    /// <summary>Leaves room for the attitude at every solved speed, so that pictures at different speeds share one frame.</summary>
    public bool FrameAllSpeeds { get; init; }

    /// <summary>Lays the band of the model's own doubt about the soaked fly's curves.</summary>
    public bool ShowDoubt { get; init; }

    /// <summary>What a film strip points at.</summary>
    public FilmMarkKind FilmMark { get; init; }

    /// <summary>A depth to reach or to keep above, drawn across a film strip; null for none.</summary>
    public DepthGoal? DepthGoal { get; init; }

    /// <summary>What the question turns on, ringed and named; null for none.</summary>
    public TurnsOn? TurnsOn { get; init; }

    /// <summary>These options, or an error that says which is wrong.</summary>
    /// <exception cref="ArgumentException">A prefix that is no id, or a width outside 100 to 4000 px.</exception>
    internal DrawingOptions Checked()
    {
        if (IdPrefix.Length == 0 || !char.IsAsciiLetter(IdPrefix[0]) || !IdPrefix.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_'))
            throw new ArgumentException($"The id prefix \"{IdPrefix}\" must be a letter followed by letters, digits, - or _.");
        if (WidthPx is < 100 or > 4000)
            throw new ArgumentException($"The width is {WidthPx} px; it must be from 100 to 4000.");
        return this;
    }
}

/// <summary>What a film strip points at.</summary>
public enum FilmMarkKind
{
    /// <summary>The deepest place of the last round.</summary>
    Deepest,

    /// <summary>The nose, where it points most steeply down in the pause.</summary>
    Nose,
}

/// <summary>A depth that was asked for.</summary>
/// <param name="Words">In the reader's units: "deepest: at most 0.9 m".</param>
public sealed record DepthGoal(double DepthM, string Words);

/// <param name="Part">As the ledger names it; "eye" for the ring of the eye.</param>
/// <param name="Words">What is said of it there: "moved".</param>
public sealed record TurnsOn(string Part, string Words)
{
    public const string Eye = "eye";
}
