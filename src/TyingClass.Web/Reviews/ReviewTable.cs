using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Html;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Telling.Sentences;
using TyingClass.Web.Bench;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Patterns;
using TyingClass.Web.Pictures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Reviews;

/// <summary>What a comment can be about.</summary>
/// <param name="Value">As the form sends it: "part:cone", "finding:flips", "log:…", "whole".</param>
public sealed record CommentChoice(string Value, string Words);

/// <summary>Drawings of the fly that is reviewed; each null where it cannot be drawn.</summary>
public sealed record ReviewDrawings(IHtmlContent? Fresh, IHtmlContent? Soaked, IHtmlContent? Ledger, ImmutableArray<(string Title, IHtmlContent Curve)> Curves)
{
    /// <summary>What it does stripped and let fall; empty where no fly can be computed.</summary>
    public ImmutableArray<string> RetrieveSentences { get; init; } = [];

    public ImmutableArray<(string Title, IHtmlContent Drawing)> Retrieve { get; init; } = [];
}

/// <summary>Everything a mentor needs to judge a revision.</summary>
/// <param name="Rides">As it is meant to, soaked; a fly that does not is signed off with a reason only.</param>
/// <param name="Against">The revision it is compared with; null where it is the first.</param>
/// <param name="Real">What real flies of the pattern did, those of this revision first.</param>
/// <param name="OnBench">The bench with this recipe on it.</param>
/// <param name="IsMine">One does not judge one's own pattern.</param>
public sealed record ReviewView(
    Review Review, Pattern Pattern, string Owner, FlySheet Sheet, PatternRevision Revision, ImmutableArray<PatternRevision> Revisions, bool Rides,
    RevisionPair? Against, ReviewDrawings Drawings, ImmutableArray<RealFly> Real, ImmutableArray<CommentChoice> Choices, ImmutableArray<RoundView> Rounds,
    string OnBench, bool IsMine)
{
    /// <summary>Null until it is asked for.</summary>
    public BenchAdvice? Advice { get; init; }
}

/// <summary>What is drawn and computed of the fly on the table.</summary>
public sealed class ReviewSheets(FlySheets sheets, FlyPictures pictures, RevisionPairs pairs, ReaderUnits units)
{
    private static readonly (string View, string Title)[] CurveViews =
        [("keel height", "Keel height against speed"), ("pitch", "Pitch against speed"), ("righting", "Righting curve"), ("depth", "Depth in a pause")];

    private static readonly (string View, string Title)[] RetrieveViews = [("film", "The last round"), ("retrieve", "Depth and nose over the whole of it")];

    public FlySheet Of(string recipeText) => sheets.Of(recipeText);

    public SolvedFly? Solve(string recipeText) => sheets.Solve(recipeText);

    public RevisionPair? Pair(PatternRevision before, PatternRevision after) => pairs.Of(before, after);

    public ReviewDrawings Draw(string recipeText) => new(
        pictures.Draw(recipeText, fresh: true), pictures.Draw(recipeText), pictures.Draw(recipeText, "ledger"),
        Drawn(recipeText, CurveViews))
    {
        Retrieve = Drawn(recipeText, RetrieveViews),
        RetrieveSentences = sheets.Solve(recipeText) is { } fly ? [.. RetrieveSentence.Of(fly.Retrieve, units.Now)] : [],
    };

    private ImmutableArray<(string Title, IHtmlContent Drawing)> Drawn(string recipeText, (string View, string Title)[] views) =>
        [.. views.Select(v => (v.Title, Drawing: pictures.Draw(recipeText, v.View))).Where(v => v.Drawing is not null).Select(v => (v.Title, v.Drawing!))];

    public BenchAdvice? Advise(string recipeText) => sheets.Solve(recipeText) is { } fly ? BenchAdvice.Of(fly, units.Now) : null;

    public ImmutableArray<AgreementRow> Beside(LogEntry entry) => Agreement.Of(entry, units.Now);
}

