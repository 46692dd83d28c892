namespace TyingClass.Lessons.Reference;

/// <summary>Where on the page of formulas a finding or a figure of a report is explained.</summary>
public static class FormulaLinks
{
    private const string Page = "/model";

    /// <summary>The keel moment of each part.</summary>
    public const string MomentLedger = Page + "#moment-ledger";

    /// <summary>
    /// The address for a finding's code ("flips", "planes down") or a verdict's words; the page's list of findings for one this does not know.
    /// </summary>
    public static string ForFinding(string code) => Page + code switch
    {
        "rides as intended" or "leans" or "rides on its side" or "flips" or "undecided" or "hangs" or "floats" or "tilts" or "rides tilted" => "#verdicts",
        "bend outweighs bead" => MomentLedger[Page.Length..],
        "rule of thumb disagrees" => "#keel-height",
        "only while dry" or "only when soaked" => "#mass-center-buoyancy-balance-point",
        "knot holds the nose up" => "#cinched-knot",
        "two ways up" or "spins" => "#stable-attitudes",
        "planes down" or "planes up" or "speed decides" => "#moments-about-the-tow-point",
        "hovers" or "sinks any way up" or "tumbles" or "two ways to sink" => "#sink",
        _ => "#findings",
    };
}
