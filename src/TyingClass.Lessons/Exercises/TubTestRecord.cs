namespace TyingClass.Lessons.Exercises;

/// <summary>What a tub test may record beside the quantities of the report.</summary>
public static class TubTestRecord
{
    public const string WhichWayUp = "which way up";
}
