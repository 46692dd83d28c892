using System.Diagnostics.CodeAnalysis;
using System.Text;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.CommandLine;

/// <summary>Reads a recipe file and says every mistake as file:line:column: text on standard error.</summary>
internal static class RecipeFile
{
    public static bool TryRead(FileInfo file, UnitSystem units, TextWriter errors, [NotNullWhen(true)] out Recipe? recipe)
    {
        recipe = null;
        if (!TryReadText(file, errors, out string? text))
        {
            return false;
        }

        ParseResult<Recipe> result = RecipeParser.Parse(text);
        foreach (RecipeError error in result.Errors)
        {
            errors.WriteLine($"{file}:{error.Line}:{error.Column}: {WrittenFigures.BesideOutsideQuotes(error.Text, units)}");
        }

        recipe = result.Value;
        return result.Errors.IsEmpty;
    }

    public static bool TryReadText(FileInfo file, TextWriter errors, [NotNullWhen(true)] out string? text)
    {
        text = null;
        try
        {
            text = File.ReadAllText(file.FullName, new UTF8Encoding(false, throwOnInvalidBytes: true));
            return true;
        }
        catch (DecoderFallbackException)
        {
            errors.WriteLine($"{file}:1:1: This file is not UTF-8 text. Save it as UTF-8 and try again.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{file}:1:1: Cannot read this file: {e.Message}");
        }

        return false;
    }
}
