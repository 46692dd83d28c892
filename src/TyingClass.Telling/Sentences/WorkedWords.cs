namespace TyingClass.Telling.Sentences;

/// <summary>Words of a sum worked out below an answer.</summary>
public static class WorkedWords
{
    public const string Heading = "The sum, worked";
    public const string What = "What";
    public const string Sum = "Sum";
    public const string Result = "Result";
    public const string Yours = "Yours";

    public const string Together = "together";
    public const string DryFly = "the dry fly";
    public const string WaterHeld = "the water it holds";
    public const string WaterPushedAside = "water pushed aside";
    public const string LeftInWater = "weight left in water";
    public const string Center = "all products ÷ all of the weight";
    public const string RingAbove = "height of the ring";
    public const string BalanceAbove = "height of the balance point";
    public const string Apart = "how far apart, on the keel side";
    public const string BehindRing = "mass center, behind the ring";
    public const string AboveOrBelow = "mass center, above or below the ring";
    public const string KeelHeight = "keel height";
    public const string OffCenter = "balance point, off to the side";
    public const string DragBack = "drag";
    public const string WeightLessLift = "weight in water less lift";
    public const string AngleWithTangent = "the angle with this tangent";

    public const string BeforeChange = "before the change";
    public const string AfterChange = "after the change";
    public const string Difference = "the change";
    public const string LeftBefore = "weight left in water, before";
    public const string PushedBefore = "water pushed aside, before";
    public const string PushedAfter = "the same space of the other water";
    public const string LeftAfter = "weight left in water, after";

    /// <summary>After it, where the difference shown is not that of the figures shown.</summary>
    public const string EachRounded = " Each figure of the table is rounded.";

    /// <summary>What a prediction of a change is held against.</summary>
    public static string Noticed(string least, bool isNoticed) => isNoticed
        ? $"A change of {least} or more counts as larger or smaller, and this one is clear of it."
        : $"A change of less than {least} counts as about the same.";

    public const string Cube = "its size, once each way";

    /// <summary>How much of a cube as large as it is filled.</summary>
    public static string ShareOfCube(string part) => $"the {part}, as a share of that cube";

    public static string SpaceIn(string part) => $"volume of the {part}";

    public static string MassOf(string part) => $"mass of the {part}";

    /// <summary>The student's figure is that of an earlier line.</summary>
    public static string StopsAt(string yours, string what) => $"Your {yours} is the line “{what}”. The sum goes on from there.";

    public static string OtherSign(string yours) => $"Your {yours} has the right size and the wrong sign.";
}
