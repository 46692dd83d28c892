using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Web.Editing;

/// <summary>One fly on one printed page: what Shared/_PrintCard shows, from the bench or from the pattern book.</summary>
/// <param name="Parts">The recipe in tying order.</param>
/// <param name="Byline">Whose it is and which revision; empty on the bench.</param>
/// <param name="Picture">From the side; null when it cannot be drawn.</param>
/// <param name="Sentence">What it would do, in words; empty when it cannot be solved.</param>
public sealed record PrintCard(RecipeCard Parts, string Byline, IHtmlContent? Picture, string Sentence, ImmutableArray<Bench.FigureRow> Figures,
    ImmutableArray<Caution> Cautions);
