using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Reports;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Bench;
using TyingClass.Web.Editing;
using TyingClass.Web.Pictures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Patterns;

/// <summary>A recipe with all the engine says of it, for reading and for print.</summary>
/// <param name="Picture">From the side; null where it cannot be drawn.</param>
/// <param name="Diagnosis">Null where no fly can be built of the recipe.</param>
public sealed record FlySheet(string RecipeText, RecipeCard Card, IHtmlContent? Picture, Diagnosis? Diagnosis, ImmutableArray<KeptFigure> Figures);

/// <summary>Lays recipes out.</summary>
public sealed class FlySheets(FlyPictures pictures, ReaderUnits units, SolvedFlies flies)
{
    private static readonly RecipeCard Unreadable = new("A fly", "", "", [], "");

    public FlySheet Of(string recipeText)
    {
        SolvedFly? fly = Solve(recipeText);
        return new FlySheet(
            recipeText,
            RecipeCard.Of(recipeText) ?? Unreadable,
            pictures.Draw(recipeText),
            fly is null ? null : Diagnosis.Of(fly, units.Now),
            fly is null ? [] : Storage.Attempts.Figures.Of(fly.Report));
    }

    /// <summary>A card of a fly nobody has kept.</summary>
    /// <returns>Null when the layout of the text is broken.</returns>
    public PrintCard? Print(string recipeText) => RecipeCard.Of(recipeText) is { } parts ? Print(parts, "", recipeText) : null;

    public PrintCard Print(CardView card) => Print(
        card.Sheet.Card, $"By {card.Owner}, revision {card.Revision}{(card.SignedOffBy is { } by ? $", signed off by {by}" : "")}."
            + (card.Despite is { } why ? $" By the engine it does not ride as it is meant to. Signed off all the same: {why}" : ""),
        card.Sheet.RecipeText);

    private PrintCard Print(RecipeCard parts, string byline, string recipeText) => Solve(recipeText) is { } fly
        ? new PrintCard(parts, byline, pictures.Draw(recipeText), Diagnosis.Of(fly, units.Now).WhatItWouldDo,
        BenchFigures.Of(fly.Report, fly.Report.Soaked, units.Now), Cautions.For(fly.Recipe, fly.Built.Body))
        : new PrintCard(parts, byline, null, "", [], []);

    /// <returns>Null when no fly can be built of it.</returns>
    public SolvedFly? Solve(string recipeText) => flies.Whole(recipeText);
}
