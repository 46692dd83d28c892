using System.CommandLine;
using System.CommandLine.Help;
using TyingClass.CommandLine;

// Named by hand: as it is started it is a file called TyingClass.CommandLine.
Command root = new("tying", "What a weighted fly would do in the water, from its recipe.")
{
    new HelpOption(),
    new VersionOption(),
    BalanceVerb.Command(),
    RetrieveVerb.Command(),
    GradeVerb.Command(),
    CheckLessonsVerb.Command(),
    BackupVerb.Command(),
    RestoreVerb.Command(),
    ExportVerb.Command(),
    ContactSheetVerb.Command(),
};
// Alone it shows what there is, as someone who found it beside the program expects.
ParseResult parsed = root.Parse(args.Length == 0 ? ["--help"] : args);
if (parsed.Errors.Count > 0)
{
    foreach (System.CommandLine.Parsing.ParseError error in parsed.Errors)
    {
        Console.Error.WriteLine(error.Message);
    }

    Console.Error.WriteLine("Run it with --help to see the verbs and what each needs.");
    return ExitCodes.InputError;
}

return await parsed.InvokeAsync().ConfigureAwait(false);
