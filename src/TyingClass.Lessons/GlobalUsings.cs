// The tree of a lesson's YAML is that of a recipe's.
global using TyingClass.Recipes.Yaml;
