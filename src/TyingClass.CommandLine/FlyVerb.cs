using System.CommandLine;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.CommandLine;

/// <summary>A verb that reads one recipe, works it out and prints it as text or as one JSON object: NAME FILE [--json] [--units metric|imperial].</summary>
/// <param name="Name">As it is typed.</param>
/// <param name="What">What it answers, for the list of verbs.</param>
internal sealed record FlyVerb(string Name, string What)
{
    /// <summary>What is said of FILE.</summary>
    public required string FileHelp { get; init; }

    public required string JsonHelp { get; init; }

    public required Func<Recipe, SolvedFly> Solve { get; init; }

    public required Func<SolvedFly, string> Json { get; init; }

    public required Action<SolvedFly, UnitSystem, TextWriter> Text { get; init; }

    /// <summary>Whether the fly does what it is asked; otherwise the exit code says that it falls short.</summary>
    public required Func<SolvedFly, bool> IsWell { get; init; }

    public Command Command()
    {
        Argument<FileInfo> file = new("FILE") { Description = FileHelp };
        Option<bool> json = new("--json") { Description = JsonHelp };
        Option<UnitSystem> units = new("--units") { Description = "Units of the text: metric (usual) or imperial. What --json prints keeps its own." };
        Command command = new(Name, What) { file, json, units };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(json), parsed.GetValue(units), Console.Out, Console.Error));
        return command;
    }

    private int Run(FileInfo file, bool json, UnitSystem units, TextWriter output, TextWriter errors)
    {
        if (!RecipeFile.TryRead(file, units, errors, out Recipe? recipe)) return ExitCodes.InputError;
        SolvedFly fly = Solve(recipe);
        if (json)
        {
            output.WriteLine(Json(fly));
        }
        else
        {
            Text(fly, units, output);
        }

        return IsWell(fly) ? ExitCodes.AllIsWell : ExitCodes.FallsShort;
    }
}
