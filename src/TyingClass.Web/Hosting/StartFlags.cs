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

    // With a value; the last ones are the framework's own.
    private static readonly string[] Valued =
        ["--data", "--lessons", "--urls", "--room-address", "--certificate", "--certificate-key", "--proxy", "--environment", "--contentRoot", "--webroot"];

    public const string Help = """
        Starts the class. Stop it with Ctrl+C.

          --data DIR                  where the class is kept
          --lessons DIR               the lessons to teach
          --urls http://localhost:N   another address or port
          --room                      let the phones in the room in, this time
          --room-address ADDRESS      what to tell phones: an address of this machine, or a name
          --certificate FILE          for HTTPS, with --certificate-key FILE
          --proxy ADDRESS             another program in front of this one
          --demo                      an invented class, in a data folder that is empty
          --new-instructor-code       for an instructor who forgot the passphrase
          --no-browser                open no browser
          --accept-loss               once, where a part of the data is missing for good

        More about each: docs/install.md
        """;

    /// <summary>Whether the words of the command line only ask what they may be.</summary>
    public static bool AsksForHelp(string[] args) => args.Any(a => a is "--help" or "-h" or "-?");

    /// <summary>A mistyped word must not start a class on another port or folder than was meant.</summary>
    /// <exception cref="StartRefusedException">There is no such word, it lacks its value, or it belongs to none.</exception>
    /// <remarks>A setting of the framework has a colon in its name, or its value behind an equals sign.</remarks>
    public static void RefuseUnknown(string[] args)
    {
        const string end = "Nothing was started. --help lists what there is.";
        for (int i = 0; i < args.Length; i++)
        {
            string word = args[i];
            if (All.Contains(word) || word.Contains('=', StringComparison.Ordinal)) continue;
            bool isSetting = IsOption(word) && word.Contains(':', StringComparison.Ordinal);
            if (!isSetting && !Valued.Contains(word, StringComparer.OrdinalIgnoreCase))
            {
                throw new StartRefusedException(IsOption(word) ? $"There is no option {word}. {end}"
                    : $"“{word}” belongs to no option. A name with spaces in it needs quotes around it. {end}");
            }

            if (i + 1 == args.Length || IsOption(args[i + 1])) throw new StartRefusedException($"After {word} something is missing. {end}");
            i++;
        }
    }

    public static StartFlags Read(string[] args) => new(
        args.Contains(DemoFlag), args.Contains(NewCodeFlag), args.Contains(RoomFlag), args.Contains(AcceptLossFlag),
        [.. args.Where(a => !All.Contains(a))]);

    private static bool IsOption(string word) => word.StartsWith("--", StringComparison.Ordinal);
}