/// <summary>Lays a review out. What a visitor may not see is as if it did not exist.</summary>
public sealed class ReviewTable(ReviewStores store, BenchLogStore benchLogStore, Visitor visitor, ClassAccess access, ReviewSheets sheets,
    ReviewThreads threads)
{
    /// <returns>Null for a review this visitor may not see.</returns>
    public Review? Find(string reviewId) =>
        store.Reviews.Find(reviewId) is { } review && access.MentorsOrRuns(visitor.Person, review.ClassId) && PatternOf(review) is not null ? review : null;

    // What lies in the trash, or belongs to someone who was removed, waits there unseen.
    public Pattern? PatternOf(Review review)
    {
        ArgumentNullException.ThrowIfNull(review);
        return store.Patterns.Find(review.PatternId) is { TrashedAt: null } pattern && store.People.Find(pattern.OwnerId) is { RemovedAt: null }
            ? pattern : null;
    }

    /// <param name="against">The revision to compare with; the one last judged, or the one before, when null.</param>
    /// <param name="advise">Asks the adviser, which solves hundreds of flies.</param>
    public ReviewView? Open(string reviewId, int? against, bool advise)
    {
        if (Find(reviewId) is not { } review || PatternOf(review) is not { } pattern) return null;
        ImmutableArray<PatternRevision> revisions = store.Patterns.Revisions(pattern.Id);
        PatternRevision asked = revisions[review.Revision - 1];
        int? other = against is { } number && number != asked.Number && number >= 1 && number <= revisions.Length ? number : BeforeThis(review);
        FlySheet sheet = sheets.Of(asked.RecipeText);
        ImmutableArray<RealFly> real = Real(review, pattern, asked);
        return new ReviewView(
            review, pattern, threads.NameOf(pattern.OwnerId), sheet, asked, revisions, Rides(asked.RecipeText),
            other is { } before ? sheets.Pair(revisions[before - 1], asked) : null, sheets.Draw(asked.RecipeText), real,
            Choices(asked.RecipeText, sheet, real), threads.Of(pattern.Id), BenchOf(asked.RecipeText, $"/reviews/{review.Id}"),
            visitor.Person?.Id == pattern.OwnerId)
        {
            Advice = advise ? sheets.Advise(asked.RecipeText) : null,
        };
    }

    /// <param name="from">The page whose fly it is, to lead back to; null where the bench has none to name.</param>
    public static string BenchOf(string recipeText, string? from = null) =>
        new BenchAddress(Packed.Pack(recipeText), null, null, null, null, null, from).ToString();

    /// <summary>As it is meant to, soaked.</summary>
    public bool Rides(string recipeText) => sheets.Solve(recipeText) is { Report.Verdict.Kind: VerdictKind.RidesAsIntended };

    /// <summary>In a sentence or two; nothing of a recipe that makes no fly.</summary>
    public string WhatItWouldDo(string recipeText) => sheets.Of(recipeText).Diagnosis?.WhatItWouldDo ?? "No fly can be built of it.";

    /// <summary>The recipe a review is about.</summary>
    public string RecipeOf(Review review)
    {
        ArgumentNullException.ThrowIfNull(review);
        return store.Patterns.Revision(review.PatternId, review.Revision)?.RecipeText ?? "";
    }

    private int? BeforeThis(Review review)
    {
        int? judged = store.Reviews.Of(review.PatternId)
            .LastOrDefault(r => r.Id != review.Id && r.AskedAt < review.AskedAt && r.Revision < review.Revision && r.State != ReviewState.Withdrawn)?.Revision;
        return judged ?? (review.Revision > 1 ? review.Revision - 1 : null);
    }

    // The owner's drops of any revision, and what others tied from its card.
    private ImmutableArray<RealFly> Real(Review review, Pattern pattern, PatternRevision asked) =>
    [
        .. benchLogStore.OfClass(review.ClassId)
            .Where(e => (e.Fly is { Source: FlySource.Pattern, SourceId: { } id } && id == pattern.Id) || e.Fly.RecipeText == asked.RecipeText)
            .Where(e => access.MaySeeWorkOf(visitor.Person, e.PersonId))
            .Select(e => new RealFly(e, threads.NameOf(e.PersonId), e.Fly.RecipeText == asked.RecipeText, sheets.Beside(e)))
            .OrderByDescending(r => r.OfThis).ThenByDescending(r => r.Entry.At),
    ];

    private static ImmutableArray<CommentChoice> Choices(string recipeText, FlySheet sheet, ImmutableArray<RealFly> real) =>
    [
        new("whole", "the whole fly"),
        new("part:hook", "the hook"),
        .. RecipeParser.Parse(recipeText).Value is { } recipe ? FlyBuilder.Names(recipe.Parts).Select(n => new CommentChoice($"part:{n}", $"the {n}")) : [],
        new("part:fishing", "how it is fished"),
        .. sheet.Diagnosis?.Findings.Select(f => new CommentChoice($"finding:{f.Code}", $"the finding “{f.Code}”")) ?? [],
        .. real.Select(r => new CommentChoice(
            $"log:{r.Entry.Id}", $"what {r.By}’s fly did on {r.Entry.At.ToString("MMM d", CultureInfo.InvariantCulture)}")),
    ];
}
