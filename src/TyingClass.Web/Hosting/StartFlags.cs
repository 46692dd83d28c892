namespace TyingClass.Web.Hosting;

/// <summary>Words of the command line that stand alone: the framework reads only those that carry a value.</summary>
/// <param name="Demo">--demo.</param>
/// <param name="NewCode">--new-instructor-code.</param>
/// <param name="Room">--room.</param>
/// <param name="AcceptLoss">--accept-loss.</param>
/// <param name="Others">What is left.</param>
internal sealed record StartFlags(bool Demo, bool NewCode, bool Room, bool AcceptLoss, string[] Others)
{
    public const string DemoFlag = "--demo";

    /// <summary>For an instructor who forgot the passphrase.</summary>
    public const string NewCodeFlag = "--new-instructor-code";
    public const string RoomFlag = "--room";
    public const string NoBrowserFlag = "--no-browser";

    /// <summary>Once, for a data folder in which something that was acknowledged is missing.</summary>
    public const string AcceptLossFlag = "--accept-loss";

    private static readonly string[] All = [DemoFlag, NewCodeFlag, RoomFlag, NoBrowserFlag, AcceptLossFlag];

    public static StartFlags Read(string[] args) => new(
        args.Contains(DemoFlag), args.Contains(NewCodeFlag), args.Contains(RoomFlag), args.Contains(AcceptLossFlag),
        [.. args.Where(a => !All.Contains(a))]);
}
