using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds;

/// <summary>What a kind reads its task from.</summary>
/// <param name="Given">The exercise's own fly; null where there is none, or it has mistakes.</param>
internal sealed record TaskReading(FieldReader Fields, Recipe? Given, RecipeFinder Recipes, AnswerReader Answers)
{
    public AuthorErrors Errors => Fields.Errors;
}
