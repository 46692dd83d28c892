namespace TyingClass.Web.Hosting;

/// <summary>Words of the command line that stand alone: the framework reads only those that carry a value.</summary>
/// <param name="Demo">--demo.</param>
/// <param name="NewCode">--new-instructor-code.</param>
/// <param name="Room">--room.</param>
/// <param name="Others">What is left.</param>
internal sealed record StartFlags(bool Demo, bool NewCode, bool Room, string[] Others)
{
    public const string DemoFlag = "--demo";

    /// <summary>For an instructor who forgot the passphrase.</summary>
    public const string NewCodeFlag = "--new-instructor-code";
    public const string RoomFlag = "--room";
    public const string NoBrowserFlag = "--no-browser";

    private static readonly string[] All = [DemoFlag, NewCodeFlag, RoomFlag, NoBrowserFlag];

    public static StartFlags Read(string[] args) => new(
        args.Contains(DemoFlag), args.Contains(NewCodeFlag), args.Contains(RoomFlag), [.. args.Where(a => !All.Contains(a))]);
}
