using TyingClass.Balance.Reports;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Grading;

/// <summary>Whoever looks for the smallest single change; see <see cref="Adviser.Search"/>.</summary>
public delegate IEnumerable<Proposal> AdviserCall(Recipe recipe, Func<Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool> allowed);
