using System.CommandLine;
using TyingClass.CommandLine;

RootCommand root = new("What a weighted fly would do in the water, from its recipe.")
{
    BalanceVerb.Command(),
    GradeVerb.Command(),
    CheckLessonsVerb.Command(),
    BackupVerb.Command(),
    RestoreVerb.Command(),
    ExportVerb.Command(),
    ContactSheetVerb.Command(),
};
ParseResult parsed = root.Parse(args);
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
