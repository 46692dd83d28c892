namespace TyingClass.Balance.Bodies;

/// <summary>How the tyer means the fly to ride.</summary>
public enum Intent
{
    /// <summary>As clamped in the vise: point below the shank.</summary>
    PointDown,

    /// <summary>Turned over: point above the shank.</summary>
    PointUp,
}
