// Pictures speak the units that text does. An alias, since TyingClass.Recipes.Text has other names that mean something else on a drawing.
global using UnitSystem = TyingClass.Recipes.Text.UnitSystem;
